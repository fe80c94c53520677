package longrun.sizing;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import longrun.Samples;

/**
 * A second, deliberately plain reading of the longest length method, written from the text of 2018 IFGC 402.4.1 and
 * Appendix A alone: it works on the plan's JSON and on the table files, shares no class with the program, and tries every
 * combination by walking each run from its end.
 */
final class RuleTextReading {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Map<String, TextTable> FILES = new HashMap<>();

    /** A table as text: rows by length, columns by size, kBtu/h. */
    record TextTable(List<String> sizes, List<Double> bores, TreeMap<Double, List<String>> rows) {}

    private final JsonNode plan;
    private final Map<String, JsonNode> sections = new LinkedHashMap<>();
    private final Map<String, JsonNode> regulators = new LinkedHashMap<>();
    private final Map<String, JsonNode> applianceOn = new HashMap<>();
    private final Map<String, String> regulatorOn = new HashMap<>();

    RuleTextReading(String json) throws Exception {
        plan = JSON.readTree(json);
        plan.path("sections").forEach(s -> sections.put(s.path("id").asText(), s));
        plan.path("regulators").forEach(r -> regulators.put(r.path("id").asText(), r));
        plan.path("appliances").forEach(a -> applianceOn.put(a.path("fedBy").asText("nothing"), a));
        plan.path("regulators")
                .forEach(r ->
                        regulatorOn.put(r.path("fedBy").asText(), r.path("id").asText()));
    }

    /**
     * What the method gives for each section: "unknown", "no-size" or "row/needed size", the last with "so far " before
     * it where a load behind the regulator is not known or something in the plan hangs loose.
     */
    Map<String, String> answers() {
        Map<String, String> out = new LinkedHashMap<>();
        sections.keySet().forEach(id -> out.put(id, "unknown"));
        for (String r : regulators.keySet()) {
            stage(r, out);
        }
        return out;
    }

    private void stage(String r, Map<String, String> out) {
        List<String> ids = new ArrayList<>();
        for (String id : sections.keySet()) {
            if (source(id).equals(r)) {
                ids.add(id);
            }
        }
        JsonNode regulator = regulators.get(r);
        if (ids.isEmpty() || !regulator.has("outlet") || !regulator.has("allowedDrop")) {
            return;
        }
        Map<String, String> sizes = new HashMap<>();
        double longest = longest(ids, sizes, r, false);
        raise(ids, sizes, r, longest);
        if (allowance().equals("counted")) {
            boolean changed = true;
            while (changed) {
                longest = longest(ids, sizes, r, true);
                changed = raise(ids, sizes, r, longest);
            }
        }
        boolean complete = complete(ids);
        for (String id : ids) {
            String answer = answer(id, r, longest);
            out.put(id, complete || !answer.contains("/") ? answer : "so far " + answer);
        }
    }

    private boolean complete(List<String> ids) {
        boolean complete = true;
        for (String id : ids) {
            complete &= load(id) >= 0;
        }
        for (JsonNode s : plan.path("sections")) {
            complete &= s.has("from");
        }
        for (JsonNode a : plan.path("appliances")) {
            complete &= a.has("fedBy");
        }
        return complete;
    }

    private String allowance() {
        String a = plan.path("fittingAllowance").asText("counted");
        return a.equals("null") ? "counted" : a;
    }

    private String source(String id) {
        String from = sections.get(id).path("from").asText();
        return sections.containsKey(from) ? source(from) : from;
    }

    private boolean raise(List<String> ids, Map<String, String> sizes, String r, double longest) {
        boolean changed = false;
        for (String id : ids) {
            TextTable t = table(id, r);
            if (t == null) {
                continue;
            }
            String wanted = need(id, r, longest, false);
            // where none will do it is counted as the table's largest
            String size = wanted.equals("no-size") ? t.sizes().get(t.sizes().size() - 1) : wanted;
            String old = sizes.get(id);
            if (old == null || t.sizes().indexOf(size) > t.sizes().indexOf(old)) {
                sizes.put(id, size);
                changed = true;
            }
        }
        return changed;
    }

    private double longest(List<String> ids, Map<String, String> sizes, String r, boolean count) {
        double longest = 0;
        for (String id : ids) {
            boolean leaves = ids.stream()
                    .noneMatch(o -> sections.get(o).path("from").asText().equals(id));
            if (leaves) {
                longest = Math.max(longest, run(id, sizes, r, count));
            }
        }
        return longest;
    }

    /** One run walked from its end to the regulator. */
    private double run(String end, Map<String, String> sizes, String r, boolean count) {
        double measured = 0;
        double extra = 0;
        int bends = 0;
        int fittings = 0;
        for (String id = end;
                sections.containsKey(id);
                id = sections.get(id).path("from").asText()) {
            JsonNode s = sections.get(id);
            double undirected = 0;
            for (JsonNode leg : s.path("legs")) {
                measured += feet(leg.asText());
                undirected += direction(leg.asText()).isEmpty() ? feet(leg.asText()) : 0;
            }
            if (!count) {
                continue;
            }
            extra += s.has("fittings") ? 0 : 0.2 * undirected;
            int traps = parts(id, "sediment-trap");
            int shutoffs = parts(id, "shutoff");
            int e90 = s.path("fittings").path("elbow-90").asInt()
                    + s.path("fittings").path("valve").asInt();
            int e45 = s.path("fittings").path("elbow-45").asInt();
            int tees = s.path("fittings").path("tee-branch").asInt();
            String material = s.path("material").asText();
            if (material.equals("csst")) {
                bends += turns(id);
                fittings += 2 + (siblings(id) > 1 ? 1 : 0) + traps + shutoffs + e90 + e45 + tees;
                continue;
            }
            double turn = material.equals("steel") ? 0.90 : 0.21;
            extra += turns(id) * feetOf(turn, id, sizes, r)
                    + (shutoffs + e90) * feetOf(0.90, id, sizes, r)
                    + e45 * feetOf(0.42, id, sizes, r)
                    + (traps + tees) * feetOf(1.80, id, sizes, r);
            if (branch(id)) {
                String above = s.path("from").asText();
                boolean aboveLarger = sections.containsKey(above)
                        && !sections.get(above).path("material").asText().equals("csst")
                        && sizes.containsKey(above)
                        && bore(above, sizes, r) > bore(id, sizes, r);
                extra += feetOf(1.80, aboveLarger ? above : id, sizes, r);
            }
        }
        if (allowance().endsWith("%")) {
            return measured * 1.2;
        }
        return measured + extra + 1.3 * (Math.max(0, bends - 4) + Math.max(0, fittings - 2));
    }

    /** The kinds that 408.4 excuses from a sediment trap; a set of gas logs only where it is vented. */
    private static boolean needsNoTrap(JsonNode appliance) {
        String kind = appliance.path("kind").asText();
        String vent = appliance.path("vent").asText();
        return List.of("light", "range", "clothes-dryer", "fireplace", "outdoor-grill")
                        .contains(kind)
                || (kind.equals("gas-logs") && List.of("direct", "fan", "draft").contains(vent));
    }

    /** The parts entered at an end; with none entered one shutoff, and one trap unless the kind is excused. */
    private int parts(String id, String part) {
        if (applianceOn.containsKey(id) && !applianceOn.get(id).has("connection")) {
            return part.equals("shutoff") || !needsNoTrap(applianceOn.get(id)) ? 1 : 0;
        }
        int n = 0;
        for (JsonNode p : applianceOn.getOrDefault(id, JSON.nullNode()).path("connection")) {
            n += p.path("part").asText().equals(part) ? 1 : 0;
        }
        return n;
    }

    private long siblings(String id) {
        String from = sections.get(id).path("from").asText();
        return sections.values().stream()
                .filter(s -> s.path("from").asText().equals(from))
                .count();
    }

    private String lastDirection(String id) {
        if (!sections.containsKey(id)) {
            return "";
        }
        JsonNode legs = sections.get(id).path("legs");
        return direction(legs.get(legs.size() - 1).asText());
    }

    private int turns(String id) {
        int n = 0;
        String before =
                siblings(id) == 1 ? lastDirection(sections.get(id).path("from").asText()) : "";
        for (JsonNode leg : sections.get(id).path("legs")) {
            String way = direction(leg.asText());
            n += !before.isEmpty() && !way.isEmpty() && !before.equals(way) ? 1 : 0;
            before = way;
        }
        return n;
    }

    private boolean branch(String id) {
        if (siblings(id) < 2) {
            return false;
        }
        String from = sections.get(id).path("from").asText();
        String arriving = lastDirection(from);
        long straight = sections.values().stream()
                .filter(s -> s.path("from").asText().equals(from))
                .filter(s -> !arriving.isEmpty()
                        && direction(s.path("legs").get(0).asText()).equals(arriving))
                .count();
        boolean mine = !arriving.isEmpty()
                && direction(sections.get(id).path("legs").get(0).asText()).equals(arriving);
        return !(mine && straight == 1);
    }

    private double bore(String id, Map<String, String> sizes, String r) {
        TextTable t = table(id, r);
        return t.bores().get(t.sizes().indexOf(sizes.get(id)));
    }

    /** Feet of a turn: the printed value in steel, k d / 0.36 elsewhere (2018 IRC Appendix A Table A.2.2). */
    private double feetOf(double k, String id, Map<String, String> sizes, String r) {
        if (!sections.get(id).path("material").asText().equals("steel")) {
            return k * bore(id, sizes, r) / 0.36;
        }
        String column = k == 0.90 ? "elbow_90_screwed" : k == 0.42 ? "elbow_45_screwed" : "tee_screwed";
        List<String> lines = resource("fittings/equivalent-lengths.csv")
                .lines()
                .filter(l -> !l.startsWith("#"))
                .toList();
        int c = List.of(lines.get(0).split(",")).indexOf(column);
        return lines.stream()
                .map(l -> l.split(","))
                .filter(f -> f[0].equals(sizes.get(id)))
                .mapToDouble(f -> Double.parseDouble(f[c]))
                .findFirst()
                .orElseThrow();
    }

    private String answer(String id, String r, double longest) {
        if (load(id) < 0) {
            return "unknown";
        }
        TextTable t = table(id, r);
        return t == null ? "no-size" : need(id, r, longest, true);
    }

    /** The first size whose capacity is at least the load, in the row of this or the next longer length. */
    private String need(String id, String r, double longest, boolean withRow) {
        TextTable t = table(id, r);
        double rounded = Math.round(longest * 1000) / 1000.0;
        Map.Entry<Double, List<String>> row = t.rows().ceilingEntry(rounded);
        if (row == null) {
            return "no-size";
        }
        double load = knownLoad(id);
        for (String size : allowed(id, t)) {
            String cell = row.getValue().get(t.sizes().indexOf(size));
            if (!cell.isEmpty() && Double.parseDouble(cell) * 1000 >= load - 1e-6) {
                return withRow ? row.getKey() + "/" + size : size;
            }
        }
        return "no-size";
    }

    private List<String> allowed(String id, TextTable t) {
        JsonNode list = plan.path("availableSizes")
                .path(sections.get(id).path("material").asText());
        if (list.isMissingNode()) {
            return t.sizes();
        }
        List<String> names = new ArrayList<>();
        list.forEach(
                n -> names.add(n.asText().equals("7/8 OD") ? "3/4" : n.asText().replace(" nominal", "")));
        return t.sizes().stream().filter(names::contains).toList();
    }

    /** The load, or -1 where something below is not known. */
    private double load(String id) {
        double sum = 0;
        boolean feeds = false;
        for (JsonNode s : sections.values()) {
            if (s.path("from").asText().equals(id)) {
                feeds = true;
                double below = load(s.path("id").asText());
                if (below < 0) {
                    return -1;
                }
                sum += below;
            }
        }
        if (applianceOn.containsKey(id)) {
            JsonNode input = applianceOn.get(id).path("input");
            return input.isMissingNode() ? -1 : sum + kBtuh(input.asText());
        }
        if (regulatorOn.containsKey(id)) {
            double behind = 0;
            boolean any = false;
            for (JsonNode s : sections.values()) {
                if (s.path("from").asText().equals(regulatorOn.get(id))) {
                    any = true;
                    double below = load(s.path("id").asText());
                    if (below < 0) {
                        return -1;
                    }
                    behind += below;
                }
            }
            return any ? sum + behind : -1;
        }
        if (feeds) {
            return sum;
        }
        JsonNode reserve = sections.get(id).path("reserve");
        return reserve.isMissingNode() ? -1 : reserve.asText().equals("none") ? 0 : 40_000;
    }

    private double knownLoad(String id) {
        double sum = 0;
        boolean feeds = false;
        for (JsonNode s : sections.values()) {
            boolean mine = s.path("from").asText().equals(id);
            boolean behind =
                    regulatorOn.containsKey(id) && s.path("from").asText().equals(regulatorOn.get(id));
            if (mine || behind) {
                feeds |= mine;
                sum += knownLoad(s.path("id").asText());
            }
        }
        if (applianceOn.containsKey(id)) {
            JsonNode input = applianceOn.get(id).path("input");
            return sum + (input.isMissingNode() ? 0 : kBtuh(input.asText()));
        }
        JsonNode reserve = sections.get(id).path("reserve");
        boolean end = !feeds && !regulatorOn.containsKey(id);
        return sum + (end && reserve.asText().endsWith("MBH") ? 40_000 : 0);
    }

    private static double kBtuh(String text) {
        return Double.parseDouble(text.replace(" kBtu/h", "")) * 1000;
    }

    private static double feet(String leg) {
        String[] words = leg.strip().split(" ");
        return Double.parseDouble(words[words.length - 2]);
    }

    private static String direction(String leg) {
        String[] words = leg.strip().split(" ");
        return words.length == 3 ? words[0] : "";
    }

    private TextTable table(String id, String r) {
        String pressures = regulators.get(r).path("outlet").asText() + "|"
                + regulators.get(r).path("allowedDrop").asText();
        String at = switch (pressures) {
            case "11 in w.c.|0.5 in w.c." -> "11inwc-0.5inwc";
            case "2 psi|1 psi" -> "2psi-1psi";
            case "10 psi|1 psi" -> "10psi-1psi";
            case "10 psi|3 psi" -> "10psi-3psi";
            default -> "";
        };
        String material = sections.get(id).path("material").asText();
        String file = (material.equals("steel") ? "steel-sch40" : material) + "-" + at + "-propane";
        if (!at.isEmpty() && RuleTextReading.class.getResource("/longrun/data/tables/" + file + ".csv") != null) {
            return FILES.computeIfAbsent(file, f -> parse(resource("tables/" + f + ".csv")));
        }
        return material.equals("csst")
                ? null
                : FILES.computeIfAbsent(material + pressures, k -> computed(material, pressures));
    }

    /** The code's equation in flow form (2018 IFGC 402.4), rounded like print. */
    private static TextTable computed(String material, String pressures) {
        String base = material.equals("steel") ? "steel-sch40" : material;
        TextTable bores = parse(resource("tables/" + base + "-11inwc-0.5inwc-propane.csv"));
        double inlet = psi(pressures.split("\\|")[0]);
        double drop = psi(pressures.split("\\|")[1]);
        TreeMap<Double, List<String>> rows = new TreeMap<>();
        for (double length : lengths()) {
            List<String> cells = new ArrayList<>();
            for (int c = 0; c < bores.sizes().size(); c++) {
                double d = bores.bores().get(c);
                double p1 = inlet + 14.73;
                double p2 = inlet - drop + 14.73;
                double cfh = inlet < 1.5
                        ? 2313 * Math.pow(d, 2.623) * Math.pow(drop * 27.7 / (1.2462 * length), 0.541)
                        : 2237 * Math.pow(d, 2.623) * Math.pow((p1 * p1 - p2 * p2) * 0.9910 / (1.2462 * length), 0.541);
                double kbtuh = printed(cfh * 2488 / 1000);
                double chart =
                        inlet <= 10 && drop <= 1 ? chart(material, bores.sizes().get(c), length) : Double.MAX_VALUE;
                kbtuh = Math.min(kbtuh, printed(chart));
                cells.add(kbtuh < 10 ? "" : Double.toString(kbtuh));
            }
            rows.put(length, cells);
        }
        return new TextTable(bores.sizes(), bores.bores(), rows);
    }

    /**
     * The fitting maker's chart at 10 psi (secondary): the equal or next longer row, beyond the last that row; no limit
     * for a size it does not have.
     */
    private static double chart(String material, String size, double length) {
        if (!material.startsWith("pe-")) {
            return Double.MAX_VALUE;
        }
        String column = material.equals("pe-pipe") ? size + " IPS" : size;
        List<String> lines = resource("tables/pe-mixed-10psi-1psi-propane-maker.csv")
                .lines()
                .filter(l -> !l.startsWith("#"))
                .toList();
        int c = List.of(lines.get(0).split(",")).indexOf(column);
        double last = Double.MAX_VALUE;
        for (String line : lines.subList(1, lines.size())) {
            String[] fields = line.split(",");
            last = c < 0 ? last : Double.parseDouble(fields[c]);
            if (c < 0 || Double.parseDouble(fields[0]) >= length) {
                return last;
            }
        }
        return last;
    }

    private static List<Double> lengths() {
        List<Double> out = new ArrayList<>();
        for (int l = 10; l <= 2000; l += l < 100 ? 10 : l < 200 ? 25 : l < 1000 ? 50 : 100) {
            out.add((double) l);
        }
        return out;
    }

    private static double printed(double kbtuh) {
        if (kbtuh == Double.MAX_VALUE) {
            return kbtuh;
        }
        double unit = kbtuh < 100 ? 1 : Math.pow(10, Math.floor(Math.log10(kbtuh)) - 2);
        return Math.round(kbtuh / unit) * unit;
    }

    private static double psi(String text) {
        double n = Double.parseDouble(text.split(" ")[0]);
        return text.endsWith("psi") ? n : n / 27.7;
    }

    private static TextTable parse(String csv) {
        List<Double> bores = new ArrayList<>();
        List<String> sizes = new ArrayList<>();
        TreeMap<Double, List<String>> rows = new TreeMap<>();
        for (String line : csv.lines().toList()) {
            if (line.startsWith("# inside_diameter_in")) {
                for (String b : line.substring("# inside_diameter_in".length() + 1)
                        .strip()
                        .split("[ ,]+")) {
                    bores.add(Double.parseDouble(b));
                }
            } else if (line.startsWith("length_ft")) {
                sizes.addAll(List.of(line.split(",")).subList(1, line.split(",").length));
            } else if (!line.startsWith("#") && !line.isBlank()) {
                List<String> cells = List.of(line.split(",", -1));
                rows.put(Double.parseDouble(cells.get(0)), cells.subList(1, cells.size()));
            }
        }
        return new TextTable(sizes, bores, rows);
    }

    private static String resource(String name) {
        return RESOURCES.computeIfAbsent(name, n -> Samples.text("data/" + n));
    }

    private static final Map<String, String> RESOURCES = new HashMap<>();
}
