package longrun.rules.limit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.plan.Code;
import longrun.plan.Code.Amendment;
import longrun.plan.Distance;
import longrun.plan.Plan;
import longrun.plan.choice.CodeProfile;

/**
 * What each rule requires in one house: the chosen code's threshold, or the local amendment that replaces it. An
 * amendment replaces a rule's own limit; a limit for another arrangement (the valve at a manifold) stays.
 */
public final class Limits {

    /** Variants that an amendment of the rule leaves alone. */
    private static final List<String> OTHER_ARRANGEMENTS =
            List.of("manifold", "distance", "line-regulator", "under-125", "grill-hose");

    private final CodeProfile profile;
    private final Map<String, Amendment> amendments;

    private Limits(CodeProfile profile, Map<String, Amendment> amendments) {
        this.profile = profile;
        this.amendments = amendments;
    }

    public static Limits of(Plan plan, CodeProfile profile) {
        Map<String, Amendment> byRule = new HashMap<>();
        for (Amendment a : plan.code().map(Code::amendments).orElse(List.of())) {
            a.rule().findValue().filter(rule -> a.limit().isKnown()).ifPresent(rule -> byRule.putIfAbsent(rule, a));
        }
        return new Limits(profile, byRule);
    }

    /** What decides here. */
    public Threshold get(String rule, String variant) {
        Threshold printed = Thresholds.builtIn().get(rule, variant, profile);
        Amendment amendment = amendments.get(rule);
        if (amendment == null || !isAmendable(printed)) {
            return printed;
        }
        Distance limit = amendment.limit().findValue().orElseThrow();
        return printed.amended(
                limit.length(),
                amendment.limit().findText().orElse(""),
                amendment.source().findText().orElse("source not entered"));
    }

    public boolean isAmended(String rule, String variant) {
        return amendments.containsKey(rule) && isAmendable(Thresholds.builtIn().get(rule, variant, profile));
    }

    public static boolean isAmendable(Threshold printed) {
        return (printed.limit().isPresent() || printed.bound() == Bound.ANY)
                && !OTHER_ARRANGEMENTS.contains(printed.variant());
    }

    /** Another code's threshold for the same case that this distance breaks, where an amendment has not settled it. */
    public Optional<Threshold> findStricterBrokenBy(String rule, String variant, Distance distance) {
        if (isAmended(rule, variant)) {
            return Optional.empty();
        }
        return listOthers(rule, variant).stream()
                .filter(t -> t.test(distance) == State.BROKEN)
                .findFirst();
    }

    /** Another code's threshold for the same case that asks what the chosen one does not. */
    public Optional<Threshold> findOtherThatAsks(String rule, String variant) {
        return listOthers(rule, variant).stream().filter(Threshold::asks).findFirst();
    }

    /** The other codes' thresholds for the same case. */
    public List<Threshold> listOthers(String rule, String variant) {
        return Thresholds.builtIn().listOf(rule).stream()
                .filter(t -> t.variant().equals(variant)
                        && t.code().filter(c -> c != profile).isPresent())
                .toList();
    }
}
