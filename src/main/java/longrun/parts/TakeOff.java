package longrun.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import longrun.sizing.Sizing;

/**
 * Everything the plan shows that is bought, with how each count came about.
 *
 * @param pipe by kind and size
 * @param lines all other parts, by group
 * @param inPlace ids of the sections whose pipe is there already and large enough
 */
public record TakeOff(List<PipeNeed> pipe, List<PartLine> lines, List<String> inPlace) {

    public TakeOff {
        pipe = List.copyOf(pipe);
        lines = List.copyOf(lines);
        inPlace = List.copyOf(inPlace);
    }

    /** The take-off of a house as it is sized. */
    public static TakeOff of(Sizing sizing) {
        Bought bought = new Bought(sizing);
        List<PipeNeed> pipe = PipeNeed.of(bought);
        List<PartLine> lines = new ArrayList<>(FittingLines.of(bought, pipe));
        lines.addAll(ApplianceLines.of(bought));
        lines.addAll(RegulatorLines.of(bought));
        lines.addAll(BuriedLines.of(bought));
        lines.addAll(BondingLines.of(bought));
        lines.addAll(SupportLines.of(bought));
        return new TakeOff(pipe, lines, bought.inPlace());
    }

    /** The lines of a group. */
    public List<PartLine> lines(PartGroup group) {
        return lines.stream().filter(l -> l.group() == group).toList();
    }

    /** What the priced pipe comes to; empty where nothing is priced. */
    public OptionalDouble pricedSum() {
        List<Double> sums = pipe.stream()
                .flatMap(p -> p.price().stream())
                .flatMapToDouble(p -> p.inAll().stream())
                .boxed()
                .toList();
        return sums.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        sums.stream().mapToDouble(Double::doubleValue).sum());
    }
}
