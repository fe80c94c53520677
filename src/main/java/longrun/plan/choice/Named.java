package longrun.plan.choice;

import java.util.Locale;
import java.util.Optional;

/** An enum constant with the name it has in a plan. */
public interface Named {

    /** The enum constant's own name. */
    String name();

    /** The name in a plan: lower case, words joined by hyphens. */
    default String written() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The choice that is written so. */
    static <E extends Enum<E> & Named> Optional<E> find(Class<E> choices, String written) {
        for (E each : choices.getEnumConstants()) {
            if (each.written().equals(written)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }
}
