package longrun.hotwater;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.plan.Use;
import longrun.plan.choice.Arrangement;
import longrun.plan.choice.StorageRoom;

/**
 * Heat a heat-pump storage heater takes out of the heated house over a day: output x (1 - 1/COP), less the standing loss it
 * gives back (energy balance of the room). Never below nothing: a tank that warms the room is not counted as heating.
 */
final class RoomHeat {

    static final String NAME = "heat the storage heater takes from the house";

    private RoomHeat() {}

    static Months of(HotWaterHouse house, YearRun run, List<Figure> from) {
        if (run.arrangement() == Arrangement.ON_DEMAND_ONLY) {
            return nothing("no storage heater at work");
        }
        if (house.entry()
                .storage()
                .map(Use.Storage::room)
                .filter(r -> r.is(x -> x != StorageRoom.HEATED))
                .isPresent()) {
            return nothing("the storage heater takes its heat from elsewhere");
        }
        List<Missing> missing = new ArrayList<>(house.storage().electricMissing());
        if (!missing.isEmpty()) {
            return Months.unknown(NAME, DailyNeed.UNIT, missing);
        }
        return ArrangementYear.months(
                NAME,
                run,
                YearRun.Month::roomBtu,
                "heat-pump output x (1 - 1/COP) less standing loss (energy balance of the room), "
                        + ArrangementYear.BY_THE_MINUTE,
                from);
    }

    static Months nothing(String why) {
        return Months.known(NAME, Collections.nCopies(12, 0.0), DailyNeed.UNIT, why, Confidence.COMPUTED, List.of());
    }
}
