package longrun.draft.sections;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import longrun.draft.entry.DraftAppliances;
import longrun.draft.entry.DraftValue;
import longrun.finding.ListWords;

/** The sections of a draft, read once for everything that shows them: in order, with what each may leave and feed. */
public final class RouteLines {

    private final JsonNode draft;
    private final String commonSetting;
    private final List<RouteLine> lines = new ArrayList<>();
    private final Map<String, List<String>> branches = new HashMap<>();
    private final Map<String, String> feeds = new HashMap<>();
    private final Map<String, String> ends = new LinkedHashMap<>();

    public RouteLines(DraftValue entered) {
        draft = entered.node();
        commonSetting = new WholeRoute(entered).common(WholeRoute.SETTING);
        readEnds();
        for (JsonNode s : draft.path("sections")) {
            branches.computeIfAbsent(s.path("from").asText(""), from -> new ArrayList<>())
                    .add(s.path("id").asText(""));
        }
        for (JsonNode s : draft.path("sections")) {
            lines.add(line(lines.size(), s));
        }
    }

    /** Reads what may be at the end of a line, and what is. */
    private void readEnds() {
        DraftAppliances appliances = DraftAppliances.of(DraftValue.of(draft));
        int at = 0;
        for (JsonNode a : draft.path("appliances")) {
            String key = "app:" + a.path("id").asText("");
            ends.put(key, appliances.name(at++));
            feeds.putIfAbsent(a.path("fedBy").asText(""), key);
        }
        for (JsonNode r : draft.path("regulators")) {
            String id = r.path("id").asText("");
            String name = r.path("name").asText("");
            String by = r.path("fedBy").asText("");
            feeds.putIfAbsent(by, "reg:" + id);
            if (!by.equals("tank")) {
                ends.put("reg:" + id, name.isBlank() ? "regulator " + id : name + ", " + id);
            }
        }
        feeds.remove("");
        ends.put(RouteDraft.CAP, "capped");
    }

    private RouteLine line(int index, JsonNode s) {
        String id = s.path("id").asText("");
        List<String> legs = new ArrayList<>();
        if (s.path("legs").isArray()) {
            s.path("legs").forEach(l -> legs.add(l.asText("")));
        } else if (!s.path("legs").asText("").isBlank()) {
            legs.add(s.path("legs").asText());
        }
        return new RouteLine(
                index,
                id,
                s.path("from").asText(""),
                legs,
                s.path("material").asText(""),
                s.path("setting").asText(""),
                s.path("under").asText(""),
                ends(s.path("ends")),
                s.path("rough").asBoolean(false),
                s.path("assumed").asBoolean(false),
                s.path("chosenSize").asText(""),
                s.path("installedSize").asText(""),
                s.path("reserve").asText(""),
                s.path("table").asText(""),
                feeds.getOrDefault(id, s.path("capped").asBoolean(false) ? RouteDraft.CAP : ""),
                id.isEmpty() ? List.of() : branches.getOrDefault(id, List.of()));
    }

    private static String ends(JsonNode entered) {
        if (entered.isTextual()) {
            return entered.asText();
        }
        List<String> ends = new ArrayList<>();
        entered.forEach(e -> ends.add(e.asText("")));
        return ends.stream().distinct().count() == 1 && ends.size() == 2 ? ends.get(0) : String.join(", ", ends);
    }

    /** The place of most lines, such as indoors; blank where none is entered. */
    public String commonSetting() {
        return commonSetting;
    }

    /** How many lines there are. */
    public int count() {
        return lines.size();
    }

    /** The line at an index; empty past the last. */
    public Optional<RouteLine> at(int index) {
        return index >= 0 && index < lines.size() ? Optional.of(lines.get(index)) : Optional.empty();
    }

    /** The first line with an id; empty where there is none. */
    public Optional<RouteLine> find(String id) {
        return lines.stream().filter(l -> l.id().equals(id)).findFirst();
    }

    /** What a line may leave, by id: regulators, and lines that feed nothing else and are not downstream of it. */
    public Map<String, String> mayLeave(int index) {
        Map<String, String> out = new LinkedHashMap<>();
        out.put("", "\u2026");
        draft.path("regulators")
                .forEach(r -> out.put(r.path("id").asText(), r.path("id").asText()));
        Set<String> beyond = new HashSet<>();
        at(index).ifPresent(l -> addBeyond(l.id(), beyond));
        for (RouteLine l : lines) {
            if (!beyond.contains(l.id()) && l.feeds().isEmpty()) {
                out.put(l.id(), l.id());
            }
        }
        return out;
    }

    private void addBeyond(String id, Set<String> beyond) {
        List<String> waiting = new ArrayList<>(List.of(id));
        while (!waiting.isEmpty()) {
            String next = waiting.remove(waiting.size() - 1);
            if (beyond.add(next)) {
                waiting.addAll(branches.getOrDefault(next, List.of()));
            }
        }
    }

    /** What a line may feed, by {@link RouteLine#feeds()}; a line that is not begun has no branches. */
    public Map<String, String> mayFeed(int index) {
        List<String> out = at(index).map(RouteLine::branches).orElse(List.of());
        Map<String, String> may = new LinkedHashMap<>();
        may.put("", branching(out));
        may.putAll(ends);
        return may;
    }

    /** What a line feeds, in words; where it branches, into what. */
    public String feedsInWords(RouteLine line) {
        return line.feeds().isEmpty() ? branching(line.branches()) : ends.getOrDefault(line.feeds(), line.feeds());
    }

    private static String branching(List<String> out) {
        return out.isEmpty()
                ? "branches, or not entered"
                : out.size() > 3 ? out.size() + " sections" : "branch: " + ListWords.all(out);
    }

    /** What the next line most likely leaves: the regulator at the end of the last, the last itself, or what the last leaves. */
    public String suggestedFrom() {
        if (!lines.isEmpty()) {
            RouteLine last = lines.get(lines.size() - 1);
            if (last.feeds().startsWith("reg:")) {
                return last.feeds().substring(4);
            }
            return last.feeds().isEmpty() ? last.id() : last.from();
        }
        String first = "";
        for (JsonNode r : draft.path("regulators")) {
            first = first.isEmpty() || r.path("fedBy").asText("").equals("tank")
                    ? r.path("id").asText("")
                    : first;
        }
        return first;
    }

    /** The next line as it will begin: with the material, maker's table and place of the one above, unless that is buried and ends at a regulator. */
    public RouteLine next() {
        Optional<RouteLine> above = at(lines.size() - 1)
                .filter(l -> !l.feeds().startsWith("reg:") || !l.setting().equals("underground"));
        String material = above.map(RouteLine::material).orElse("");
        return new RouteLine(
                lines.size(),
                nextId(),
                suggestedFrom(),
                List.of(),
                material,
                above.map(RouteLine::setting).orElse(""),
                "",
                "",
                false,
                false,
                "",
                "",
                "",
                material.isEmpty() ? "" : above.map(RouteLine::table).orElse(""),
                "",
                List.of());
    }

    /** The id of the next line: a letter that nothing in the house has yet, or Y and a number behind a first stage regulator. */
    public String nextId() {
        String from = suggestedFrom();
        Set<String> taken = new HashSet<>();
        for (String list : List.of("regulators", "sections", "rooms", "appliances")) {
            draft.path(list).forEach(n -> taken.add(n.path("id").asText("")));
        }
        boolean yard = false;
        for (JsonNode r : draft.path("regulators")) {
            yard |= r.path("id").asText("").equals(from)
                    && r.path("kind").asText("").equals("first-stage");
        }
        for (int n = 0; ; n++) {
            String letter = String.valueOf((char) ('A' + n % 26));
            String id = yard ? "Y" + (n + 1) : n < 26 ? letter : letter + (n / 26 + 1);
            if (!taken.contains(id)) {
                return id;
            }
        }
    }
}
