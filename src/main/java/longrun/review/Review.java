package longrun.review;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import longrun.finding.Finding;
import longrun.fuel.FuelReport;
import longrun.hotwater.HotWaterStudy;
import longrun.piping.Outlet;
import longrun.piping.Piping;
import longrun.plan.Plan;
import longrun.pressure.Headroom;
import longrun.pressure.Pressures;
import longrun.quantity.HeatRate;
import longrun.rules.RuleReport;
import longrun.sizing.Sizing;
import longrun.tank.TankReport;

/**
 * Everything worked out from one plan.
 *
 * @param plan what was entered
 * @param piping its pipes as a graph: stages, sections, loads
 * @param sizing the size of every section
 * @param pressures along every run and at every appliance
 * @param headroom the load or length that can still be added without changing a size
 * @param rules every rule with its verdict at each place
 * @param tank the tank's vapour and contents; empty where only the piping is reviewed
 * @param fuel the year's gas; empty where only the piping is reviewed
 * @param hotWater the simulation of hot water; empty where only the piping is reviewed or the plan has no hot water
 * @param findings what is wrong, doubtful or missing, in the plan's order
 */
public record Review(
        Plan plan,
        Piping piping,
        Sizing sizing,
        Pressures pressures,
        Headroom headroom,
        RuleReport rules,
        Optional<TankReport> tank,
        Optional<FuelReport> fuel,
        Optional<HotWaterStudy> hotWater,
        List<Finding> findings) {

    public Review {
        findings = List.copyOf(findings);
    }

    /** This review with each finding's JSON pointer changed. */
    public Review withFields(UnaryOperator<String> change) {
        List<Finding> pointed = findings.stream()
                .map(f -> {
                    String to = change.apply(f.field());
                    return to.equals(f.field()) ? f : f.withField(to);
                })
                .toList();
        return new Review(plan, piping, sizing, pressures, headroom, rules, tank, fuel, hotWater, pointed);
    }

    /** The sum of all known inputs and reserves; not the whole load unless {@link #connectedLoadComplete}. */
    public HeatRate connectedLoad() {
        double sum = 0;
        for (var a : plan.appliances()) {
            sum += a.input().findValue().map(h -> h.btuh()).orElse(0.0);
        }
        for (int i = 0; i < piping.sectionCount(); i++) {
            if (isFutureOutlet(i)) {
                sum += piping.section(i)
                        .reserve()
                        .findValue()
                        .map(h -> h.btuh())
                        .orElse(0.0);
            }
        }
        return HeatRate.ofBtuh(sum);
    }

    /** Whether a section ends in a capped or open outlet, for which the plan may hold a reserve. */
    public boolean isFutureOutlet(int section) {
        return piping.findOutlet(section)
                .filter(o -> o.kind() == Outlet.Kind.CAPPED || o.kind() == Outlet.Kind.OPEN)
                .isPresent();
    }

    /** Whether every appliance has an input, every future outlet a reserve, and every part is fed by something. */
    public boolean connectedLoadComplete() {
        boolean complete = !piping.hangsLoose()
                && plan.appliances().stream().allMatch(a -> a.input().isKnown());
        for (int i = 0; complete && i < piping.sectionCount(); i++) {
            complete = !isFutureOutlet(i) || !piping.section(i).reserve().isUnknown();
        }
        return complete;
    }
}
