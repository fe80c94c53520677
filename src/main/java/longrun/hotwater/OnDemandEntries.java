package longrun.hotwater;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.hotwater.heater.OnDemandHeater;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.plan.Appliance;
import longrun.plan.Fact;
import longrun.plan.Plan;
import longrun.plan.Site;
import longrun.plan.Use;
import longrun.plan.choice.ApplianceKind;
import longrun.quantity.Elevation;
import longrun.quantity.HeatRate;

/**
 * The on-demand heater as entered; what does not change the gallons much has starting values.
 *
 * @param heater in numbers; empty where there is none or its efficiency is missing
 * @param output heat into the water at full fire, derated for altitude, Btu/h; unknown without an input
 * @param missing the entries without which it cannot be worked out
 */
record OnDemandEntries(Optional<OnDemandHeater> heater, Figure output, List<Missing> missing, List<StandIn> standIns) {

    private static final String AT = DailyNeed.AT + "/onDemand";
    /** Starting values: common practice and market knowledge, memory. */
    private static final double SET_F = 120;

    private static final double LEAST_BTUH = 15_000;
    private static final double ACTIVATION_GPM = 0.5;

    static OnDemandEntries of(Plan plan, Use.HotWater entry, DailyNeed need) {
        Figure output = output(plan, entry, need);
        if (entry.onDemand().isEmpty()) {
            return new OnDemandEntries(Optional.empty(), output, need.efficiencyMissing(), List.of());
        }
        Use.OnDemand o = entry.onDemand().get();
        List<StandIn> standIns = new ArrayList<>();
        if (o.setTemp().isUnknown()) {
            standIns.add(new StandIn(
                    AT + "/setTemp",
                    "120 degF stands in for the set point of the on-demand heater",
                    "what the on-demand heater is set to",
                    "What is the on-demand heater set to, in degF?"));
        }
        if (o.leastFire().isUnknown()) {
            standIns.add(new StandIn(
                    AT + "/leastFire",
                    "15,000 Btu/h stands in for the least fire of the on-demand heater",
                    "its least input, from the rating plate",
                    "What is the least input of the on-demand heater, in Btu/h?"));
        }
        if (o.activation().isUnknown()) {
            standIns.add(new StandIn(
                    AT + "/activation",
                    "0.5 gal/min stands in for the flow that starts the on-demand heater",
                    "the flow at which it starts, from its manual",
                    "At which flow does the on-demand heater start, in gal/min?"));
        }
        List<Missing> missing = need.efficiencyMissing();
        if (!missing.isEmpty()) {
            return new OnDemandEntries(Optional.empty(), output, missing, standIns);
        }
        double share = need.efficiency().number() / 100;
        OnDemandHeater heater = new OnDemandHeater(
                o.setTemp().findValue().map(t -> t.degF()).orElse(SET_F),
                output.value().orElse(Double.POSITIVE_INFINITY),
                o.leastFire().fold(HeatRate::btuh, () -> 0.0, () -> LEAST_BTUH) * share,
                o.activation().fold(f -> f.gpm(), () -> 0.0, () -> ACTIVATION_GPM),
                share);
        return new OnDemandEntries(Optional.of(heater), output, missing, standIns);
    }

    /** The appliance named, or the only on-demand water heater there is. */
    static Optional<Integer> appliance(Plan plan, Use.HotWater entry) {
        Fact<String> named = entry.onDemand().map(Use.OnDemand::appliance).orElse(Fact.unknown());
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < plan.appliances().size(); i++) {
            Appliance a = plan.appliances().get(i);
            if (named.is(a.id()) || !named.isKnown() && a.kind().is(ApplianceKind.ON_DEMAND_WATER_HEATER)) {
                all.add(i);
            }
        }
        return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
    }

    private static Figure output(Plan plan, Use.HotWater entry, DailyNeed need) {
        String name = "heat into the water at full fire";
        Optional<Integer> at = appliance(plan, entry);
        if (at.isEmpty()) {
            return Figure.unknown(
                    name, "Btu/h", List.of(new Missing(AT + "/appliance", "which appliance the on-demand heater is")));
        }
        Appliance a = plan.appliances().get(at.get());
        Figure input = Figure.entered(
                "input of " + a.id(),
                a.input(),
                HeatRate::btuh,
                "Btu/h",
                "/appliances/" + at.get() + "/input",
                "INPUT on the rating plate, propane line");
        Optional<Elevation> height = plan.site().map(Site::elevation).flatMap(f -> f.findValue());
        double share = height.filter(e -> !Altitude.isCovered(a, e))
                .map(Altitude::share)
                .orElse(1.0);
        return Figure.of(
                name,
                "Btu/h",
                share < 1
                        ? "input x efficiency, 4 % lost for each 1,000 ft, the lower of two readings (NFPA 54 11.1.2)"
                        : "input x efficiency",
                Confidence.COMPUTED,
                List.of(input, need.efficiency()),
                v -> v[0] * v[1] / 100 * share);
    }
}
