package longrun.rules;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import longrun.Samples;
import longrun.rules.shape.House;

/**
 * Small changes to a plan's text: {@code /tank/toBuilding = "9.9 ft"}, {@code /tank/toBuilding gone},
 * {@code /appliances/0/connection/1 gone}, {@code /appliances/0/connection/0 insert {...}}; several parted by " & ".
 */
public final class Edits {

    private static final JsonMapper MAPPER = new JsonMapper();

    private Edits() {}

    public static House house(String file, String edits) {
        return House.of(Samples.plan(text(file, edits)));
    }

    static String text(String file, String edits) {
        JsonNode plan = read(Samples.text("rules/" + file));
        for (String edit : edits.split(" & ")) {
            if (!edit.isBlank()) {
                apply(plan, edit.strip());
            }
        }
        return plan.toString();
    }

    private static void apply(JsonNode plan, String edit) {
        String[] words = edit.split(" ", 3);
        JsonPointer at = JsonPointer.compile(words[0]);
        JsonNode holder = plan.at(at.head());
        String last = at.last().getMatchingProperty();
        if (holder.isMissingNode()) {
            throw new IllegalArgumentException("nothing at " + at.head());
        }
        switch (words[1]) {
            case "gone" -> remove(holder, last);
            case "=" -> {
                if (holder instanceof ArrayNode array) {
                    array.set(Integer.parseInt(last), read(words[2]));
                } else {
                    ((ObjectNode) holder).set(last, read(words[2]));
                }
            }
            case "insert" -> ((ArrayNode) holder).insert(Integer.parseInt(last), read(words[2]));
            case "to" -> {
                ArrayNode array = (ArrayNode) holder;
                array.insert(Integer.parseInt(words[2]), array.remove(Integer.parseInt(last)));
            }
            default -> throw new IllegalArgumentException(edit);
        }
    }

    private static void remove(JsonNode holder, String last) {
        JsonNode gone = holder instanceof ArrayNode array
                ? array.remove(Integer.parseInt(last))
                : ((ObjectNode) holder).remove(last);
        if (gone == null) {
            throw new IllegalArgumentException("no " + last + " to take away");
        }
    }

    static JsonNode read(String json) {
        try {
            return MAPPER.readTree(json);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(json, e);
        }
    }
}
