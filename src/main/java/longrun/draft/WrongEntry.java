package longrun.draft;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import longrun.plan.json.PlanError;
import longrun.words.IsolatedName;

/**
 * An entry that was not understood: where it stands, and what to write instead.
 *
 * @param pointer where it stands in the draft
 * @param where in words
 * @param says what stands there and what to write instead
 */
public record WrongEntry(String pointer, String where, String says) {

    /** All of a house, place after place. */
    public static List<WrongEntry> listIn(HouseSession session) {
        List<WrongEntry> out = new ArrayList<>();
        for (PlaceKind place : PlaceKind.values()) {
            new TreeMap<>(session.errors()).forEach((pointer, error) -> {
                if (PlaceKind.of(pointer) == place) {
                    out.add(new WrongEntry(pointer, where(session, pointer), says(session.text(pointer), error, "4")));
                }
            });
        }
        return out;
    }

    /**
     * What is said of an entry; where a number is needed the reader's words are for those who write JSON.
     *
     * @param such a number as this entry has it
     */
    public static String says(String stored, PlanError error, String such) {
        return error.kind() == PlanError.Kind.NOT_A_NUMBER
                ? "\u201c" + stored + "\u201d is no number: write it in digits, such as " + such
                : error.message();
    }

    private static String where(HouseSession session, String pointer) {
        String place = PlaceKind.of(pointer).title();
        String thing = thing(session, pointer);
        String entry = pointer.replaceFirst("(/[0-9]+)+$", "");
        String name = entry.substring(entry.lastIndexOf('/') + 1)
                .replaceAll("([a-z])([A-Z])", "$1 $2")
                .toLowerCase(Locale.ROOT);
        return place + (thing.isEmpty() ? "" : ", " + thing) + ", " + name;
    }

    private static String thing(HouseSession session, String pointer) {
        String[] names = pointer.split("/", -1);
        if (names.length < 4 || !names[2].matches("[0-9]+")) {
            return "";
        }
        JsonNode item = session.at("/" + names[1] + "/" + names[2]);
        String id = item.path("id").asText(String.valueOf(Integer.parseInt(names[2]) + 1));
        return switch (names[1]) {
            case "appliances" ->
                IsolatedName.of(
                        item.path("name").asText(item.path("kind").asText(id).replace('-', ' ')));
            case "sections" -> "section " + IsolatedName.of(id);
            case "regulators" -> "regulator " + IsolatedName.of(id);
            case "rooms" -> IsolatedName.of(item.path("name").asText(id));
            case "tanks", "tank" -> "tank " + IsolatedName.of(id);
            default -> String.valueOf(Integer.parseInt(names[2]) + 1);
        };
    }
}
