package longrun.pressure;

import java.util.List;
import java.util.OptionalDouble;
import longrun.origin.Confidence;
import longrun.origin.Origin;

/** A figure that has a where from of its own, named as an input of another. */
final class FiguredElsewhere {

    private FiguredElsewhere() {}

    static Origin inWc(String figure, OptionalDouble inWc) {
        return Origin.derived(figure, Words.inWc(inWc), "see there", Confidence.COMPUTED, List.of());
    }
}
