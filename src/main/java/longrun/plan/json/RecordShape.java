package longrun.plan.json;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The fields of one plan record. The records are the one description of the format: reader, writer and schema all
 * follow their components, so that the three cannot drift apart.
 */
final class RecordShape {

    record Field(String name, Type type, RecordComponent component) {}

    private static final Map<Class<?>, RecordShape> SHAPES = new ConcurrentHashMap<>();

    private final Class<?> record;
    private final List<Field> fields;
    private final Constructor<?> constructor;

    private RecordShape(Class<?> record) {
        this.record = record;
        RecordComponent[] components = record.getRecordComponents();
        this.fields = Arrays.stream(components)
                .map(c -> new Field(c.getName(), c.getGenericType(), c))
                .toList();
        try {
            this.constructor = record.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException(e);
        }
    }

    static RecordShape of(Class<?> record) {
        return SHAPES.computeIfAbsent(record, RecordShape::new);
    }

    List<Field> fields() {
        return fields;
    }

    String name() {
        return record.getSimpleName();
    }

    Object create(Object[] values) {
        try {
            return constructor.newInstance(values);
        } catch (InvocationTargetException | InstantiationException | IllegalAccessException e) {
            throw new IllegalStateException("cannot make a " + record.getSimpleName(), e);
        }
    }

    static Class<?> raw(Type type) {
        return type instanceof ParameterizedType p ? (Class<?>) p.getRawType() : (Class<?>) type;
    }

    static Type argument(Type type, int index) {
        return ((ParameterizedType) type).getActualTypeArguments()[index];
    }
}
