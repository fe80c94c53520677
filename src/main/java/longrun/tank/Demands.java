package longrun.tank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.plan.Appliance;
import longrun.plan.ApplianceNames;
import longrun.plan.Plan;
import longrun.plan.Use;
import longrun.quantity.HeatRate;

/** What is asked of the tank: everything firing, each named occasion, the mean of the design day. */
record Demands(Plan plan, Figure capacity, Figure planned, DoubleFunction<Hold> holding) {

    static final String EVERYTHING = "everything firing";
    static final String MEAN = "mean of the design day";

    /** Minutes a load can be held, or that it is held as long as there is liquid. */
    record Hold(Figure minutes, boolean withoutEnd) {}

    /** Everything firing first, the mean last. */
    List<Demand> list() {
        List<Demand> out = new ArrayList<>();
        List<Figure> all = inputs();
        out.add(everything());
        Map<String, Integer> places = new HashMap<>();
        for (int i = 0; i < plan.appliances().size(); i++) {
            places.put(plan.appliances().get(i).id(), i);
        }
        List<Use.Occasion> occasions = plan.use().map(Use::occasions).orElse(List.of());
        for (int i = 0; i < occasions.size(); i++) {
            String name = occasions.get(i).name().findValue().orElse("occasion " + (i + 1));
            out.add(demand(name, firing(name, occasions.get(i), i, places, all)));
        }
        out.add(demand(MEAN, DesignDay.mean(plan)).overTheDay(DesignDay.takes(plan)));
        return List.copyOf(out);
    }

    /** Everything firing alone. */
    Demand everything() {
        List<Figure> all = inputs();
        return demand(
                EVERYTHING,
                all.isEmpty()
                        ? Figure.unknown(
                                EVERYTHING,
                                "Btu/h",
                                List.of(new Missing("/appliances", "the appliances and their input")))
                        : Figure.sum(EVERYTHING, "Btu/h", all));
    }

    private List<Figure> inputs() {
        ApplianceNames names = ApplianceNames.of(plan);
        List<Figure> all = new ArrayList<>();
        for (int i = 0; i < plan.appliances().size(); i++) {
            all.add(input(i, names));
        }
        return all;
    }

    private Figure input(int i, ApplianceNames names) {
        Appliance a = plan.appliances().get(i);
        return Figure.entered(
                "input of " + a.id(),
                a.input(),
                HeatRate::btuh,
                "Btu/h",
                "/appliances/" + i + "/input",
                "INPUT on the rating plate of " + names.called(a) + ", propane line");
    }

    private static Figure firing(
            String name, Use.Occasion occasion, int index, Map<String, Integer> places, List<Figure> inputs) {
        Optional<List<String>> ids = occasion.firing().findValue().filter(l -> !l.isEmpty());
        String field = "/use/occasions/" + index + "/firing";
        if (ids.isEmpty()) {
            return Figure.unknown(name, "Btu/h", List.of(new Missing(field, "which appliances fire together")));
        }
        List<Figure> parts = new ArrayList<>();
        for (String id : ids.get()) {
            Integer at = places.get(id);
            parts.add(
                    at == null
                            ? Figure.unknown(id, "Btu/h", List.of(new Missing(field, "the name of an appliance")))
                            : inputs.get(at));
        }
        return Figure.sum(name, "Btu/h", parts);
    }

    private Demand demand(String name, Figure load) {
        Demand.Status status = status(load);
        Hold hold = status == Demand.Status.UNKNOWN
                ? new Hold(Figure.unknown("minutes it can be held", "min", List.of()), false)
                : holding.apply(load.number());
        return new Demand(name, load, status, hold.minutes(), hold.withoutEnd(), false, List.of());
    }

    private Demand.Status status(Figure load) {
        if (!load.isKnown() || !capacity.isKnown()) {
            return Demand.Status.UNKNOWN;
        }
        if (load.number() > capacity.number()) {
            return Demand.Status.SHORT;
        }
        return planned.isKnown() && load.number() <= planned.number() ? Demand.Status.CARRIES : Demand.Status.DOUBTFUL;
    }
}
