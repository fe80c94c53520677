package longrun.review.json;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import longrun.fuel.FuelReport;
import longrun.fuel.StorageSaving;
import longrun.hotwater.ArrangementYear;
import longrun.hotwater.ColdWater;
import longrun.hotwater.HotWaterStudy;
import longrun.hotwater.draw.DrawEvent;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Origin;
import longrun.plan.Plan;
import longrun.review.Review;
import longrun.tank.DesignDay;

/** What a review says of hot water. */
final class HotWaterJson {

    private HotWaterJson() {}

    static void write(Review review, FuelReport fuel, Out out) {
        FuelJson.months(out, "mainsF", ColdWater.of(review.plan()));
        review.hotWater().ifPresent(w -> study(review.plan(), w, out));
        TankJson.figure(out, "roomHeatGal", fuel.roomHeatGal());
    }

    private static void study(Plan plan, HotWaterStudy study, Out out) {
        FuelJson.months(out, "maxFlowGpm", study.maxFlowGpm());
        FuelJson.months(out, "maxFixtureGpm", study.maxFixtureGpm());
        Out.Items events = out.list("events");
        study.events().forEach(e -> event(plan, e, events.add()));
        Out arrangements = out.child("arrangements");
        List<StorageSaving> savings = StorageSaving.of(plan, study);
        savings.forEach(s -> arrangement(study.year(s.arrangement()), s, arrangements));
    }

    private static void arrangement(ArrangementYear year, StorageSaving s, Out all) {
        Out out = all.child(year.arrangement().written());
        TankJson.figure(out, "propaneGal", s.gal());
        TankJson.figure(out, "electricityKwh", s.kwh());
        TankJson.figure(out, "costPerYear", s.cost());
        ran(out, "drawMinutes", year.drawMinutes(), "minutes hot water is drawn in a year", "min");
        ran(out, "minutesComfortable", year.comfortMinutes(), "comfortable minutes of a year", "min");
        ran(out, "hottestF", year.hottestF(), "hottest at a fixture in a year", "degF");
        ran(out, "coldestF", year.coldestF(), "coldest at a fixture in a year", "degF");
        setPoint(out, "storageSetF", year.setPoints().storageF());
        setPoint(out, "onDemandSetF", year.setPoints().onDemandF());
        TankJson.figure(out, "savedGal", s.savedGal());
        TankJson.figure(out, "savedMoney", s.savedMoney());
        TankJson.figure(out, "savedCo2Lb", s.savedCo2Lb());
        TankJson.figure(out, "roomTakesBackGal", s.roomGal());
        TankJson.figure(out, "savedAfterRoomGal", s.savedGalAfter());
        TankJson.figure(out, "savedAfterRoomMoney", s.savedMoneyAfter());
        TankJson.figure(out, "savedAfterRoomCo2Lb", s.savedCo2LbAfter());
    }

    private static void ran(Out out, String field, OptionalDouble value, String name, String unit) {
        out.number(
                field,
                value,
                () -> Origin.derived(
                        name,
                        Figure.text(value.orElse(0), unit),
                        "run day by day, minute by minute where water is drawn",
                        Confidence.COMPUTED,
                        List.of()));
    }

    private static void setPoint(Out out, String field, OptionalDouble degF) {
        out.number(
                field,
                degF,
                () -> Origin.derived(
                        "set point to turn to",
                        Figure.text(degF.orElse(0), "degF"),
                        "some 10 degF over the mixing valve; storage at least 140 degF",
                        Confidence.MEMORY,
                        List.of()));
    }

    private static void event(Plan plan, DrawEvent e, Out out) {
        Supplier<Origin> run = () -> Origin.derived(
                e.draw().name(),
                Figure.text(e.draw().gallons(), "gal"),
                "run second by second in January (July in the south), "
                        + e.arrangement().written() + "; the storage as the days before left it",
                Confidence.COMPUTED,
                List.of());
        out.text("name", e.draw().name());
        out.text("arrangement", e.arrangement().written());
        numbers(out, "outletF", e.outletF(), run);
        numbers(out, "fixtureF", e.fixtureF(), run);
        numbers(out, "inputBtuh", e.inputBtuh(), run);
        out.number("minutesComfortable", e.minutesComfortable(), run);
        out.number("hottestF", e.hottestF(), run);
        out.number("coldestF", e.coldestF(), run);
        out.number("hottestOutletF", e.hottestOutletF(), run);
        out.number("keepsFlowGpm", e.keepsGpm(), run);
        out.number("hottestInletF", e.hottestInletF(), run);
        Figure heat = Figure.given("gas for " + e.draw().name(), e.gasBtu(), "Btu", "the run", Confidence.COMPUTED);
        TankJson.figure(
                out,
                "propaneGal",
                Figure.of(
                        "propane for " + e.draw().name(),
                        "gal",
                        "gas / heating value",
                        Confidence.COMPUTED,
                        List.of(heat, DesignDay.heatingValue(plan)),
                        v -> v[0] / v[1]));
    }

    private static void numbers(Out out, String field, List<Double> values, Supplier<Origin> origin) {
        out.numbers(field, values.stream().mapToDouble(Double::doubleValue).toArray(), origin);
    }
}
