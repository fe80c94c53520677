package longrun.rules.regulator;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import longrun.plan.Fact;
import longrun.plan.Regulator;
import longrun.plan.Site;
import longrun.plan.Tank;
import longrun.plan.choice.Placement;
import longrun.quantity.Pressure;
import longrun.quantity.Temperature;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;
import longrun.tank.Propane;

/**
 * The tank gives the regulator at it the least inlet pressure its maker asks, on the coldest morning: the pressure of
 * propane as warm as the air of the winter design temperature, or as the ground about a buried tank. That is the most
 * the tank can give, with nothing drawn. A regulator further on is judged with the pressure along the pipe.
 */
public final class RegulatorMinInlet implements Rule {

    private static final double SLACK = 1e-9;

    @Override
    public String name() {
        return "regulator-min-inlet";
    }

    @Override
    public Precedence precedence() {
        return Precedence.SIZE;
    }

    @Override
    public List<Verdict> judge(House house) {
        Threshold own = house.limits().get(name(), "");
        List<Verdict> verdicts = new ArrayList<>();
        for (Regulators.At at : Regulators.listIn(house)) {
            verdicts.add(
                    at.regulator().fedBy().is("tank")
                            ? judge(house, own, at.place(), at.regulator())
                            : Judge.notFor(own, at.place()));
        }
        return verdicts;
    }

    private static Verdict judge(House house, Threshold own, Place place, Regulator r) {
        Optional<Pressure> least = r.minInlet().findValue();
        String field = place.pointer() + "/minInlet";
        if (least.isEmpty()) {
            return Judge.asks(
                    own,
                    place,
                    "the least inlet pressure of {who}, which is fed straight from the tank, is not entered",
                    Question.supplier("What inlet pressure does {who} need at its load?"),
                    field);
        }
        Optional<Double> air = house.plan()
                .site()
                .map(Site::winterDesignTemp)
                .flatMap(Fact::findValue)
                .map(Temperature::degF);
        if (air.isEmpty()) {
            return Judge.asks(
                    own,
                    place,
                    "{who} needs " + r.minInlet().findText().orElse("")
                            + "; the winter design temperature, which decides what the tank gives, is not entered",
                    Question.owner("How cold does it get here on the coldest mornings, in degF?"),
                    "/site/winterDesignTemp");
        }
        if (reaches(air.get(), least.get())) {
            return Judge.holds(own, place);
        }
        if (isBuried(house)) {
            Optional<Double> ground = house.plan()
                    .site()
                    .map(Site::groundTemp)
                    .flatMap(Fact::findValue)
                    .map(Temperature::degF);
            if (ground.isEmpty()) {
                return Judge.asks(
                        own,
                        place,
                        "{who} needs " + r.minInlet().findText().orElse("")
                                + "; how warm the ground about the buried tank is, is not entered",
                        Question.supplier("How warm is the ground about the tank at the end of winter, in degF?"),
                        "/site/groundTemp");
            }
            return reaches(ground.get(), least.get())
                    ? Judge.holds(own, place)
                    : broken(own, place, r, ground.get(), "ground", field);
        }
        return broken(own, place, r, air.get(), "air", field);
    }

    /** At the very pressure asked for nothing flows any more. */
    private static boolean reaches(double degF, Pressure least) {
        return Propane.psig(degF) > least.psi() + SLACK;
    }

    private static boolean isBuried(House house) {
        List<Tank> tanks = house.plan().allTanks();
        return !tanks.isEmpty() && tanks.stream().allMatch(t -> t.placement().is(Placement.UNDERGROUND));
    }

    private static Verdict broken(Threshold own, Place place, Regulator r, double degF, String about, String field) {
        return Judge.broken(
                own,
                place,
                String.format(
                        Locale.ROOT,
                        "{who} needs %s at its inlet; with the %s at %,.0f degF the tank gives %,.1f psi at most",
                        r.minInlet().findText().orElse(""),
                        about,
                        degF,
                        Math.max(0, Propane.psig(degF))),
                "Fit a regulator that works at a lower inlet pressure, bury the tank, or ask the supplier for a"
                        + " vaporiser.",
                field);
    }
}
