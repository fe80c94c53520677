package longrun.checked.working;

import java.util.Map;
import java.util.TreeMap;
import longrun.checked.published.PublishedCase;

/** Every kind of computation that published cases ask for, by its name in {@code data/checked}. */
public final class Workings {

    private static final Map<String, Working> ALL = new TreeMap<>();

    static {
        PipeWork.into(ALL);
        AirWork.into(ALL);
        TankWork.into(ALL);
        WaterWork.into(ALL);
        YearWork.into(ALL);
    }

    private Workings() {}

    /** Our answer to a case, worked out anew. */
    public static Answer of(PublishedCase published) {
        Working working = ALL.get(published.work());
        if (working == null) {
            throw new IllegalStateException(
                    "checked case " + published.id() + ": no working is called " + published.work());
        }
        return working.of(published.input());
    }
}
