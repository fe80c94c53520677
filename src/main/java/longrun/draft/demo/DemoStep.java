package longrun.draft.demo;

import java.util.List;
import java.util.Optional;
import longrun.draft.PlaceKind;

/**
 * A step of the tour of the demo house: what to look at in a place.
 *
 * @param place the place
 * @param words one sentence
 */
public record DemoStep(PlaceKind place, String words) {

    /** The tour, in the order of the places. */
    public static final List<DemoStep> TOUR = List.of(
            new DemoStep(
                    PlaceKind.HOUSE,
                    "This house is invented, as an example: two regulators reduce the pressure, and for every figure you"
                            + " can ask where it comes from."),
            new DemoStep(
                    PlaceKind.ROUTE,
                    "Select a section in the list or in the drawing: its size and the share of its capacity used are"
                            + " shown beside it, the row of the printed table below."),
            new DemoStep(
                    PlaceKind.CONNECTIONS,
                    "The parts at an appliance are drawn in the order the gas passes them. Move one, and what the code"
                            + " says about it is shown below."),
            new DemoStep(
                    PlaceKind.TANK,
                    "Move the gauge down and make the air colder: the vapour the tank gives falls towards what the house"
                            + " needs."),
            new DemoStep(
                    PlaceKind.FINDINGS,
                    "Some facts were left out on purpose: these are the questions to ask, grouped by who can answer them."),
            new DemoStep(
                    PlaceKind.PAPERS,
                    "The sheets for supplier, fitter and inspector are made from the same figures; each says what is"
                            + " still open in it."));

    /** The step of a place, or the next after it; the last step where there is none after it. */
    public static DemoStep at(PlaceKind place) {
        return TOUR.stream()
                .filter(s -> s.place().compareTo(place) >= 0)
                .findFirst()
                .orElse(TOUR.get(TOUR.size() - 1));
    }

    /** The next step; empty after the last. */
    public Optional<DemoStep> next() {
        int i = TOUR.indexOf(this) + 1;
        return i < TOUR.size() ? Optional.of(TOUR.get(i)) : Optional.empty();
    }

    /** Its number, from 1. */
    public int number() {
        return TOUR.indexOf(this) + 1;
    }
}
