package longrun.draft;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import longrun.draft.entry.DraftValue;
import longrun.plan.PlanPath;

/**
 * What an undo or redo changed, so that a person is told of a change that is not in sight.
 *
 * @param pointers JSON pointers at which the two drafts differ, in the plan's order
 * @param where the first of them in words, its place first
 */
public record StepChanges(List<String> pointers, String where) {

    /** What differs between two drafts; empty where nothing does. */
    static Optional<StepChanges> between(DraftValue before, DraftValue after) {
        List<String> pointers = new ArrayList<>();
        collect(before.node(), after.node(), "", pointers);
        return pointers.isEmpty()
                ? Optional.empty()
                : Optional.of(new StepChanges(List.copyOf(pointers), where(before, after, pointers.get(0))));
    }

    /** Whether a place asks for any of the changed entries. */
    public boolean isIn(PlaceKind place) {
        return pointers.stream().anyMatch(place::holds);
    }

    /** JSON pointer of the first change. */
    public String first() {
        return pointers.get(0);
    }

    private static String where(DraftValue before, DraftValue after, String pointer) {
        PlanPath at = PlanPath.of(pointer);
        String list = "/" + at.step(0);
        // A removed item can only be named from the draft before.
        boolean gone = before.at(list).size() > after.at(list).size();
        return WrongEntry.where(gone ? before : after, pointer);
    }

    private static void collect(JsonNode before, JsonNode after, String at, List<String> out) {
        if (before.equals(after)) {
            return;
        }
        if (before.isObject() && after.isObject()) {
            TreeSet<String> names = new TreeSet<>();
            before.fieldNames().forEachRemaining(names::add);
            after.fieldNames().forEachRemaining(names::add);
            names.forEach(n -> collect(before.path(n), after.path(n), at + "/" + n, out));
        } else if (isOfThings(before) || isOfThings(after)) {
            items(before, after, at, out);
        } else {
            out.add(at);
        }
    }

    private static boolean isOfThings(JsonNode node) {
        return node.isArray() && node.path(0).isObject();
    }

    /** Where items were added or removed all later ones move, so only the first that differs is told. */
    private static void items(JsonNode before, JsonNode after, String at, List<String> out) {
        boolean same = before.size() == after.size();
        for (int i = 0; i < Math.max(before.size(), after.size()); i++) {
            if (same) {
                collect(before.path(i), after.path(i), at + "/" + i, out);
            } else if (!before.path(i).equals(after.path(i))) {
                out.add(at + "/" + i);
                return;
            }
        }
    }
}
