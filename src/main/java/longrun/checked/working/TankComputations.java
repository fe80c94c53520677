package longrun.checked.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import longrun.capacity.GasProperties;
import longrun.checked.published.CaseInput;
import longrun.plan.Plan;
import longrun.plan.choice.TankKind;
import longrun.tank.CylinderTable;
import longrun.tank.DesignDay;
import longrun.tank.FillLimit;
import longrun.tank.Propane;
import longrun.tank.TankReport;
import longrun.tank.TankStudy;

/** Tanks: vapour, filling limit, vapour pressure, contents of a cylinder and how long it lasts. */
final class TankComputations {

    private static final int MOST_TANKS = 50;

    private TankComputations() {}

    static void addTo(Map<String, Computation> all) {
        all.put(
                "tank-vapour",
                given -> Answer.number(
                        study(given, tanks(given, 1)).capacityAtDesignBtuh().number()));
        all.put("tanks-wanted", TankComputations::wanted);
        all.put("cylinder-vapour", TankComputations::cylinders);
        all.put(
                "fill-limit",
                given -> Answer.number(given.number("gallons")
                        * FillLimit.byWeight(
                                given.number("degf"), given.number("gallons"), false, given.number("gravity"))));
        all.put(
                "vapour-pressure",
                given -> Answer.numbers(
                        given.numbers("degf").stream().map(Propane::psig).toList()));
        all.put("boiling-point", given -> Answer.number(Propane.degF(given.number("psig"))));
        all.put(
                "cylinder-gallons",
                given -> Answer.numbers(given.words("pounds").stream()
                        .map(p -> gallons(given, p))
                        .toList()));
        all.put("cylinder-hours", TankComputations::hours);
        all.put(
                "gas-heat",
                given -> Answer.numbers(given.numbers("ft3-per-hour").stream()
                        .map(v -> v * GasProperties.PROPANE.btuPerFt3())
                        .toList()));
        all.put("gallons-an-hour", given -> Answer.number(given.number("btuh") / DesignDay.BTU_PER_GAL));
    }

    private static TankReport study(CaseInput given, String entries) {
        return TankStudy.of(plan(given, entries));
    }

    private static Plan plan(CaseInput given, String entries) {
        return PipeTree.read(given, "{\"format\":\"longrun-plan/1\"," + entries + "}");
    }

    /** Identical tanks above ground, at the gauge reading at which they are refilled, on the design day. */
    private static String tanks(CaseInput given, int count) {
        return "\"site\":{\"winterDesignTemp\":\"" + given.text("degf") + " degF\"},\"tank\":{\"kind\":\""
                + TankKind.ASME.written()
                + "\",\"orientation\":\"horizontal\",\"placement\":\"above-ground\",\"waterCapacity\":\""
                + given.text("gallons") + " gal\",\"diameter\":\"" + given.text("diameter") + " in\",\"length\":\""
                + given.text("length") + " in\",\"gauge\":\"" + given.text("percent") + " %\",\"refillAt\":\""
                + given.text("percent") + " %\",\"count\":" + count + "}";
    }

    /** The smallest number of identical tanks that give the vapour required; NaN where {@value #MOST_TANKS} do not. */
    private static Answer wanted(CaseInput given) {
        for (int count = 1; count <= MOST_TANKS; count++) {
            if (study(given, tanks(given, count)).capacityAtDesignBtuh().number() >= given.number("btuh")) {
                return Answer.number(count);
            }
        }
        return Answer.number(Double.NaN);
    }

    /** Vapour of a cylinder, thousand Btu/h, for each weight of propane at each temperature. */
    private static Answer cylinders(CaseInput given) {
        List<Double> out = new ArrayList<>();
        for (double pounds : given.numbers("pounds")) {
            for (double degF : given.numbers("degf")) {
                out.add(CylinderTable.btuh(pounds, degF).orElse(Double.NaN) / 1000);
            }
        }
        return Answer.numbers(out);
    }

    private static double gallons(CaseInput given, String pounds) {
        return study(given, cylinder(pounds)).fullGal().number();
    }

    private static String cylinder(String pounds) {
        return "\"tank\":{\"kind\":\"" + TankKind.CYLINDER.written() + "\",\"propaneWeight\":\"" + pounds + " lb\"}";
    }

    /** Hours a full cylinder feeds a load, with the heating value of a pound that the case gives. */
    private static Answer hours(CaseInput given) {
        String pounds = given.text("pounds");
        double perGal = given.number("btu-per-lb") * given.number("pounds") / gallons(given, pounds);
        Plan plan =
                plan(given, cylinder(pounds) + ",\"use\":{\"heatingValue\":\"" + Math.round(perGal) + " Btu/gal\"}");
        return Answer.number(TankStudy.of(plan).fullGal().number()
                * DesignDay.heatingValue(plan).number()
                / given.number("btuh"));
    }
}
