package longrun.hotwater;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.plan.choice.Arrangement;

/**
 * Propane heat for hot water, Btu of gas on one day of each month, for each arrangement.
 *
 * @param chosen the arrangement the house has, where it can be told
 * @param dailyBtu gas a day by arrangement, Btu
 * @param roomHeatBtu heat the storage heater takes out of the heated house on one day of each month, Btu, its standing loss
 *     given back; known to be nothing where there is none or it stands elsewhere
 * @param missing what is lacking to tell the arrangement
 */
public record HotWaterUse(
        Optional<Arrangement> chosen, Map<Arrangement, Months> dailyBtu, Months roomHeatBtu, List<Missing> missing) {

    public HotWaterUse {
        dailyBtu = Collections.unmodifiableMap(new EnumMap<>(dailyBtu));
        missing = List.copyOf(missing);
    }

    /** Gas for hot water in the arrangement the house has. */
    public Months chosenBtu() {
        return chosen.flatMap(a -> Optional.ofNullable(dailyBtu.get(a)))
                .orElseGet(() -> Months.unknown("hot water", DailyNeed.UNIT, missing));
    }
}
