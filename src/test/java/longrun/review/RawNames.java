package longrun.review;

import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longrun.plan.choice.ApplianceKind;
import longrun.plan.choice.Named;
import longrun.plan.choice.PartKind;
import longrun.plan.choice.RegulatorKind;
import longrun.rules.Rules;
import longrun.rules.shape.Rule;

/** Names of the format that stand in a text: of an entry, a choice or a rule. */
public final class RawNames {

    /** Trade words and units that are written so by people too. */
    private static final Set<String> SPOKEN =
            Set.of("two-psi", "first-stage", "second-stage", "single-stage", "kBtu", "mA", "pH", "kW", "kPa", "kWh");

    private static final Pattern CAMEL = Pattern.compile("\\b[a-z]+[A-Z][A-Za-z]*\\b");

    private static final Pattern NAMES = Pattern.compile(Stream.of(
                    Rules.all().stream().map(Rule::name),
                    Stream.<Named[]>of(ApplianceKind.values(), PartKind.values(), RegulatorKind.values())
                            .flatMap(Stream::of)
                            .map(Named::written))
            .flatMap(s -> s)
            .filter(n -> n.contains("-") && !SPOKEN.contains(n))
            .distinct()
            .map(Pattern::quote)
            .collect(Collectors.joining("|", "(?<![a-z-])(?:", ")(?![a-z-])")));

    private RawNames() {}

    public static List<String> in(String text) {
        String said = text.replaceAll("degF", "");
        return Stream.concat(found(CAMEL, said).filter(n -> !SPOKEN.contains(n)), found(NAMES, said))
                .toList();
    }

    private static Stream<String> found(Pattern names, String text) {
        return names.matcher(text).results().map(MatchResult::group);
    }
}
