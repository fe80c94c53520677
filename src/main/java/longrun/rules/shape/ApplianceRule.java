package longrun.rules.shape;

import java.util.List;
import longrun.rules.limit.Threshold;

/** A rule judged once at every appliance, by what stands between its pipe and its burner. */
public interface ApplianceRule extends Rule {

    @Override
    default Precedence precedence() {
        return Precedence.MISSING;
    }

    @Override
    default List<Verdict> judge(House house) {
        Threshold own = house.limits().get(name(), "");
        return Hookup.listIn(house).stream()
                .map(hookup -> judge(house, own, hookup))
                .toList();
    }

    /** @param own the rule's own threshold */
    Verdict judge(House house, Threshold own, Hookup hookup);
}
