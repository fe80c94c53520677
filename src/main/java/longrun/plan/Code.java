package longrun.plan;

import java.util.List;
import longrun.plan.choice.CodeProfile;

/**
 * The code that decides.
 *
 * @param adopted the local code's name, for the papers
 */
public record Code(Fact<CodeProfile> profile, Fact<String> adopted, List<Amendment> amendments) {

    /** A local change of one rule's limit. */
    public record Amendment(Fact<String> rule, Fact<Distance> limit, Fact<String> source) {}
}
