package longrun.draft.run;

import java.util.List;
import java.util.Optional;

/**
 * A line of a pasted list, as understood.
 *
 * @param length its length with a unit; as written where it is not a length
 * @param input its input with a unit; as written where it is not a heat rate
 * @param from the line it leaves; empty where the list does not say
 * @param pipe its material; empty where the list does not say
 * @param problems what could not be understood, in words
 */
public record PastedLine(
        String name, String length, String input, Optional<String> from, Optional<Pipe> pipe, List<String> problems) {}
