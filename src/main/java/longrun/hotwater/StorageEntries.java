package longrun.hotwater;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import longrun.hotwater.heater.StorageHeater;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.plan.Plan;
import longrun.plan.Use;
import longrun.plan.choice.StorageRoom;
import longrun.quantity.Temperature;

/**
 * The storage heater as entered.
 *
 * @param heater in numbers; empty where an entry its water depends on is missing
 * @param room air about it, degF
 * @param from the figures it was made from
 * @param missing entries its water depends on
 * @param electricMissing entries current and the room's heat depend on besides
 */
record StorageEntries(
        Optional<StorageHeater> heater,
        Months room,
        List<Figure> from,
        List<Missing> missing,
        List<Missing> electricMissing) {

    static final String AT = DailyNeed.AT + "/storage";
    /** Indoor air where none is entered: common practice. */
    private static final double INDOOR_F = 68;

    static StorageEntries of(Plan plan, Use.HotWater entry) {
        if (entry.storage().isEmpty()) {
            List<Missing> none =
                    List.of(new Missing(AT, "what the storage heater holds, what it is set to and what heats it"));
            return new StorageEntries(
                    Optional.empty(),
                    Months.unknown("air about the storage heater", "degF", none),
                    List.of(),
                    none,
                    List.of());
        }
        Use.Storage s = entry.storage().get();
        boolean elementAlone = elementAlone(s);
        Figure volume = Figure.entered(
                "storage volume", s.volume(), v -> v.gallons(), "gal", AT + "/volume", "what the storage heater holds");
        Figure set = Figure.entered(
                "storage set point",
                s.setTemp(),
                Temperature::degF,
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
        List<Figure> from = new ArrayList<>(List.of(volume, set, loss));
        if (!elementAlone) {
            from.addAll(List.of(output, cop));
        }
        Months room = room(plan, s);
        List<Missing> missing = new ArrayList<>();
        List.of(volume, set, loss).forEach(f -> missing.addAll(f.missing()));
        if (!elementAlone) {
            missing.addAll(output.missing());
        }
        missing.addAll(room.missing());
        if (volume.isKnown() && volume.number() <= 0) {
            missing.add(new Missing(AT + "/volume", "a volume above 0 gal"));
        }
        List<Missing> electric = electricMissing(s, cop, elementAlone);
        if (!missing.isEmpty()) {
            return new StorageEntries(Optional.empty(), room, from, missing, electric);
        }
        StorageHeater heater = new StorageHeater(
                volume.number(),
                set.number(),
                elementAlone ? 0 : output.number(),
                cop.value().orElse(1),
                element(s, elementAlone),
                loss.number(),
                s.lockoutTemp().findValue().map(Temperature::degF).orElse(Double.NEGATIVE_INFINITY),
                s.heatPumpMaxTemp().findValue().map(Temperature::degF).orElse(Double.POSITIVE_INFINITY));
        return new StorageEntries(Optional.of(heater), room, from, missing, electric);
    }

    private static boolean elementAlone(Use.Storage s) {
        return s.heatPumpOutput().isNone()
                || !s.heatPumpOutput().isKnown()
                        && s.element().isKnown()
                        && !s.cop().isKnown();
    }

    /** An element beside a heat pump heats only where it is said to be on; alone it is the heater. */
    private static double element(Use.Storage s, boolean alone) {
        return alone || s.elementOn().is(true)
                ? s.element().findValue().map(e -> e.btuh()).orElse(0.0)
                : 0;
    }

    private static List<Missing> electricMissing(Use.Storage s, Figure cop, boolean elementAlone) {
        List<Missing> out = new ArrayList<>();
        if (elementAlone) {
            return out;
        }
        out.addAll(cop.missing());
        if (cop.isKnown() && cop.number() < 1) {
            out.add(new Missing(AT + "/cop", "a COP of 1 or more"));
        }
        if (!s.room().isKnown()) {
            out.add(new Missing(AT + "/room", "where the storage heater takes its heat from"));
        }
        return out;
    }

    /** The air about the storage heater, degF. */
    private static Months room(Plan plan, Use.Storage s) {
        Optional<List<Temperature>> entered = s.roomTemp().findValue().filter(t -> t.size() == 1 || t.size() == 12);
        if (entered.isPresent()) {
            List<Temperature> t = entered.get();
            List<Double> values = new ArrayList<>();
            for (int m = 0; m < 12; m++) {
                values.add(t.get(t.size() == 1 ? 0 : m).degF());
            }
            return Months.known(
                    "air about the storage heater", values, "degF", "entered", Confidence.COMPUTED, List.of());
        }
        if (s.room().is(StorageRoom.HEATED)) {
            double indoor = plan.use()
                    .flatMap(u -> u.indoorTemp().findValue())
                    .map(Temperature::degF)
                    .orElse(INDOOR_F);
            return Months.known(
                    "air about the storage heater",
                    Collections.nCopies(12, indoor),
                    "degF",
                    "heated room",
                    Confidence.MEMORY,
                    List.of());
        }
        return Months.unknown(
                "air about the storage heater",
                "degF",
                List.of(new Missing(AT + "/roomTemp", "air about the storage heater, one value or twelve")));
    }
}
