package longrun.hotwater;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.plan.Arrangement;
import longrun.plan.Plan;
import longrun.plan.StorageRoom;
import longrun.plan.Use;

/**
 * Heat a heat-pump storage heater takes out of the heated house over a day: output x (1 - 1/COP), less the standing loss it
 * gives back (energy balance of the room). Its output is what goes into the water and what the tank loses, as far as it can.
 * Never below nothing: a tank that warms the room is not counted as heating.
 */
final class RoomHeat {

    private static final String NAME = "heat the storage heater takes from the house";
    private static final String UNIT = "Btu/day";
    private static final String AT = "/use/hotWater/storage";

    private RoomHeat() {}

    static Months of(Plan plan, Use.HotWater entry, Optional<Arrangement> chosen, Months need) {
        if (entry.storage().isEmpty()
                || chosen.filter(a -> a == Arrangement.ON_DEMAND_ONLY).isPresent()) {
            return nothing("no storage heater at work");
        }
        Use.Storage s = entry.storage().get();
        if (s.room().is(r -> r != StorageRoom.HEATED)) {
            return nothing("the storage heater takes its heat from elsewhere");
        }
        List<Missing> missing = new ArrayList<>();
        if (chosen.isEmpty()) {
            missing.add(new Missing("/use/hotWater/arrangement", "series, on-demand-only or storage-only"));
        }
        if (!s.heatPumpOutput().isKnown() && s.element().isKnown() && !s.cop().isKnown()) {
            return nothing("an element alone takes no heat from the room");
        }
        if (!s.room().isKnown()) {
            missing.add(new Missing(AT + "/room", "where the storage heater takes its heat from"));
        }
        Figure output = Figure.entered(
                "heat pump output",
                s.heatPumpOutput(),
                h -> h.btuh(),
                "Btu/h",
                AT + "/heatPumpOutput",
                "output of the heat pump");
        Figure cop = Figure.entered(
                "COP of the heat pump",
                s.cop(),
                c -> c,
                "",
                AT + "/cop",
                "COP of the storage heater's heat pump, from its data sheet");
        Figure set = Figure.entered(
                "storage set point",
                s.setTemp(),
                t -> t.degF(),
                "degF",
                AT + "/setTemp",
                "set point of the storage heater");
        Figure loss = Figure.entered(
                "standing loss",
                s.standbyLoss(),
                h -> h.btuhPerDegF(),
                "Btu/(h.degF)",
                AT + "/standbyLoss",
                "standing loss of the storage tank");
        Months room = HotWaterUse.room(plan, s);
        missing.addAll(need.missing());
        List.of(output, cop, set, loss).forEach(f -> missing.addAll(f.missing()));
        missing.addAll(room.missing());
        if (missing.isEmpty() && cop.number() < 1) {
            missing.add(new Missing(AT + "/cop", "a COP of 1 or more"));
        }
        if (!missing.isEmpty()) {
            return Months.unknown(NAME, UNIT, missing);
        }
        Optional<Double> lockout = s.lockoutTemp().findValue().map(t -> t.degF());
        List<Double> values = new ArrayList<>();
        for (int m = 0; m < 12; m++) {
            double air = room.get(m);
            double lost = 24 * loss.number() * Math.max(0, set.number() - air);
            double most = lockout.filter(l -> air < l).isPresent() ? 0 : 24 * output.number();
            double pumped = Math.min(most, need.get(m) + lost);
            values.add(Math.max(0, pumped * (1 - 1 / cop.number()) - lost));
        }
        List<Figure> from = new ArrayList<>(need.from());
        from.addAll(List.of(output, cop, set, loss));
        return Months.known(
                NAME,
                values,
                UNIT,
                "heat-pump output x (1 - 1/COP) less standing loss (energy balance of the room)",
                Confidence.COMPUTED,
                from);
    }

    private static Months nothing(String why) {
        return Months.known(NAME, Collections.nCopies(12, 0.0), UNIT, why, Confidence.COMPUTED, List.of());
    }
}
