package longrun.draft.sections;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longrun.plan.choice.Material;

/**
 * A material as a fitter writes it before or after a length: "csst 12 ft", "22 black iron", "copper up 4, north 6".
 *
 * @param material the material; empty where none is named
 * @param rest the text without it
 */
public record MaterialWords(Optional<Material> material, String rest) {

    /** The names used on the job (common practice). "Flex" is not among them: it may mean the connector. */
    private static final Map<Material, Pattern> WORDS = new EnumMap<>(Map.of(
            Material.STEEL,
            words("(?:(?:sch(?:edule|\\.)?\\s*40|black|galvani[sz]ed|galv\\.?) )?(?:steel|iron)(?: pipe)?"
                    + "|(?:black|galvani[sz]ed|galv\\.?|sch(?:edule|\\.)?\\s*40)(?: pipe)?"),
            Material.COPPER,
            words("(?:(?:type|hard|soft) [kl] |hard |soft )?copper(?: tub(?:e|ing)| pipe)?"),
            Material.CSST,
            words("csst|corrugated(?: stainless)?(?: steel)?(?: tub(?:e|ing))?"),
            Material.PE_PIPE,
            words("(?:polyethylene|poly|pe|hdpe|mdpe)(?: pipe)?"),
            Material.PE_TUBING,
            words("(?:polyethylene|poly|pe|hdpe|mdpe) tub(?:e|ing)")));

    private static final String PARTED = "[\\s,:]+(?:of\\s+)?";

    /** Matches the words alone, or before or after other text, with a space, a comma or a colon between. */
    private static Pattern words(String any) {
        String spaced = "(?:" + any.replace(" ", "[ -]+") + ")";
        return Pattern.compile(
                "(?:" + spaced + "(?:" + PARTED + "(?<behind>.*))?|(?<before>.*?)" + PARTED + spaced + ")",
                Pattern.CASE_INSENSITIVE);
    }

    /** Separates the material from the rest of what was typed. */
    public static MaterialWords of(String typed) {
        String text = typed.strip();
        // Tubing before pipe, since "pe" begins both.
        for (Material each :
                new Material[] {Material.STEEL, Material.COPPER, Material.CSST, Material.PE_TUBING, Material.PE_PIPE}) {
            Pattern words = WORDS.get(each);
            Matcher m = words == null ? null : words.matcher(text);
            if (m != null && m.matches()) {
                String rest = Optional.ofNullable(m.group("behind"))
                        .orElseGet(() -> Optional.ofNullable(m.group("before")).orElse(""));
                return new MaterialWords(Optional.of(each), rest.strip());
            }
        }
        return new MaterialWords(Optional.empty(), typed);
    }

    /** The material where the text names one and nothing else; else empty. */
    public static Optional<Material> named(String typed) {
        MaterialWords words = of(typed);
        return words.rest().isBlank() ? words.material() : Optional.empty();
    }
}
