package longrun.tank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.hotwater.HotWaterUse;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.plan.Appliance;
import longrun.plan.ApplianceKind;
import longrun.plan.Plan;
import longrun.plan.Use;

/** What the house burns on the design day, as a mean over its 24 hours; storage hot water is taken as out of use. */
public final class DesignDay {

    /** Heat in a gallon where none is entered, Btu (secondary; 90,502 where that print is a slip). */
    public static final double BTU_PER_GAL = 91_502;

    private DesignDay() {}

    /** Heat in a gallon of propane. */
    public static Figure heatingValue(Plan plan) {
        return plan.use()
                .map(Use::heatingValue)
                .filter(f -> f.isKnown())
                .map(f -> Figure.entered("heating value", f, h -> h.btuPerGallon(), "Btu/gal", "/use/heatingValue", ""))
                .orElseGet(() -> Figure.given(
                        "heating value", BTU_PER_GAL, "Btu/gal", "handbook set, none entered", Confidence.SECONDARY));
    }

    /** Appliances that no use is entered for, without which no sum is true; a standby generator's outages apart. */
    public static List<Missing> unused(Plan plan) {
        if (plan.use().isEmpty()) {
            return List.of(new Missing("/use", "what propane is used for: heating, hot water, the rest"));
        }
        Use use = plan.use().get();
        List<Missing> out = new ArrayList<>();
        for (Appliance a : plan.appliances()) {
            Optional<ApplianceKind> kind = a.kind().findValue();
            boolean named = use.others().stream().anyMatch(o -> o.appliance().is(a.id()));
            if (named) {
                continue;
            }
            switch (kind.orElse(ApplianceKind.OTHER)) {
                case FURNACE, BOILER, SPACE_HEATER -> {
                    boolean heats = use.heating().stream()
                            .anyMatch(h -> h.appliance().is(a.id())
                                    || !h.appliance().isKnown() && use.heating().size() == 1);
                    if (!heats) {
                        out.add(new Missing("/use/heating", "design load and efficiency of " + a.id()));
                    }
                }
                case ON_DEMAND_WATER_HEATER, STORAGE_WATER_HEATER -> {
                    if (use.hotWater().isEmpty()) {
                        out.add(new Missing("/use/hotWater", "the hot water " + a.id() + " makes"));
                    }
                }
                case STANDBY_GENERATOR -> {} // burns in an outage; no part of an ordinary year
                default -> out.add(new Missing("/use/others", "gallons a year or hours a day of " + a.id()));
            }
        }
        return List.copyOf(out);
    }

    /** The mean, Btu/h, or what is missing to know it. */
    public static Figure mean(Plan plan) {
        String name = "mean of the design day";
        List<Missing> unused = unused(plan);
        if (!unused.isEmpty()) {
            return Figure.unknown(name, "Btu/h", unused);
        }
        double value = heatingValue(plan).number();
        List<Figure> parts = new ArrayList<>();
        SpaceHeating.of(plan).forEach(h -> parts.add(h.designDay(plan)));
        plan.use().flatMap(Use::hotWater).ifPresent(h -> parts.add(hotWater(HotWaterUse.of(plan, h))));
        OtherUse.of(plan, value).forEach(o -> parts.add(o.greatestMean(value)));
        if (parts.isEmpty()) {
            return Figure.unknown(
                    name,
                    "Btu/h",
                    List.of(new Missing("/use", "what propane is used for: heating, hot water, the rest")));
        }
        return Figure.sum(name, "Btu/h", parts);
    }

    private static Figure hotWater(HotWaterUse use) {
        Months btu = use.withoutStorageBtu();
        if (!btu.isKnown()) {
            return Figure.unknown("hot water on the design day", "Btu/h", btu.missing());
        }
        double most =
                btu.values().stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        return Figure.of(
                "hot water on the design day",
                "Btu/h",
                "coldest water of the year; " + btu.how(),
                Confidence.COMPUTED,
                btu.from(),
                v -> most / 24);
    }
}
