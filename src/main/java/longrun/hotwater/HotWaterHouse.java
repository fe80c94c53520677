package longrun.hotwater;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import longrun.hotwater.draw.DrawPatterns;
import longrun.hotwater.draw.HouseDraws;
import longrun.hotwater.heater.OnDemandHeater;
import longrun.hotwater.heater.StorageHeater;
import longrun.origin.Confidence;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.plan.Plan;
import longrun.plan.Use;
import longrun.plan.choice.Arrangement;
import longrun.quantity.Temperature;

/**
 * The hot water of a house in numbers, ready to be run minute by minute.
 *
 * @param need of a day, known
 * @param k heat to warm a flow, Btu/h for each gal/min and degF, at the mean of the year's cold water and the use temperature:
 *     one figure for all water, so that no heat is made or lost where streams mix
 * @param mixF what the mixing valve is set to; plus infinity where none is entered
 * @param comfortF least temperature at a fixture that is comfortable
 */
record HotWaterHouse(
        Use.HotWater entry,
        DailyNeed need,
        StorageEntries storage,
        OnDemandEntries onDemand,
        HouseDraws draws,
        double k,
        double mixF,
        double comfortF,
        List<StandIn> standIns) {

    /** Below the use temperature by this much a shower is no longer comfortable: own reading. */
    private static final double COMFORT_BAND_F = 3;

    /** The house; empty where what a day asks for is not known. */
    static Optional<HotWaterHouse> of(Plan plan, Use.HotWater entry, DailyNeed need) {
        if (!need.heat().isKnown()) {
            return Optional.empty();
        }
        double useF = need.useTemp().number();
        HouseDraws draws = HouseDraws.of(entry, need.daily().number(), useF);
        OnDemandEntries onDemand = OnDemandEntries.of(plan, entry, need);
        List<StandIn> standIns = new ArrayList<>(onDemand.standIns());
        if (entry.comfortTemp().isUnknown()) {
            standIns.add(new StandIn(
                    DailyNeed.AT + "/comfortTemp",
                    "3 degF under the use temperature stands in for the least that is comfortable",
                    "the least temperature that is comfortable",
                    "How cool may a shower get before it is uncomfortable, in degF?"));
        }
        draws.pattern().ifPresent(p -> standIns.add(pattern(p)));
        if (!entry.dailyVolume().isKnown() && !DailyNeed.drawsTell(entry)) {
            standIns.add(new StandIn(
                    DailyNeed.AT + "/dailyVolume",
                    need.daily().text() + " a day stands in for the hot water used: "
                            + need.daily().how(),
                    "gallons of hot water a day at the temperature of use",
                    "How much hot water is used a day, in gal?"));
        }
        double mean = ColdWater.yearMean(need.cold().values());
        return Optional.of(new HotWaterHouse(
                entry,
                need,
                StorageEntries.of(plan, entry),
                onDemand,
                draws,
                WaterHeat.k((mean + useF) / 2),
                entry.mixingValve().findValue().map(Temperature::degF).orElse(Double.POSITIVE_INFINITY),
                entry.comfortTemp().findValue().map(Temperature::degF).orElse(useF - COMFORT_BAND_F),
                standIns));
    }

    private static StandIn pattern(String name) {
        return new StandIn(
                DailyNeed.AT + "/draws",
                "the " + name + " pattern of the " + DrawPatterns.SOURCE + ", begun at 6:00, stands in for the draws",
                "the draws of a day: when, how long, how much",
                "When is hot water drawn, for how long and how much, in gal/min?");
    }

    Months cold() {
        return need.cold();
    }

    /** What an arrangement lacks to be run. */
    List<Missing> missing(Arrangement a) {
        List<Missing> out = new ArrayList<>();
        if (a != Arrangement.ON_DEMAND_ONLY) {
            out.addAll(storage.missing());
        }
        if (a != Arrangement.STORAGE_ONLY) {
            out.addAll(onDemand.missing());
        }
        return out;
    }

    /** The storage heater at work in an arrangement. */
    Optional<StorageHeater> storage(Arrangement a) {
        return a == Arrangement.ON_DEMAND_ONLY ? Optional.empty() : storage.heater();
    }

    /** The on-demand heater at work in an arrangement. */
    Optional<OnDemandHeater> onDemand(Arrangement a) {
        return a == Arrangement.STORAGE_ONLY ? Optional.empty() : onDemand.heater();
    }

    /** The same house with its storage set otherwise, or with cold water of one temperature all year. */
    HotWaterHouse played(OptionalDouble storageSetF, OptionalDouble coldF) {
        Optional<StorageHeater> heater =
                storage.heater().map(h -> storageSetF.isPresent() ? h.withSetF(storageSetF.getAsDouble()) : h);
        StorageEntries tank = new StorageEntries(
                heater, storage.room(), storage.from(), storage.missing(), storage.electricMissing());
        Months cold = coldF.isEmpty()
                ? need.cold()
                : Months.known(
                        need.cold().name(),
                        Collections.nCopies(12, coldF.getAsDouble()),
                        "degF",
                        "as played with",
                        Confidence.MEMORY,
                        List.of());
        DailyNeed asked = new DailyNeed(cold, need.daily(), need.useTemp(), need.heat(), need.efficiency());
        return new HotWaterHouse(entry, asked, tank, onDemand, draws, k, mixF, comfortF, standIns);
    }
}
