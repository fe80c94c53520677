package longrun.draft.sections;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.draft.entry.DraftEdit;
import longrun.draft.entry.DraftTree;
import longrun.draft.entry.DraftValue;
import longrun.plan.choice.Material;

/** The makers' tubing tables of a draft, and the lines sized by them. */
public final class TubingDraft {

    public static final String TABLES = "/tubingTables";

    private static final int NAME_LENGTH = 60;

    private TubingDraft() {}

    /** The pointer of the table at an index. */
    public static String at(int index) {
        return TABLES + "/" + index;
    }

    /** The name of the table at an index; blank where it has none. */
    public static String name(DraftValue draft, int index) {
        return draft.at(at(index) + "/name").text().strip();
    }

    /** The ids of the lines sized by a table, in the order of the route. */
    public static List<String> users(DraftValue draft, String name) {
        List<String> out = new ArrayList<>();
        draft.get("sections").forEach(s -> {
            if (!name.isEmpty() && s.textOf("table").equals(name)) {
                out.add(s.textOf("id"));
            }
        });
        return out;
    }

    /** Renames a table, also in the lines that use it. Where the name is cleared, the lines keep the old one. */
    public static void rename(DraftEdit edit, int index, String was, String typed) {
        ObjectNode draft = edit.root();
        String now = typed.strip();
        if (now.isEmpty()) {
            DraftTree.remove(draft, at(index) + "/name");
            return;
        }
        ((ObjectNode) draft.at(at(index))).put("name", now);
        if (!was.isEmpty() && !was.equals(now)) {
            draft.path("sections").forEach(s -> {
                if (s instanceof ObjectNode section
                        && s.path("table").asText("").equals(was)) {
                    section.put("table", now);
                }
            });
        }
    }

    /** Removes a table; its lines are sized by the code's table again. */
    public static void remove(DraftEdit edit, int index) {
        ObjectNode draft = edit.root();
        String name = name(edit.whole(), index);
        DraftTree.remove(draft, at(index));
        boolean another = names(edit.whole()).containsKey(name);
        draft.path("sections").forEach(s -> {
            if (!another
                    && s instanceof ObjectNode section
                    && !name.isEmpty()
                    && s.path("table").asText("").equals(name)) {
                section.remove("table");
            }
        });
        if (draft.path("tubingTables").isEmpty()) {
            draft.remove("tubingTables");
        }
    }

    /** Stores the text of a file as the cells of a table, and the name of the file where the table has no name. */
    public static void file(DraftEdit edit, int index, String fileName, String text) {
        ObjectNode draft = edit.root();
        ObjectNode table = (ObjectNode) draft.at(at(index));
        if (name(edit.whole(), index).isEmpty()) {
            table.put("name", freeName(edit.whole(), fileName));
        }
        table.put("csv", csv(text));
    }

    private static String freeName(DraftValue draft, String fileName) {
        String bare = fileName.replaceFirst("\\.[A-Za-z]{1,4}$", "").strip();
        bare = bare.isEmpty() ? "table" : bare.substring(0, Math.min(NAME_LENGTH, bare.length()));
        String free = bare;
        for (int n = 2; names(draft).containsKey(free); n++) {
            free = bare + " " + n;
        }
        return free;
    }

    /** Replaces the tabs of text copied from a spreadsheet by commas. */
    public static String csv(String text) {
        return text.indexOf('\t') >= 0 && text.indexOf(',') < 0 ? text.replace('\t', ',') : text;
    }

    /** The makers' tables by name, with their pressures in words. */
    public static Map<String, String> names(DraftValue draft) {
        Map<String, String> out = new LinkedHashMap<>();
        draft.get("tubingTables").forEach(t -> {
            String name = t.textOf("name").strip();
            if (!name.isEmpty()) {
                out.put(name, name + pressures(t));
            }
        });
        return out;
    }

    private static String pressures(DraftValue table) {
        String inlet = table.textOf("inlet");
        String drop = table.textOf("drop");
        return inlet.isEmpty() || drop.isEmpty() ? "" : ", " + inlet + ", drop " + drop;
    }

    /** The sizes of a table, from its first line. */
    public static List<String> sizes(DraftValue draft, String name) {
        Optional<DraftValue> found = Optional.empty();
        for (DraftValue t : draft.get("tubingTables")) {
            if (found.isEmpty() && !name.isEmpty() && t.textOf("name").strip().equals(name)) {
                found = Optional.of(t);
            }
        }
        List<String> out = new ArrayList<>();
        found.ifPresent(t -> {
            String[] heads = t.textOf("csv").split("\\R", 2)[0].split(",");
            for (int i = 1; i < heads.length; i++) {
                out.add(heads[i].strip());
            }
        });
        out.removeIf(String::isEmpty);
        return out;
    }

    /** Whether a material can be sized by a maker's table. */
    static boolean isTubing(String material) {
        return Material.CSST.written().equals(material);
    }
}
