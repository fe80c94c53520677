package longrun.rules.gas;

import java.util.List;
import longrun.plan.choice.Gas;
import longrun.rules.limit.Threshold;
import longrun.rules.shape.ApplianceRule;
import longrun.rules.shape.Hookup;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/** Topic gas: each appliance is made or converted for propane. */
public final class GasType implements ApplianceRule {

    public static List<Rule> rules() {
        return List.of(new GasType());
    }

    @Override
    public String name() {
        return "gas-type";
    }

    @Override
    public Verdict judge(House house, Threshold own, Hookup hookup) {
        String field = hookup.place().pointer() + "/gas";
        if (hookup.appliance().gas().is(Gas.NATURAL)) {
            return Judge.broken(
                    own,
                    hookup.place(),
                    "{who} is set up for natural gas; on propane its burner takes about 1.6 times its"
                            + " rating at the same burner pressure, 2.7 times at 10 in w.c.",
                    "Fit the maker's propane conversion kit and its label, or another appliance, before gas is let in.",
                    field);
        }
        if (hookup.appliance().gas().isKnown()) {
            return Judge.holds(own, hookup.place());
        }
        return Judge.asks(
                own,
                hookup.place(),
                "the gas {who} is made for is not entered",
                Question.plate("Which gas does the rating plate of {who} give, and is there a conversion label?"),
                field);
    }
}
