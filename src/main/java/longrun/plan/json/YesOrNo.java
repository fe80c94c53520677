package longrun.plan.json;

import java.lang.reflect.Type;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.plan.Fact;
import longrun.plan.Plan;
import longrun.plan.PlanPath;

/** Which entries of a plan are a yes or a no. */
public final class YesOrNo {

    private YesOrNo() {}

    /**
     * Whether the entry at a pointer is a yes or a no.
     *
     * @param pointer JSON pointer of an entry, as findings name their fields
     */
    public static boolean is(String pointer) {
        Type at = Plan.class;
        for (String step : PlanPath.of(pointer).steps()) {
            Class<?> holder = RecordShape.raw(at);
            if (!holder.isRecord()) {
                return false;
            }
            if (PlanPath.isIndex(step)) {
                continue; // a list is followed by its items' record
            }
            Optional<Type> next = RecordShape.of(holder).fields().stream()
                    .filter(f -> f.name().equals(step))
                    .map(f -> inside(f.type()))
                    .findFirst();
            if (next.isEmpty()) {
                return false;
            }
            at = next.get();
        }
        return RecordShape.raw(at) == Boolean.class;
    }

    private static Type inside(Type type) {
        Class<?> raw = RecordShape.raw(type);
        return raw == Fact.class || raw == Optional.class || raw == List.class
                ? inside(RecordShape.argument(type, 0))
                : raw == Map.class ? Map.class : type;
    }
}
