package longrun.draft.run;

import java.util.List;
import java.util.Optional;

/**
 * A line as a paste was understood.
 *
 * @param length with unit, or as written where it is none
 * @param input with unit, or as written where it is none
 * @param from the line it leaves, where the paste says so
 * @param pipe its material, where the paste says so
 * @param problems what could not be understood, in words
 */
public record PastedLine(
        String name, String length, String input, Optional<String> from, Optional<Pipe> pipe, List<String> problems) {}
