package longrun.fuel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.hotwater.ColdWater;
import longrun.hotwater.HotWaterUse;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.origin.Months;
import longrun.plan.Appliance;
import longrun.plan.Plan;
import longrun.plan.Use;
import longrun.plan.choice.ApplianceKind;
import longrun.plan.choice.Arrangement;
import longrun.tank.DesignDay;
import longrun.tank.SpaceHeating;
import longrun.tank.TankReport;

/** What stands beside the year: hot water by arrangement, generator hours, doubts, what was assumed and what is in no sum. */
record FuelSide(
        Plan plan,
        TankReport tank,
        Figure heatingValue,
        Optional<AirYear> air,
        YearUse use,
        Optional<HotWaterUse> water) {

    /** Heat in a gallon where the widely printed 91,502 is a slip: the figure the same handbook's pounds give. */
    static final double DOUBTED_BTU_PER_GAL = 90_502;

    Map<Arrangement, Figure> arrangements() {
        Map<Arrangement, Figure> out = new LinkedHashMap<>();
        for (Arrangement a : Arrangement.values()) {
            Optional<Months> btu =
                    water.flatMap(w -> Optional.ofNullable(w.dailyBtu().get(a)));
            out.put(
                    a,
                    btu.map(b -> gallons(a, b))
                            .orElseGet(() -> Figure.unknown(
                                    a.written(),
                                    "gal",
                                    List.of(new Missing("/use/hotWater", "the hot water of the house")))));
        }
        return out;
    }

    private Figure gallons(Arrangement a, Months btu) {
        if (!btu.isKnown()) {
            return Figure.unknown(a.written(), "gal", btu.missing());
        }
        double sum = 0;
        for (int m = 0; m < 12; m++) {
            sum += btu.get(m) * Months.days(m);
        }
        double year = sum;
        List<Figure> from = new ArrayList<>(btu.from());
        from.add(heatingValue);
        return Figure.of(
                a.written(),
                "gal",
                btu.how() + ", / heating value",
                Confidence.COMPUTED,
                from,
                v -> year / v[v.length - 1]);
    }

    List<FuelReport.GeneratorHours> generators() {
        List<FuelReport.GeneratorHours> out = new ArrayList<>();
        for (int i = 0; i < plan.appliances().size(); i++) {
            Appliance a = plan.appliances().get(i);
            if (a.kind().is(ApplianceKind.STANDBY_GENERATOR)) {
                Figure input = Figure.entered(
                        "input of " + a.id(),
                        a.input(),
                        h -> h.btuh(),
                        "Btu/h",
                        "/appliances/" + i + "/input",
                        "INPUT on the rating plate, propane line");
                Figure full = Figure.of(
                        "gallons an hour at full load",
                        "gal/h",
                        "input / heating value",
                        Confidence.COMPUTED,
                        List.of(input, heatingValue),
                        v -> v[0] / v[1]);
                Figure half = Figure.of(
                        "gallons an hour at half load",
                        "gal/h",
                        "0.6 of full load",
                        Confidence.MEMORY,
                        List.of(full),
                        v -> 0.6 * v[0]);
                out.add(new FuelReport.GeneratorHours(
                        a.id(),
                        full,
                        half,
                        hours("on a full tank", tank.fullGal(), full),
                        hours("on what is in the tank", tank.nowGal(), full),
                        hours("on what is left at the refill gauge", tank.refillGal(), full)));
            }
        }
        return out;
    }

    private static Figure hours(String name, Figure gallons, Figure perHour) {
        return Figure.of(
                name,
                "h",
                "gallons / gallons an hour",
                Confidence.COMPUTED,
                List.of(gallons, perHour),
                v -> v[0] / v[1]);
    }

    List<FuelReport.Doubt> doubts(Figure annual) {
        List<FuelReport.Doubt> out = new ArrayList<>();
        if (annual.isKnown() && heatingValue.number() == DesignDay.BTU_PER_GAL) {
            Figure other =
                    YearUse.of(plan, DOUBTED_BTU_PER_GAL, air, water).total().sum("gallons a year at 90,502 Btu/gal");
            out.add(new FuelReport.Doubt(
                    "The printed 91,502 Btu/gal may be a slip for 90,502: the same print's pounds and cubic feet give that.",
                    other));
        }
        if (tank.usableGaugeLowGal().isKnown()) {
            out.add(new FuelReport.Doubt("A float gauge may stand 5 % of capacity off.", tank.usableGaugeLowGal()));
        }
        return out;
    }

    List<String> notCounted() {
        List<String> out = new ArrayList<>();
        for (Appliance a : plan.appliances()) {
            boolean used = plan.use().stream()
                    .anyMatch(u -> u.others().stream()
                                    .anyMatch(o -> o.appliance().is(a.id()))
                            || u.heating().stream().anyMatch(h -> h.appliance().is(a.id()))
                            || u.hotWater()
                                    .flatMap(Use.HotWater::onDemand)
                                    .filter(o -> o.appliance().is(a.id()))
                                    .isPresent());
            if (!used) {
                out.add(a.id());
            }
        }
        return out;
    }

    List<String> assumptions() {
        List<String> out = new ArrayList<>();
        List<SpaceHeating> heaters = SpaceHeating.of(plan);
        if (!heaters.isEmpty() && !plan.use().map(u -> u.indoorTemp().isKnown()).orElse(false)) {
            out.add("indoor air 68 degF: none entered");
        }
        List<Use.Heating> entries = plan.use().map(Use::heating).orElse(List.of());
        if (entries.stream().anyMatch(h -> !h.balanceTemp().isKnown())) {
            out.add("balance point 65 degF, the base of published degree days: none entered; the year reads high");
        }
        if (plan.use().flatMap(Use::hotWater).isPresent() && ColdWater.mainsAssumed(plan)) {
            out.add("cold water by the formula for town mains: no source entered");
        }
        return out;
    }
}
