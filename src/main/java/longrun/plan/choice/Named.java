package longrun.plan.choice;

import java.util.Locale;

/** An enum constant with the name it has in a plan. */
public interface Named {

    /** The enum constant's own name. */
    String name();

    /** The name in a plan: lower case, words joined by hyphens. */
    default String written() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
