package longrun.pressure;

import java.util.List;
import java.util.stream.Stream;
import longrun.finding.Finding;

/** What the pressures of a plan bring up. */
public final class PressureFindings {

    private PressureFindings() {}

    /** Low inlets, high inlets, line regulator losses. */
    public static List<Finding> of(Pressures pressures) {
        return Stream.of(
                        InletPressureLow.of(pressures),
                        InletPressureHigh.of(pressures),
                        LineRegulatorLoss.of(pressures))
                .flatMap(List::stream)
                .toList();
    }
}
