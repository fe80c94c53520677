package longrun.rules.shape;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longrun.finding.FindingBuilder;

/**
 * Where a rule looks.
 *
 * @param at the id a finding stands at, or tank, site, plan
 * @param pointer JSON pointer of the thing looked at
 * @param label how a fitter would call it in a sentence, such as "the range"
 * @param several whether the label is of more than one
 */
public record Place(String at, String pointer, String label, boolean several) {

    private static final String WHO = "{who}";
    private static final Pattern NUMBER = Pattern.compile("\\{([A-Za-z ]+)\\|([A-Za-z ]+)}");

    public Place(String at, String pointer, String label) {
        this(at, pointer, label, false);
    }

    /** A place inside this one, told by the same id and name. */
    public Place inside(String path) {
        return new Place(at, pointer + "/" + path, label, several);
    }

    /** This place with others, told together. */
    Place together(String all) {
        return new Place(at, pointer, all, true);
    }

    /** What was found at it; where the words have {@code {who}} they name it. */
    FindingBuilder found(FindingBuilder builder, String words) {
        return words.contains(WHO) ? builder.foundNaming(named(words)) : builder.found(named(words));
    }

    /** Words about it: {@code {who}} becomes its label, {@code {is|are}} what goes with one or with several. */
    String named(String words) {
        if (words.indexOf('{') < 0) {
            return words;
        }
        String numbered = words.indexOf('|') < 0
                ? words
                : NUMBER.matcher(words).replaceAll(m -> Matcher.quoteReplacement(several ? m.group(2) : m.group(1)));
        return numbered.replace(WHO, label);
    }
}
