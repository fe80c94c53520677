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

/** Writes the hot water of a review. */
final class HotWaterJson {

    private HotWaterJson() {}

    static void write(Review review, FuelReport fuel, ReviewObject out) {
        FuelJson.months(out, "mainsF", ColdWater.of(review.plan()));
        review.hotWater().ifPresent(w -> study(review.plan(), w, out));
        TankJson.figure(out, "roomHeatGal", fuel.roomHeatGal());
    }

    private static void study(Plan plan, HotWaterStudy study, ReviewObject out) {
        FuelJson.months(out, "maxFlowGpm", study.maxFlowGpm());
        FuelJson.months(out, "maxFixtureGpm", study.maxFixtureGpm());
        ReviewObject.Items events = out.list("events");
        study.events().forEach(e -> event(plan, e, events.add()));
        ReviewObject arrangements = out.child("arrangements");
        List<StorageSaving> savings = StorageSaving.of(plan, study);
        savings.forEach(s -> arrangement(study.year(s.arrangement()), s, arrangements));
    }

    private static void arrangement(ArrangementYear year, StorageSaving s, ReviewObject all) {
        ReviewObject out = all.child(year.arrangement().written());
        TankJson.figure(out, "propaneGal", s.gal());
        TankJson.figure(out, "electricityKwh", s.kwh());
        TankJson.figure(out, "costPerYear", s.cost());
        simulated(out, "drawMinutes", year.drawMinutes(), "minutes in a year in which hot water is drawn", "min");
        simulated(
                out,
                "minutesComfortable",
                year.comfortMinutes(),
                "minutes in a year in which it is comfortable",
                "min");
        simulated(out, "hottestF", year.hottestF(), "hottest water at a fixture in a year", "degF");
        simulated(out, "coldestF", year.coldestF(), "coldest water at a fixture in a year", "degF");
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

    private static void simulated(ReviewObject out, String field, OptionalDouble value, String name, String unit) {
        out.number(
                field,
                value,
                () -> Origin.derived(
                        name,
                        Figure.text(value.orElse(0), unit),
                        "simulated day by day, and minute by minute while water is drawn",
                        Confidence.COMPUTED,
                        List.of()));
    }

    private static void setPoint(ReviewObject out, String field, OptionalDouble degF) {
        out.number(
                field,
                degF,
                () -> Origin.derived(
                        "set point to turn to",
                        Figure.text(degF.orElse(0), "degF"),
                        "about 10 degF above the mixing valve; storage at least 140 degF",
                        Confidence.MEMORY,
                        List.of()));
    }

    private static void event(Plan plan, DrawEvent e, ReviewObject out) {
        Supplier<Origin> run = () -> Origin.derived(
                e.draw().name(),
                Figure.text(e.draw().gallons(), "gal"),
                "simulated second by second in January (July in the southern hemisphere), "
                        + e.arrangement().written() + "; the storage heater begins as the days before left it",
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

    private static void numbers(ReviewObject out, String field, List<Double> values, Supplier<Origin> origin) {
        out.numbers(field, values.stream().mapToDouble(Double::doubleValue).toArray(), origin);
    }
}
