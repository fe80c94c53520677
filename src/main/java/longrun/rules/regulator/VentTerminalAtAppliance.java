package longrun.rules.regulator;

import java.util.ArrayList;
import java.util.List;
import longrun.plan.Appliance;
import longrun.plan.choice.ApplianceVent;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/** Told at the appliance, where the smaller distance was entered there. */
final class VentTerminalAtAppliance implements Rule {

    @Override
    public String name() {
        return VentTerminal.AT_APPLIANCE;
    }

    @Override
    public List<Verdict> judge(House house) {
        VentTerminal all = new VentTerminal(house);
        double atRegulators = all.smallestAtRegulators();
        State side = all.bySide(all.atRegulators());
        List<Verdict> verdicts = new ArrayList<>();
        for (int i = 0; i < all.appliances.size(); i++) {
            Appliance a = all.appliances.get(i);
            Place place = house.appliance(i);
            Threshold main = all.limit(name(), a.vent().is(ApplianceVent.FAN) ? VentTerminal.FAN : "");
            State own = all.regulators.isEmpty() && all.perhaps.isEmpty()
                    ? State.NOT_FOR_THIS_PLAN
                    : all.own(a).orElse(side);
            if (own == State.BROKEN && all.regulators.isEmpty()) {
                verdicts.add(Verdict.of(name(), place, State.ASKS)); // asked at the regulator
                continue;
            }
            boolean entered = a.terminalToRegulator().isKnown();
            boolean told = entered && atRegulators > VentTerminal.feet(a.terminalToRegulator());
            verdicts.add(
                    switch (own) {
                        case HOLDS -> Judge.holds(main, place);
                        case BROKEN -> told ? broken(all, main, place, a) : Judge.brokenElsewhere(main, place);
                        case ASKS ->
                            entered
                                    ? asksVent(all, main, place, a)
                                    : Verdict.of(name(), place, State.ASKS); // asked at the regulator
                        default -> Judge.notFor(main, place);
                    });
        }
        return verdicts;
    }

    private static Verdict broken(VentTerminal all, Threshold main, Place place, Appliance a) {
        return Judge.broken(
                main,
                place,
                all.found(a.terminalToRegulator(), "the vent of {who} ends {entered} from a regulator's vent"),
                "Move the end of its vent or the regulator's vent, so that {limit} or more is between them.",
                place.pointer() + "/terminalToRegulator");
    }

    private static Verdict asksVent(VentTerminal all, Threshold main, Place place, Appliance a) {
        boolean open = a.vent().isUnknown();
        return Judge.asks(
                main,
                place,
                all.found(a.terminalToRegulator(), "the vent of {who} ends {entered} from a regulator's vent")
                        + (open ? "; whether it is a direct-vent one is not entered" : ""),
                open
                        ? Question.plate("Is {who} direct-vent, with its air from outdoors, or vented by a fan?")
                        : Question.fitter("How far is the end of the vent of {who} from the nearest regulator's vent?"),
                place.pointer() + (open ? "/vent" : "/terminalToRegulator"));
    }
}
