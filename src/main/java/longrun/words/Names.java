package longrun.words;

import java.util.Locale;
import longrun.plan.Appliance;
import longrun.plan.Plan;
import longrun.plan.choice.ApplianceKind;

/** The names of appliances and other parts, as a sentence or a heading has them. */
public final class Names {

    private Names() {}

    /** An appliance within a sentence: its own name, else "the" and its kind. For any other part its id. */
    public static String of(Plan plan, String id) {
        return plan.appliances().stream()
                .filter(a -> a.id().equals(id))
                .findFirst()
                .map(a -> a.name()
                        .findValue()
                        .filter(n -> !n.isBlank())
                        .map(IsolatedName::of)
                        .orElseGet(() -> "the "
                                + a.kind()
                                        .findValue()
                                        .orElse(ApplianceKind.OTHER)
                                        .label()))
                .orElseGet(() -> IsolatedName.of(id));
    }

    /** An appliance's own name, else its kind, else its id. */
    public static String of(Appliance a) {
        return a.name()
                .findValue()
                .filter(n -> !n.isBlank())
                .map(IsolatedName::of)
                .or(() -> a.kind().findValue().map(k -> capital(k.label())))
                .orElseGet(() -> IsolatedName.of(a.id()));
    }

    /** The words with a capital at their start. */
    public static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
