package longrun.pressure;

import java.util.Optional;
import longrun.piping.Outlet;
import longrun.piping.Stage;
import longrun.plan.Plan;
import longrun.quantity.Pressure;

/**
 * The settings a regulator may have so that each outlet behind it gets its label's least with everything firing and no
 * more than its greatest with nothing firing. Drop and droop are those at the present setting.
 *
 * @param lowest the greatest of label least, drop, droop and connector; empty where no label least is known
 * @param lowestFor the appliance or regulator that asks for it
 * @param highest the least of label greatest over lock-up share; empty where no label greatest is known
 * @param highestFor the appliance that asks for it
 * @param complete whether every outlet behind it could be counted
 */
public record SettingWindow(
        Optional<Pressure> lowest,
        Optional<String> lowestFor,
        Optional<Pressure> highest,
        Optional<String> highestFor,
        boolean complete) {

    /** Whether a setting lies within both bounds; false where one is not known. */
    public boolean admits(Pressure setting) {
        return lowest.isPresent()
                && highest.isPresent()
                && setting.inWc() >= lowest.get().inWc()
                && setting.inWc() <= highest.get().inWc();
    }

    /** Whether no setting will do: the two outlets named quarrel. */
    public boolean isEmpty() {
        return lowest.isPresent()
                && highest.isPresent()
                && lowest.get().inWc() > highest.get().inWc() + 1e-9;
    }

    static SettingWindow of(Pressures pressures, int regulator) {
        return new Search(pressures, regulator).search();
    }

    private static final class Search {

        private final Pressures pressures;
        private final Plan plan;
        private final Stage stage;
        private final RegulatorPressure regulator;
        private double lowest = Double.NaN;
        private double highest = Double.NaN;
        private Optional<String> lowestFor = Optional.empty();
        private Optional<String> highestFor = Optional.empty();
        private boolean complete = true;

        Search(Pressures pressures, int index) {
            this.pressures = pressures;
            this.plan = pressures.sizing().piping().plan();
            this.stage = pressures.sizing().piping().stages().get(index);
            this.regulator = pressures.regulator(index);
        }

        SettingWindow search() {
            for (Outlet outlet : stage.outlets()) {
                if (outlet.kind() == Outlet.Kind.APPLIANCE) {
                    OutletPressure at = pressures.outlet(outlet.item());
                    least(
                            outlet,
                            plan.appliances().get(outlet.item()).minInlet().findValue(),
                            at.pressureAtInlet());
                    greatest(outlet);
                } else if (outlet.kind() == Outlet.Kind.REGULATOR) {
                    RegulatorPressure at = pressures.regulator(outlet.item());
                    least(outlet, at.regulator().minInlet().findValue(), at.inlet());
                }
            }
            return new SettingWindow(
                    AloneChain.known(lowest), lowestFor, AloneChain.known(highest), highestFor, complete);
        }

        private void least(Outlet outlet, Optional<Pressure> needed, Optional<Pressure> arrives) {
            if (needed.isEmpty() || arrives.isEmpty() || arrives.get().inWc() <= 0) {
                complete = false;
                return;
            }
            double lost =
                    regulator.setting().orElseThrow().inWc() - arrives.get().inWc();
            double setting = needed.get().inWc() + lost;
            if (!(setting <= lowest)) {
                lowest = setting;
                lowestFor = Optional.of(outlet.id());
            }
        }

        private void greatest(Outlet outlet) {
            Optional<Pressure> limit =
                    plan.appliances().get(outlet.item()).maxInlet().findValue();
            if (limit.isEmpty()
                    || regulator.setting().isEmpty()
                    || regulator.setting().get().inWc() <= 0) {
                complete = false;
                return;
            }
            double share = regulator.lockUp().orElseThrow().inWc()
                    / regulator.setting().get().inWc();
            double setting = limit.get().inWc() / share;
            if (!(setting >= highest)) {
                highest = setting;
                highestFor = Optional.of(outlet.id());
            }
        }
    }
}
