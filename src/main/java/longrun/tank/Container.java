package longrun.tank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.plan.Fact;
import longrun.plan.GaugeReading;
import longrun.plan.Plan;
import longrun.plan.Site;
import longrun.plan.Tank;
import longrun.plan.choice.Orientation;
import longrun.plan.choice.Placement;
import longrun.plan.choice.TankKind;
import longrun.quantity.Length;
import longrun.quantity.Mass;
import longrun.quantity.Volume;

/**
 * One tank entry with its sizes looked up: what it holds and what turns its liquid to gas.
 *
 * @param at JSON pointer of the entry
 * @param cylinder whether it is filled and gauged by weight
 * @param count how many like it stand on one manifold
 * @param capacityGal gallons one of them holds brim full (a cylinder: when full by weight)
 * @param body the body from which vapour is worked out; empty where it is not known
 * @param bodyFrom the figures the body was made from
 * @param bodyMissing what is lacking to tell the body
 */
record Container(
        Tank entry,
        String at,
        boolean cylinder,
        boolean underground,
        Figure count,
        Figure capacityGal,
        Optional<Vaporiser> body,
        List<Figure> bodyFrom,
        List<Missing> bodyMissing) {

    /** Pounds of propane in a gallon, as used for cylinders (secondary). */
    static final double CYLINDER_LB_PER_GAL = 4.24;
    /** Cover over a buried tank where no depth is entered, ft. */
    private static final double COVER_FT = 1;

    static List<Container> of(Plan plan) {
        List<Tank> tanks = plan.allTanks();
        boolean single = !plan.tank().isEmpty();
        List<Container> out = new ArrayList<>();
        for (int i = 0; i < tanks.size(); i++) {
            String at = single && tanks.size() == 1 ? "/tank" : (single ? "/tank/" : "/tanks/") + i;
            out.add(of(tanks.get(i), at, plan));
        }
        return List.copyOf(out);
    }

    private static Container of(Tank tank, String at, Plan plan) {
        Figure count = tank.count().isKnown()
                ? Figure.entered("tanks alike", tank.count(), c -> c, "", at + "/count", "how many alike")
                : Figure.given("tanks alike", 1, "", "one entry, one tank", Confidence.COMPUTED);
        if (tank.count().is(c -> c < 1 || c != Math.rint(c))) {
            count = Figure.unknown(
                    "tanks alike", "", List.of(new Missing(at + "/count", "a whole number of tanks, 1 or more")));
        }
        boolean cylinder = tank.kind().is(TankKind.CYLINDER);
        boolean underground = tank.placement().is(Placement.UNDERGROUND);
        Body body = tank.kind().isKnown()
                ? cylinder ? cylinderBody(tank, at) : asmeBody(tank, at, plan)
                : Body.lacking(List.of(new Missing(at + "/kind", "what the propane is kept in: a tank or cylinders")));
        Figure capacity = cylinder
                ? Figure.of(
                        "full by weight",
                        "gal",
                        "pounds / 4.24 lb/gal",
                        Confidence.SECONDARY,
                        List.of(pounds(tank, at)),
                        v -> v[0] / CYLINDER_LB_PER_GAL)
                : Figure.entered(
                        "water capacity",
                        tank.waterCapacity(),
                        Volume::gallons,
                        "gal",
                        at + "/waterCapacity",
                        "water capacity from the tank's plate");
        return new Container(
                tank, at, cylinder, underground, count, capacity, body.body(), body.from(), body.missing());
    }

    /** Share of the tank a reading stands for; unknown for a weight on a tank or a weight without the full weight. */
    Figure share(String name, Fact<GaugeReading> reading, String field, String words) {
        Optional<GaugeReading> value = reading.findValue();
        if (value.isPresent() && value.get() instanceof GaugeReading.Weight weight) {
            if (!cylinder) {
                return Figure.unknown(
                        name,
                        "%",
                        List.of(new Missing(at + field, "percent of the water capacity, as the gauge shows")));
            }
            return Figure.of(
                    name,
                    "%",
                    "pounds left / pounds when full",
                    Confidence.COMPUTED,
                    List.of(pounds(entry, at)),
                    v -> 100 * weight.weight().pounds() / v[0]);
        }
        return Figure.entered(
                name,
                reading,
                r -> r instanceof GaugeReading.Share s ? s.share().percent() : Double.NaN,
                "%",
                at + field,
                words);
    }

    private static Figure pounds(Tank tank, String at) {
        if (!tank.propaneWeight().isKnown() && tank.waterCapacity().isKnown()) {
            return Figure.of(
                    "propane when full",
                    "lb",
                    "42 % of the water's weight, 8.337 lb/gal (49 CFR 173.304a)",
                    Confidence.MEMORY,
                    List.of(Figure.entered(
                            "water capacity", tank.waterCapacity(), Volume::gallons, "gal", at + "/waterCapacity", "")),
                    v -> 0.42 * 8.337 * v[0]);
        }
        return Figure.entered(
                "propane when full",
                tank.propaneWeight(),
                Mass::pounds,
                "lb",
                at + "/propaneWeight",
                "pounds of propane the cylinder holds when full");
    }

    private record Body(Optional<Vaporiser> body, List<Figure> from, List<Missing> missing) {
        static Body lacking(List<Missing> missing) {
            return new Body(Optional.empty(), List.of(), missing);
        }

        static Body of(Vaporiser body, List<Figure> from) {
            return new Body(Optional.of(body), from, List.of());
        }
    }

    private static Body cylinderBody(Tank tank, String at) {
        Figure pounds = pounds(tank, at);
        if (!pounds.isKnown()) {
            return Body.lacking(pounds.missing());
        }
        if (Math.abs(pounds.number() - CylinderTable.FULL_LB) > 2) {
            return Body.lacking(List.of(new Missing(
                    at + "/vapourCapacity", "the supplier's figure: a table is at hand only for the 100 lb cylinder")));
        }
        return Body.of(new Vaporiser.Cylinder(), List.of(pounds));
    }

    private static Body asmeBody(Tank tank, String at, Plan plan) {
        List<Missing> missing = new ArrayList<>();
        if (!tank.orientation().isKnown()) {
            missing.add(new Missing(at + "/orientation", "how the tank is set: lying or upright"));
        }
        if (!tank.placement().isKnown()) {
            missing.add(new Missing(at + "/placement", "where the tank stands: above-ground or underground"));
        }
        boolean own = tank.diameter().isKnown() || tank.length().isKnown();
        Figure diameter = side(tank, tank.diameter(), own, at, "diameter", StandardTanks.Size::diameterIn);
        Figure length = side(tank, tank.length(), own, at, "length", StandardTanks.Size::lengthIn);
        missing.addAll(diameter.missing());
        length.missing().stream().filter(m -> !missing.contains(m)).forEach(missing::add);
        boolean buried = tank.placement().is(Placement.UNDERGROUND);
        boolean upright = tank.orientation().is(Orientation.VERTICAL);
        if (buried && upright) {
            missing.add(new Missing(
                    at + "/vapourCapacity", "the supplier's figure: a buried upright tank follows no rule at hand"));
        }
        Figure ground = Figure.entered(
                "ground",
                plan.site().map(Site::groundTemp).orElse(Fact.unknown()),
                t -> t.degF(),
                "degF",
                "/site/groundTemp",
                "winter temperature of the ground at the tank's depth");
        if (buried) {
            missing.addAll(ground.missing());
        }
        if (!missing.isEmpty()) {
            return Body.lacking(missing);
        }
        double d = diameter.number();
        double l = length.number();
        if (d <= 0 || l <= 0) {
            return Body.lacking(List.of(new Missing(at + "/diameter", "a diameter and a length above 0 in")));
        }
        if (!buried) {
            return Body.of(
                    upright ? new Vaporiser.Standing(d, l) : new Vaporiser.Lying(d, l), List.of(diameter, length));
        }
        Figure axis = tank.axisDepth().isKnown()
                ? Figure.entered("depth of the axis", tank.axisDepth(), Length::feet, "ft", at + "/axisDepth", "")
                : Figure.given(
                        "depth of the axis", COVER_FT + d / 24, "ft", "1 ft of cover, none entered", Confidence.MEMORY);
        if (axis.number() <= d / 24) {
            return Body.lacking(List.of(new Missing(
                    at + "/axisDepth",
                    "a depth of the axis of more than half the diameter, " + Figure.text(d / 24, "ft"))));
        }
        Figure soil = Figure.given("soil", Vaporiser.SOIL, "Btu/(h.ft.degF)", "held from memory", Confidence.MEMORY);
        return Body.of(
                new Vaporiser.Buried(d, l, axis.number(), ground.number()),
                List.of(diameter, length, axis, ground, soil));
    }

    private static Figure side(
            Tank tank,
            Fact<Length> entered,
            boolean own,
            String at,
            String field,
            java.util.function.ToDoubleFunction<StandardTanks.Size> standard) {
        if (entered.isKnown()) {
            return Figure.entered(field, entered, Length::inches, "in", at + "/" + field, "");
        }
        if (own) { // its own diameter with a standard length, or the other way round, is no tank that stands anywhere
            return Figure.unknown(
                    field,
                    "in",
                    List.of(new Missing(at + "/" + field, field + " of the tank too: one measure alone fits no tank")));
        }
        Optional<Volume> water = tank.waterCapacity().findValue();
        if (water.isEmpty()) {
            return Figure.unknown(
                    field, "in", List.of(new Missing(at + "/waterCapacity", "water capacity from the tank's plate")));
        }
        if (!tank.orientation().isKnown()) {
            return Figure.unknown(
                    field, "in", List.of(new Missing(at + "/orientation", "how the tank is set: lying or upright")));
        }
        return StandardTanks.find(
                        TankKind.ASME,
                        tank.orientation().findValue().orElse(Orientation.HORIZONTAL),
                        water.get().gallons())
                .map(s ->
                        Figure.given(field, standard.applyAsDouble(s), "in", "standard size " + s.id(), s.confidence()))
                .orElseGet(() -> Figure.unknown(
                        field,
                        "in",
                        List.of(new Missing(
                                at + "/" + field, field + " of the tank: its capacity is not a standard size"))));
    }
}
