package longrun.rules.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import longrun.plan.Appliance;
import longrun.plan.Appliance.Part;
import longrun.plan.ApplianceNames;
import longrun.plan.Plan;
import longrun.plan.choice.PartKind;
import longrun.plan.choice.ShutoffPlace;

/**
 * The parts at one appliance, in flow order.
 *
 * @param serving which part is the shutoff the rules look at, where several are fitted: they must be met by one valve
 */
public record Hookup(Appliance appliance, Place place, OptionalInt serving) {

    public static final Comparator<Fitted> NEAREST = Comparator.comparingDouble(Hookup::distance);

    private static final int NOWHERE = -1;

    /** One part and where it stands in the row. */
    public record Fitted(Hookup hookup, int index, Part part) {

        public Place place() {
            return hookup.place.inside("connection/" + index);
        }
    }

    public static List<Hookup> listIn(House house) {
        return house.hookups();
    }

    /** Every appliance's hookup, with all its shutoffs in sight. */
    static List<Hookup> listIn(Plan plan, ApplianceNames names) {
        List<Hookup> all = new ArrayList<>();
        List<Appliance> appliances = plan.appliances();
        for (int i = 0; i < appliances.size(); i++) {
            Appliance a = appliances.get(i);
            all.add(new Hookup(a, new Place(a.id(), "/appliances/" + i, names.called(a)), OptionalInt.empty()));
        }
        return all;
    }

    /** The same with one of its shutoffs as the one that serves. */
    public Hookup servedBy(Fitted shutoff) {
        return new Hookup(appliance, place, OptionalInt.of(shutoff.index()));
    }

    private boolean isInSight(Fitted f) {
        return serving.isEmpty()
                || f.index() == serving.getAsInt()
                || !f.part().part().is(PartKind.SHUTOFF);
    }

    public String connectionPointer() {
        return place.pointer() + "/connection";
    }

    public boolean isUnknown() {
        return appliance.connection().isUnknown();
    }

    public List<Fitted> parts() {
        List<Part> parts = appliance.connection().findValue().orElse(List.of());
        if (parts.isEmpty()) {
            return List.of();
        }
        List<Fitted> fitted = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            fitted.add(new Fitted(this, i, parts.get(i)));
        }
        return fitted;
    }

    public List<Fitted> listOf(PartKind kind) {
        List<Fitted> all = parts();
        return all.isEmpty()
                ? all
                : all.stream()
                        .filter(f -> f.part().part().is(kind) && isInSight(f))
                        .toList();
    }

    public boolean has(PartKind kind) {
        return !listOf(kind).isEmpty();
    }

    /** The first part of any of these kinds, or -1. */
    public int first(PartKind... kinds) {
        return parts().stream()
                .filter(f -> isInSight(f)
                        && Arrays.stream(kinds).anyMatch(k -> f.part().part().is(k)))
                .mapToInt(Fitted::index)
                .findFirst()
                .orElse(NOWHERE);
    }

    /** The first part whose kind is not entered. */
    public Optional<Fitted> findUnnamed() {
        return parts().stream().filter(f -> !f.part().part().isKnown()).findFirst();
    }

    /** The shutoff that serves the appliance; the nearest by the distances entered, else the first, where not chosen. */
    public Optional<Fitted> findShutoff() {
        return listOf(PartKind.SHUTOFF).stream().min(NEAREST);
    }

    private static double distance(Fitted valve) {
        return valve.part().distance().findValue().map(d -> d.length().feet()).orElse(Double.MAX_VALUE);
    }

    /** Where the serving shutoff is; at the appliance where nothing else is entered, which is the stricter case. */
    public ShutoffPlace shutoffPlace() {
        return findShutoff().flatMap(f -> f.part().place().findValue()).orElse(ShutoffPlace.APPLIANCE);
    }

    /** What a rule says of a part that is not in the row, or empty where the row shows enough. */
    public <T> Optional<Case<T>> findUnseen(String what) {
        if (isUnknown()) {
            return Optional.of(Case.asks(
                    place,
                    "the parts between the pipe and {who} are not entered",
                    Question.fitter("Which parts are fitted at {who}, in order from the pipe to the appliance:"
                            + " shutoff, sediment trap, union, connector?"),
                    connectionPointer()));
        }
        return findUnnamed()
                .map(f -> Case.asks(
                        f.place(),
                        "part " + (f.index() + 1) + " at {who} has no kind entered, so " + what + " is not known",
                        Question.fitter("What is part " + (f.index() + 1) + " at {who}, counted from the pipe?"),
                        f.place().pointer() + "/part"));
    }

    /** Every part of a kind, or the reason why there is none to judge. */
    public static Cases<Part> each(PartKind kind, String what) {
        return house -> {
            List<Case<Part>> cases = new ArrayList<>();
            for (Hookup h : listIn(house)) {
                List<Fitted> fitted = h.listOf(kind);
                if (fitted.isEmpty()) {
                    cases.add(h.<Part>findUnseen(what).orElseGet(() -> Case.notFor(h.place())));
                }
                fitted.forEach(f -> cases.add(Case.of(f.place(), f.part())));
            }
            return cases;
        };
    }
}
