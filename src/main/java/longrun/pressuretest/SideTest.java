package longrun.pressuretest;

import java.util.List;
import java.util.Optional;
import longrun.piping.Side;
import longrun.quantity.Pressure;

/**
 * The test of all pipe on one side of the point of delivery.
 *
 * @param side tank side or house side; unknown where the kind of a regulator is not entered
 * @param sections ids of its sections
 * @param volumeCuFt what the pipe holds; empty where a bore or a length is not known
 * @param withoutVolume ids of the sections whose bore or length is not known
 * @param working the greatest pressure it stands at in use, at no flow; empty where a setting is not entered
 * @param workingAt the regulator that holds it
 * @param pressure the least test pressure; empty where the working pressure is not known
 * @param pressureFrom how it comes about, with its source
 * @param minutes it must hold
 * @param minutesFrom source of the minutes
 * @param gaugeTop the end of the scale at most
 * @param isolate what is taken off, blanked or closed before, a sentence each
 * @param readings what the gauge showed
 */
public record SideTest(
        Side side,
        List<String> sections,
        Optional<Double> volumeCuFt,
        List<String> withoutVolume,
        Optional<Pressure> working,
        Optional<String> workingAt,
        Optional<Pressure> pressure,
        String pressureFrom,
        int minutes,
        String minutesFrom,
        Optional<Pressure> gaugeTop,
        List<String> isolate,
        List<TestReading> readings) {

    public SideTest {
        sections = List.copyOf(sections);
        withoutVolume = List.copyOf(withoutVolume);
        isolate = List.copyOf(isolate);
        readings = List.copyOf(readings);
    }

    /** What the side is called. */
    public String title() {
        return switch (side) {
            case TANK_SIDE -> "Tank side";
            case HOUSE_SIDE -> "House side";
            case UNKNOWN -> "Side not known: the kind of a regulator is not entered";
        };
    }
}
