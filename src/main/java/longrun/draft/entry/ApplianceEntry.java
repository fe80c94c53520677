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
 * How one entry of an appliance is asked for, from a row of {@code data/words/appliance.csv}.
 *
 * @param entry the name of the entry in a plan
 * @param none the words of the answer that there is none; blank where that cannot be answered
 * @param choices the words of the choices, by the text stored; none where it is not a choice
 * @param rule the rule that needs it; blank where it is always asked for
 * @param place the pointer below the appliance at which that rule looks
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

    /** The groups of entries of an appliance. */
    public enum Group implements Named {
        /** What it is and where. */
        ABOUT,
        /** On its vent; folded where its kind usually has none. */
        VENTED,
        /** On the rating plate. */
        PLATE,
        /** On few rating plates; folded until it is needed. */
        SELDOM,
        /** On its location; shown where its rule may need it. */
        LOCATION
    }

    /** The kind of field. */
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

        /** The units in which a quantity is shown; empty for other kinds. */
        public Optional<DisplayUnits<?>> findShown() {
            return shown;
        }
    }

    private static ApplianceEntry of(DataRow row) {
        Asked asked = row.choice("asked", Asked.class);
        Map<String, String> choices = choices(row);
        if (choices.isEmpty() == (asked == Asked.CHOICE)) {
            throw row.fault("choices", "a choice must have choices, and nothing else may");
        }
        Group group = row.choice("group", Group.class);
        if (row.text("rule").isEmpty() == (group == Group.LOCATION)) {
            throw row.fault("rule", "an entry on the location needs its rule, and no other entry has one");
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

    /** All entries, in the order in which they are asked for. */
    public static List<ApplianceEntry> listAll() {
        return ALL;
    }

    /** The entries of a group, in the order in which they are asked for. */
    public static List<ApplianceEntry> listAll(Group group) {
        return ALL.stream().filter(e -> e.group == group).toList();
    }
}
