package longrun.hotwater;

import java.util.Optional;
import longrun.plan.Appliance;
import longrun.plan.Fact;
import longrun.plan.Plan;
import longrun.plan.Site;
import longrun.plan.Use;
import longrun.quantity.Elevation;
import longrun.quantity.HeatRate;
import longrun.quantity.Temperature;

/** All of a plan that its hot water rests on: plans alike in it have the same study, whatever else is entered. */
record StudyKey(
        Use.HotWater entry,
        Fact<Temperature> indoor,
        Optional<Site> site,
        Optional<Integer> appliance,
        Optional<String> id,
        Optional<Fact<HeatRate>> input,
        Optional<Fact<Elevation>> altitudeLabel) {

    static StudyKey of(Plan plan, Use.HotWater entry) {
        Optional<Integer> at = OnDemandEntries.appliance(plan, entry);
        Optional<Appliance> heater = at.map(plan.appliances()::get);
        return new StudyKey(
                entry,
                plan.use().map(Use::indoorTemp).orElse(Fact.unknown()),
                plan.site(),
                at,
                heater.map(Appliance::id),
                heater.map(Appliance::input),
                heater.map(Appliance::altitudeLabel));
    }
}
