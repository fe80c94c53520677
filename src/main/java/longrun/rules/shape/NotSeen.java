package longrun.rules.shape;

import java.util.List;
import java.util.OptionalInt;
import longrun.plan.Appliance;
import longrun.plan.Plan;
import longrun.plan.PlanPath;
import longrun.plan.Section;

/**
 * What a plan takes as usual and nobody has looked at. No rule passes on it: what holds by such an entry is a question,
 * and what is asked about it waits until somebody has seen it. The one question, what is there, is asked with the missing
 * entries. What is broken stays broken.
 */
public final class NotSeen {

    private final Plan plan;
    private final boolean any;

    public NotSeen(Plan plan) {
        this.plan = plan;
        any = plan.sections().stream().anyMatch(Section::isAssumed)
                || plan.appliances().stream().anyMatch(Appliance::hasPartsNotSeen);
    }

    /**
     * A verdict as far as it may be believed.
     *
     * @param ofHookups whether the rule is about the parts at appliances
     */
    public Verdict weighed(Verdict verdict, boolean ofHookups) {
        if (!any) {
            return verdict;
        }
        return switch (verdict.state().state()) {
            case HOLDS ->
                restsOnNotSeen(PlanPath.of(verdict.state().pointer()), ofHookups) ? verdict.asking() : verdict;
            case ASKS ->
                verdict.field().filter(f -> isAskedAlready(PlanPath.of(f))).isPresent() ? verdict.untold() : verdict;
            case BROKEN, NOT_FOR_THIS_PLAN -> verdict;
        };
    }

    private boolean restsOnNotSeen(PlanPath at, boolean ofHookups) {
        if (at.findIndex().isEmpty()) {
            return false;
        }
        int index = at.findIndex().getAsInt();
        if (at.isIn("sections")) {
            return plan.sections().get(index).isAssumed();
        }
        if (!at.isIn("appliances") || !ofHookups) {
            return false;
        }
        Appliance appliance = plan.appliances().get(index);
        OptionalInt part = part(at);
        return part.isPresent() ? isNotSeen(appliance, part.getAsInt()) : appliance.hasPartsNotSeen();
    }

    /** The missing entries ask what is there. */
    private boolean isAskedAlready(PlanPath at) {
        if (at.isIn("sections")) {
            return at.entry().equals("assumed");
        }
        return at.isIn("appliances")
                && at.findIndex().isPresent()
                && part(at).isPresent()
                && isNotSeen(plan.appliances().get(at.findIndex().getAsInt()), part(at).getAsInt());
    }

    /** The number of the part it stands in; empty where it is about the appliance. */
    private static OptionalInt part(PlanPath at) {
        return at.step(2).equals("connection") ? at.findIndex(3) : OptionalInt.empty();
    }

    private static boolean isNotSeen(Appliance appliance, int part) {
        List<Appliance.Part> parts = appliance.connection().findValue().orElse(List.of());
        return part < parts.size() && !parts.get(part).isSeen();
    }
}
