package longrun.pressure;

import java.util.List;
import java.util.Optional;
import longrun.origin.Confidence;
import longrun.origin.Origin;
import longrun.quantity.Pressure;

/** A figure that has a where from of its own, named as an input of another. */
final class FiguredElsewhere {

    private FiguredElsewhere() {}

    static Origin inWc(String figure, Optional<Pressure> pressure) {
        return Origin.derived(figure, Words.inWc(pressure), "see there", Confidence.COMPUTED, List.of());
    }
}
