package longrun.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longrun.draft.entry.DraftAppliances;
import longrun.draft.entry.DraftValue;
import longrun.finding.EntryName;
import longrun.plan.PlanPath;
import longrun.plan.json.PlanError;
import longrun.words.IsolatedName;

/**
 * An entry that was not understood.
 *
 * @param pointer its JSON pointer in the draft
 * @param where in words: its place, the part it belongs to and what it is called
 * @param says what is written there and what to write instead
 */
public record WrongEntry(String pointer, String where, String says) {

    /** All wrong entries of a house, place after place. */
    public static List<WrongEntry> listIn(HouseSession session) {
        List<WrongEntry> out = new ArrayList<>();
        for (PlaceKind place : PlaceKind.values()) {
            new TreeMap<>(session.errors()).forEach((pointer, error) -> {
                if (PlaceKind.of(pointer) == place) {
                    out.add(new WrongEntry(
                            pointer, where(session.draft(), pointer), says(session.text(pointer), error, "4")));
                }
            });
        }
        return out;
    }

    /**
     * What is wrong with an entry and what to write instead. A missing number is said in other words than the plan reader's,
     * which are for people who write JSON.
     *
     * @param stored what is written there
     * @param such an example of a number for this entry
     */
    public static String says(String stored, PlanError error, String such) {
        return error.kind() == PlanError.Kind.NOT_A_NUMBER
                ? "\u201c" + stored + "\u201d is not a number: write it in digits, such as " + such
                : error.message();
    }

    /** Where an entry is, in words: its place, the part it belongs to and what it is called; for a whole part, no entry. */
    static String where(DraftValue draft, String pointer) {
        PlanPath at = PlanPath.of(pointer);
        String place = PlaceKind.of(pointer).title();
        String thing = thing(draft, at);
        String entry = at.length() == 2 && at.findIndex().isPresent() ? "" : EntryName.of(at);
        return Stream.of(place, thing, entry).filter(s -> !s.isEmpty()).collect(Collectors.joining(", "));
    }

    private static String thing(DraftValue draft, PlanPath at) {
        if (at.length() < 2 || at.findIndex().isEmpty()) {
            return "";
        }
        DraftValue item = draft.at(at.thing());
        String number = String.valueOf(at.findIndex().getAsInt() + 1);
        String id = item.textOf("id", number);
        return switch (at.step(0)) {
            case "appliances" ->
                IsolatedName.of(DraftAppliances.of(draft).name(at.findIndex().getAsInt()));
            case "sections" -> "section " + IsolatedName.of(id);
            case "regulators" -> "regulator " + IsolatedName.of(id);
            case "rooms" -> IsolatedName.of(item.textOf("name", id));
            case "tanks", "tank" -> "tank " + IsolatedName.of(id);
            default -> at.length() == 2 ? "" : number;
        };
    }
}
