package longrun.tank;

import java.util.ArrayList;
import java.util.List;
import longrun.hotwater.DailyNeed;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.origin.Months;
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

    /** What the mean takes into account: the gains the balance point stands for, and hot water without its storage. */
    public static List<String> takes(Plan plan) {
        List<String> out = new ArrayList<>();
        for (SpaceHeating h : SpaceHeating.of(plan)) {
            if (h.gainsBtuh().isKnown() && h.gainsBtuh().number() > 0) {
                out.add("heating counts from the balance point of "
                        + h.balanceF().text() + ": people, lamps and sun are taken to give "
                        + h.gainsBtuh().text() + " all day, also on that day");
            }
        }
        plan.use().flatMap(Use::hotWater).ifPresent(w -> {
            if (w.storage().isPresent()) {
                out.add("hot water is taken as made without the storage heater, from the coldest water of the year");
            }
        });
        return List.copyOf(out);
    }

    /** The mean, Btu/h, or what is missing to know it. */
    public static Figure mean(Plan plan) {
        String name = "mean of the design day";
        List<Missing> unused = UnusedAppliances.onTheDesignDay(plan);
        if (!unused.isEmpty()) {
            return Figure.unknown(name, "Btu/h", unused);
        }
        double value = heatingValue(plan).number();
        List<Figure> parts = new ArrayList<>();
        SpaceHeating.of(plan).forEach(h -> parts.add(h.designDay(plan)));
        plan.use().flatMap(Use::hotWater).ifPresent(h -> parts.add(hotWater(DailyNeed.withoutStorageBtu(plan, h))));
        OtherUse.of(plan, value).forEach(o -> parts.add(o.greatestMean(value)));
        if (parts.isEmpty()) {
            return Figure.unknown(
                    name,
                    "Btu/h",
                    List.of(new Missing("/use", "what propane is used for: heating, hot water, the rest")));
        }
        return Figure.sum(name, "Btu/h", parts);
    }

    private static Figure hotWater(Months btu) {
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
