package longrun.rules;

import longrun.plan.Code;
import longrun.plan.CodeProfile;
import longrun.plan.Plan;

/** All a rule sees of a house: what was entered and what hangs on what. */
public final class House {

    private final Plan plan;
    private final Network network;
    private final Limits limits;

    private House(Plan plan) {
        this.plan = plan;
        this.network = new Network(plan);
        this.limits = Limits.of(plan, profile());
    }

    public static House of(Plan plan) {
        return new House(plan);
    }

    public Plan plan() {
        return plan;
    }

    public Network network() {
        return network;
    }

    /** The code that decides on the house side: {@code fuel-gas-2018} where none is entered. */
    public CodeProfile profile() {
        return plan.code().map(Code::profile).flatMap(p -> p.findValue()).orElse(CodeProfile.FUEL_GAS_2018);
    }

    /** What each rule requires here, local amendments included. */
    public Limits limits() {
        return limits;
    }
}
