package longrun.fuel.fill;

import java.util.Optional;

/**
 * Where each figure may lie once every doubt is taken to its end.
 *
 * @param days from the gauge's date to the refill gauge; empty where the tank's reading or date is not known
 * @param coldest days a fill lasts in the coldest month
 * @param warmest the same in the warmest
 * @param mean the same on the year's mean
 * @param fills a year
 * @param gallons a year
 */
public record FillRanges(Optional<Range> days, Range coldest, Range warmest, Range mean, Range fills, Range gallons) {

    /** The same widened so that it holds another year's figures. */
    FillRanges with(FillRanges other) {
        return new FillRanges(
                days.flatMap(d -> other.days.map(o -> widened(d, o))),
                widened(coldest, other.coldest),
                widened(warmest, other.warmest),
                widened(mean, other.mean),
                widened(fills, other.fills),
                widened(gallons, other.gallons));
    }

    private static Range widened(Range a, Range b) {
        return a.with(b.low()).with(b.high());
    }
}
