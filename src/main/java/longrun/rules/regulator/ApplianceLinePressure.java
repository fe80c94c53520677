package longrun.rules.regulator;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import longrun.plan.Appliance;
import longrun.pressure.LinePressure;
import longrun.pressure.OutletPressure;
import longrun.quantity.Pressure;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/**
 * A stage set to 1 psi or more never ends at a household burner (RG-16): a regulator lacks between them. Only a greatest
 * inlet pressure read from the plate says otherwise; that the plate gives none is no reading, and one above 1 psi on a
 * household kind is read again before it counts.
 */
public final class ApplianceLinePressure implements Rule {

    @Override
    public String name() {
        return "appliance-line-pressure";
    }

    @Override
    public Precedence precedence() {
        return Precedence.MISSING;
    }

    @Override
    public List<Verdict> judge(House house) {
        Threshold own = house.limits().get(name(), "");
        List<Verdict> verdicts = new ArrayList<>();
        List<Appliance> appliances = house.plan().appliances();
        for (int a = 0; a < appliances.size(); a++) {
            Appliance appliance = appliances.get(a);
            verdicts.add(judge(
                    house, own, appliance, house.appliance(a), house.pressures().outlet(a)));
        }
        return verdicts;
    }

    private static Verdict judge(House house, Threshold own, Appliance a, Place place, OutletPressure outlet) {
        if (outlet.regulator() < 0) {
            return Judge.notFor(own, place); // what feeds it is asked where it is entered
        }
        String id = house.pressures().regulator(outlet.regulator()).regulator().id();
        Optional<Boolean> line = LinePressure.stands(house.pressures(), outlet);
        if (line.isEmpty()) {
            return Judge.asks(
                    own,
                    place,
                    "what the regulator " + id + " ahead of {who} is set to is not entered",
                    Question.supplier("What outlet pressure is the regulator " + id + " set to?"),
                    "/regulators/" + outlet.regulator() + "/outlet");
        }
        if (!line.get() || LinePressure.isRatedFor(a, outlet)) {
            return Judge.holds(own, place);
        }
        return broken(house, own, a, place, outlet, id);
    }

    private static Verdict broken(
            House house, Threshold own, Appliance a, Place place, OutletPressure outlet, String id) {
        boolean below = a.maxInlet().is(p -> !LinePressure.isLine(p));
        String plate = a.maxInlet().isUnknown()
                ? "its greatest inlet pressure is not entered"
                : a.maxInlet().isNone()
                        ? "its greatest inlet pressure is entered as none, and that is no reading of the plate"
                        : "its greatest inlet pressure is entered as "
                                + a.maxInlet().findText().orElse("")
                                + (below ? "" : ", which no household burner has");
        String set = house.pressures()
                .regulator(outlet.regulator())
                .regulator()
                .outlet()
                .findText()
                .orElse("");
        double idle = outlet.pressureIdle().orElse(Pressure.ZERO).inWc();
        return Judge.brokenAsking(
                own,
                place,
                "{who} is fed at line pressure by section "
                        + a.fedBy().findText().orElse("") + ", straight from " + id
                        + " set to " + set + " ("
                        + String.format(Locale.ROOT, "%,.0f", idle) + " in. w.c. with nothing firing); " + plate,
                "Put a second-stage or line regulator before {who} that brings it down to what the label asks.",
                Question.plate(
                        "What greatest inlet pressure for propane does the rating plate of {who} give, in in. w.c.?"),
                place.pointer() + (below ? "/fedBy" : "/maxInlet"));
    }
}
