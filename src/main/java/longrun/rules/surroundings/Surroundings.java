package longrun.rules.surroundings;

import java.util.List;
import java.util.stream.Stream;
import longrun.rules.shape.AskedOnce;
import longrun.rules.shape.Rule;

/** The rules on what is round an appliance, in the order they are told. */
public final class Surroundings {

    private Surroundings() {}

    public static List<Rule> rules() {
        return Stream.of(
                        List.<Rule>of(
                                AskedOnce.ofAppliances(new TerminalHeight()),
                                new RegulatorWeather(),
                                AskedOnce.ofAppliances(new AirForCombustion())),
                        Frost.rules(),
                        RoomRules.rules())
                .flatMap(List::stream)
                .toList();
    }
}
