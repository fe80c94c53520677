package longrun.rules.surroundings;

import java.util.Optional;

/**
 * One way to air for the burners of a room, worked out.
 *
 * @param outcome whether it is enough
 * @param sum the arithmetic in one line, with the code's numbers and the entered ones
 * @param ask where it cannot be worked out, what is missing
 */
public record AirWay(Outcome outcome, String sum, Optional<Ask> ask) {

    /** What came of it. */
    public enum Outcome {
        ENOUGH,
        SHORT,
        /** An entry is missing. */
        OPEN
    }

    /** The entry that is missing, by its JSON pointer, and the question it answers. */
    record Ask(String found, String question, String field) {}

    static AirWay of(boolean enough, String sum) {
        return new AirWay(enough ? Outcome.ENOUGH : Outcome.SHORT, sum, Optional.empty());
    }

    static AirWay open(String found, String question, String field) {
        return new AirWay(Outcome.OPEN, found, Optional.of(new Ask(found, question, field)));
    }
}
