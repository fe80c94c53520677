package longrun.draft.entry;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.origin.DataFile;
import longrun.origin.DataRow;
import longrun.plan.choice.Named;
import longrun.words.DisplayUnits;

/**
 * How one entry of an appliance is asked: a row of {@code data/words/appliance.csv}.
 *
 * @param entry its name in a plan
 * @param none the words for a known absence; empty where there can be none
 * @param choices by the text stored; empty where it is no choice of a few
 * @param rule the rule that asks it; blank where it is always asked
 * @param place where that rule looks, below the appliance
 */
public record ApplianceEntry(
        String entry,
        Group group,
        Asked asked,
        String label,
        String hint,
        String none,
        Map<String, String> choices,
        String rule,
        String place) {

    private static final List<ApplianceEntry> ALL = DataFile.read("words/appliance.csv").rows().stream()
            .map(ApplianceEntry::of)
            .toList();

    /** Where it stands among the entries of its appliance. */
    public enum Group implements Named {
        /** What it is and where. */
        ABOUT,
        /** Beside what it is; folded where its kind as a rule has no vent. */
        VENTED,
        /** On the rating plate. */
        PLATE,
        /** On the rating plate of few; folded until it is asked. */
        SELDOM,
        /** Where it stands; shown where its rule can ask it. */
        LOCATION
    }

    /** As what it is asked. */
    public enum Asked implements Named {
        KIND,
        SECTION,
        ROOM,
        WORDS,
        CHOICE,
        YES_NO,
        HEAT(DisplayUnits.HEAT),
        PRESSURE(DisplayUnits.APPLIANCE_PRESSURE),
        HEIGHT(DisplayUnits.ELEVATION),
        DISTANCE(DisplayUnits.LENGTH);

        private final Optional<DisplayUnits<?>> shown;

        Asked() {
            shown = Optional.empty();
        }

        Asked(DisplayUnits<?> shown) {
            this.shown = Optional.of(shown);
        }

        /** How it is shown, where it is a quantity. */
        public Optional<DisplayUnits<?>> findShown() {
            return shown;
        }
    }

    private static ApplianceEntry of(DataRow row) {
        Asked asked = row.choice("asked", Asked.class);
        Map<String, String> choices = choices(row);
        if (choices.isEmpty() == (asked == Asked.CHOICE)) {
            throw row.fault("choices", "a choice has some, and nothing else has");
        }
        Group group = row.choice("group", Group.class);
        if (row.text("rule").isEmpty() == (group == Group.LOCATION)) {
            throw row.fault("rule", "where an appliance stands is asked by a rule, and nothing else is");
        }
        return new ApplianceEntry(
                row.text("entry"),
                group,
                asked,
                row.text("label"),
                row.text("hint"),
                row.text("none"),
                choices,
                row.text("rule"),
                row.text("place"));
    }

    private static Map<String, String> choices(DataRow row) {
        Map<String, String> out = new LinkedHashMap<>();
        String text = row.text("choices");
        for (String each : text.isEmpty() ? new String[0] : text.split("\\|")) {
            int is = each.indexOf('=');
            if (is < 0) {
                throw row.fault("choices", "'" + each.strip() + "' has no words");
            }
            out.put(each.substring(0, is).strip(), each.substring(is + 1).strip());
        }
        return Collections.unmodifiableMap(out);
    }

    /** All of them, a group's in the order in which they are asked. */
    public static List<ApplianceEntry> listAll() {
        return ALL;
    }

    /** Those of a group, in the order in which they are asked. */
    public static List<ApplianceEntry> listAll(Group group) {
        return ALL.stream().filter(e -> e.group == group).toList();
    }
}
