package longrun.tank;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import longrun.origin.Missing;
import longrun.plan.Appliance;
import longrun.plan.ApplianceNames;
import longrun.plan.Plan;
import longrun.plan.Use;
import longrun.plan.choice.ApplianceKind;

/** Appliances that burn through the year and have no use entered: without it no sum is true. */
public final class UnusedAppliances {

    private static final Set<ApplianceKind> HEATERS =
            EnumSet.of(ApplianceKind.FURNACE, ApplianceKind.BOILER, ApplianceKind.SPACE_HEATER);
    private static final Set<ApplianceKind> WATER_HEATERS =
            EnumSet.of(ApplianceKind.ON_DEMAND_WATER_HEATER, ApplianceKind.STORAGE_WATER_HEATER);

    private UnusedAppliances() {}

    /** Uses the year lacks. */
    public static List<Missing> ofTheYear(Plan plan) {
        return unused(plan, true);
    }

    /** Uses the design day lacks; a standby generator burns in an outage and has an occasion of its own. */
    static List<Missing> onTheDesignDay(Plan plan) {
        return unused(plan, false);
    }

    private static List<Missing> unused(Plan plan, boolean generators) {
        if (plan.use().isEmpty()) {
            return List.of(new Missing("/use", "what propane is used for: heating, hot water, the rest"));
        }
        Use use = plan.use().get();
        ApplianceNames names = ApplianceNames.of(plan);
        List<Missing> out = new ArrayList<>();
        for (Appliance a : plan.appliances()) {
            ApplianceKind kind = a.kind().findValue().orElse(ApplianceKind.OTHER);
            if (use.others().stream().anyMatch(o -> o.appliance().is(a.id()))) {
                continue;
            }
            if (HEATERS.contains(kind)) {
                if (!heats(plan, use, a)) {
                    out.add(new Missing("/use/heating", "design load and efficiency of " + names.called(a)));
                }
            } else if (WATER_HEATERS.contains(kind)) {
                water(plan, use, a, names.called(a), out);
            } else if (kind == ApplianceKind.STANDBY_GENERATOR) {
                if (generators) {
                    out.add(new Missing(
                            "/use/others",
                            "hours a day of " + names.called(a) + ", 0 where it runs in power cuts alone"));
                }
            } else {
                out.add(new Missing(
                        "/use/others", "how much " + names.called(a) + " burns: gallons a year, or hours a day"));
            }
        }
        return List.copyOf(out);
    }

    /** An entry that names no appliance is for the only one of its sort. */
    private static boolean heats(Plan plan, Use use, Appliance a) {
        boolean only = use.heating().size() == 1 && only(plan, use, HEATERS);
        return use.heating().stream()
                .anyMatch(
                        h -> h.appliance().is(a.id()) || only && !h.appliance().isKnown());
    }

    private static void water(Plan plan, Use use, Appliance a, String called, List<Missing> out) {
        if (use.hotWater().isEmpty()) {
            out.add(new Missing("/use/hotWater", "how much hot water " + called + " makes"));
            return;
        }
        var onDemand = use.hotWater().get().onDemand();
        boolean named = onDemand.filter(o -> o.appliance().is(a.id())).isPresent();
        boolean nameless = onDemand.filter(o -> !o.appliance().isKnown()).isPresent();
        if (named || nameless && only(plan, use, WATER_HEATERS)) {
            return;
        }
        out.add(
                nameless
                        ? new Missing("/use/hotWater/onDemand/appliance", "which water heater it is")
                        : new Missing("/use/others", "how much " + called + " burns: gallons a year, or hours a day"));
    }

    private static boolean only(Plan plan, Use use, Set<ApplianceKind> kinds) {
        return plan.appliances().stream()
                        .filter(a -> a.kind().is(kinds::contains))
                        .filter(a -> use.others().stream()
                                .noneMatch(o -> o.appliance().is(a.id())))
                        .count()
                == 1;
    }
}
