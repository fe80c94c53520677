package longrun;

import java.lang.reflect.Field;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import longrun.hotwater.HotWaterStudy;
import longrun.tank.TankStudy;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Begins each test with no study kept: what a test before worked out does not answer for the code under test. */
public final class NothingKept implements BeforeEachCallback {

    private static final List<AtomicReference<?>> KEPT = List.of(
            last(TankStudy.class.getName()), last(HotWaterStudy.class.getName()), last("longrun.fuel.fill.TankLadder"));

    private static AtomicReference<?> last(String study) {
        try {
            Field field = Class.forName(study).getDeclaredField("LAST");
            field.setAccessible(true);
            return (AtomicReference<?>) field.get(null);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(study, e);
        }
    }

    @Override
    public void beforeEach(ExtensionContext test) {
        KEPT.forEach(k -> k.set(null));
    }
}
