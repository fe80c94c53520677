package longrun.rules.shape;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longrun.plan.Appliance;
import longrun.plan.Plan;

/**
 * What a plan takes as usual and nobody has looked at. No rule passes on it: what holds by such an entry is a question,
 * and what is asked about it waits until somebody has seen it. The one question, what is there, is asked with the missing
 * entries. What is broken stays broken.
 */
public final class NotSeen {

    private static final Pattern SECTION = Pattern.compile("/sections/(\\d+)(?:/.*)?");
    private static final Pattern APPLIANCE = Pattern.compile("/appliances/(\\d+)(?:/connection/(\\d+))?(?:/.*)?");

    private final Plan plan;

    public NotSeen(Plan plan) {
        this.plan = plan;
    }

    /**
     * A verdict as far as it may be believed.
     *
     * @param ofHookups whether the rule is about the parts at appliances
     */
    public Verdict weighed(Verdict verdict, boolean ofHookups) {
        return switch (verdict.state().state()) {
            case HOLDS -> restsOnNotSeen(verdict.state().pointer(), ofHookups) ? verdict.asking() : verdict;
            case ASKS ->
                verdict.finding().filter(f -> isAskedAlready(f.field())).isPresent() ? verdict.untold() : verdict;
            case BROKEN, NOT_FOR_THIS_PLAN -> verdict;
        };
    }

    private boolean restsOnNotSeen(String pointer, boolean ofHookups) {
        Matcher section = SECTION.matcher(pointer);
        if (section.matches()) {
            return plan.sections().get(Integer.parseInt(section.group(1))).isAssumed();
        }
        Matcher at = APPLIANCE.matcher(pointer);
        if (!at.matches() || !ofHookups) {
            return false;
        }
        Appliance appliance = plan.appliances().get(Integer.parseInt(at.group(1)));
        return at.group(2) == null ? appliance.hasPartsNotSeen() : isNotSeen(appliance, at.group(2));
    }

    /** The missing entries ask what is there. */
    private boolean isAskedAlready(String field) {
        if (field.startsWith("/sections/") && field.endsWith("/assumed")) {
            return true;
        }
        Matcher at = APPLIANCE.matcher(field);
        return at.matches()
                && at.group(2) != null
                && isNotSeen(plan.appliances().get(Integer.parseInt(at.group(1))), at.group(2));
    }

    private static boolean isNotSeen(Appliance appliance, String index) {
        List<Appliance.Part> parts = appliance.connection().findValue().orElse(List.of());
        int i = Integer.parseInt(index);
        return i < parts.size() && !parts.get(i).isSeen();
    }
}
