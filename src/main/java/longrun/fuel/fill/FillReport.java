package longrun.fuel.fill;

import java.util.List;
import java.util.Optional;
import longrun.fuel.FuelReport;
import longrun.fuel.YearGallons;
import longrun.origin.Figure;
import longrun.tank.TankReport;

/**
 * How long a fill lasts.
 *
 * @param tank as in the whole house's review
 * @param fuel the same, its uses scaled where past fills set a scale
 * @param byEntries the year by the entries alone, without past fills; empty where the year is not known
 * @param fit of the past fills
 * @param ranges with every doubt at its end; empty where the year or the tank is not known
 * @param narrowing the entries in doubt, the one first that would narrow the days most
 * @param coldest month, January 0
 * @param warmest month
 * @param coldestPerDay gallons on a day of the coldest month
 * @param warmestPerDay the same of the warmest
 * @param ladder each standard tank in place of the one entered
 */
public record FillReport(
        TankReport tank,
        FuelReport fuel,
        Optional<YearGallons> byEntries,
        Optional<TicketFit> fit,
        Optional<FillRanges> ranges,
        List<Narrowing> narrowing,
        int coldest,
        int warmest,
        Figure coldestPerDay,
        Figure warmestPerDay,
        List<Rung> ladder) {

    public FillReport {
        narrowing = List.copyOf(narrowing);
        ladder = List.copyOf(ladder);
    }

    /** Whether the year is known and nothing burns in it. */
    public boolean isNoUse() {
        return fuel.annualGal().isKnown() && fuel.annualGal().number() == 0;
    }
}
