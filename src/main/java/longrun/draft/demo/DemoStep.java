package longrun.draft.demo;

import java.util.List;
import java.util.Optional;
import longrun.draft.PlaceKind;

/**
 * One step of the walk through the demo house: what to look at in a place.
 *
 * @param place where it is seen
 * @param words one sentence
 */
public record DemoStep(PlaceKind place, String words) {

    /** The walk, in the order of the thread. */
    public static final List<DemoStep> WALK = List.of(
            new DemoStep(
                    PlaceKind.HOUSE,
                    "This house is invented, so that there is something to look at: two regulators reduce the pressure"
                            + ", and you can ask of every figure where it comes from."),
            new DemoStep(
                    PlaceKind.ROUTE,
                    "Take a section in hand, in the list or in the drawing: its size and its share of capacity stand"
                            + " beside it, the row of the printed table below."),
            new DemoStep(
                    PlaceKind.CONNECTIONS,
                    "The parts at an appliance are drawn in the order the gas meets them; move one, and what the code"
                            + " says of it stands below."),
            new DemoStep(
                    PlaceKind.TANK,
                    "Slide the gauge down and the air colder: the vapour the tank gives falls towards what the house"
                            + " asks for."),
            new DemoStep(
                    PlaceKind.FINDINGS,
                    "Some facts were left out on purpose: these are the questions to take along, by who can answer."),
            new DemoStep(
                    PlaceKind.PAPERS,
                    "The sheets for supplier, fitter and inspector are made from the same figures, each with what is"
                            + " still open in it."));

    /** The step of a place, or the first after it; of the last place the last. */
    public static DemoStep at(PlaceKind place) {
        return WALK.stream()
                .filter(s -> s.place().compareTo(place) >= 0)
                .findFirst()
                .orElse(WALK.get(WALK.size() - 1));
    }

    /** The next step; empty after the last. */
    public Optional<DemoStep> next() {
        int i = WALK.indexOf(this) + 1;
        return i < WALK.size() ? Optional.of(WALK.get(i)) : Optional.empty();
    }

    /** Its number, from 1. */
    public int number() {
        return WALK.indexOf(this) + 1;
    }
}
