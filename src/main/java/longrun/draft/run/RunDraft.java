package longrun.draft.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import longrun.draft.entry.DraftValue;
import longrun.draft.sections.Allowance;
import longrun.plan.PlanPath;

/**
 * The draft of Size a run: a plan document with one regulator, or two with a line regulator, and a few lines. Immutable: each
 * change makes a new draft. Text that is not a quantity is stored as typed.
 */
public final class RunDraft {

    private static final String NAME = "name";
    private static final String FROM = "from";
    private static final String SECTIONS = "sections";
    private static final String APPLIANCES = "appliances";
    private static final String FED_BY = "fedBy";
    private static final String PIPE = RunMaterials.PIPE;

    private final ObjectNode plan;
    private final List<Line> lines;

    private RunDraft(ObjectNode plan) {
        this.plan = plan;
        lines = RunLines.of(plan);
    }

    /** The draft of a plan that {@link RunFile} has accepted. */
    static RunDraft of(ObjectNode plan) {
        return new RunDraft(plan.deepCopy())
                .changed(p -> p.put(PIPE, RunMaterials.ofRun(p).written()));
    }

    /** A run without lines: steel, from a regulator on the wall, fittings counted. */
    public static RunDraft empty() {
        ObjectNode p = JsonNodeFactory.instance.objectNode();
        p.put("format", longrun.plan.Plan.FORMAT);
        p.put("fittingAllowance", Allowance.COUNTED.written());
        p.set("regulators", PressureStart.WALL.regulators());
        p.putArray(SECTIONS);
        p.putArray(APPLIANCES);
        p.put(PIPE, Pipe.STEEL.written());
        return new RunDraft(p);
    }

    /** The demo run: a branch, an on-demand water heater and a range. */
    public static RunDraft demo() {
        return empty().typed(0, Line.Column.NAME, "from the regulator to the branch")
                .typed(0, Line.Column.LENGTH, "22 ft")
                .typed(1, Line.Column.NAME, "to the on-demand water heater")
                .typed(1, Line.Column.LENGTH, "12 ft")
                .typed(1, Line.Column.INPUT, "199,000 Btu/h")
                .typed(2, Line.Column.NAME, "to the range")
                .typed(2, Line.Column.LENGTH, "18 ft")
                .typed(2, Line.Column.INPUT, "65,000 Btu/h");
    }

    /** The name of a regulator, within a sentence. */
    public String named(String regulator) {
        return start() != PressureStart.TWO_PSI
                ? "the regulator"
                : regulator.equals(PressureStart.LINE_REGULATOR) ? "the line regulator" : "the 2 psi regulator";
    }

    /** Its plan, to be read entry by entry. */
    public DraftValue whole() {
        return DraftValue.of(plan());
    }

    /** The plan to be reviewed, saved or stored: a copy. */
    public ObjectNode plan() {
        ObjectNode p = plan.deepCopy();
        p.remove(PIPE);
        return p;
    }

    /** The text kept in the browser: the plan, and the run's material. */
    public String kept() {
        return plan.toString();
    }

    /** Where the pressure starts. */
    public PressureStart start() {
        return PressureStart.of(plan.path("regulators")).orElse(PressureStart.WALL);
    }

    public Allowance allowance() {
        return Allowance.of(plan.path("fittingAllowance").asText());
    }

    /** The material of the run; a line may have another. */
    public Pipe pipe() {
        return RunMaterials.ofRun(plan);
    }

    /** Whether a line has a material of its own. */
    public boolean isMixed() {
        return lines.stream().anyMatch(l -> l.pipe() != pipe());
    }

    /** The letters of the lines in a material; none where all lines are of one material. */
    public List<String> linesOf(Pipe pipe) {
        return isMixed()
                ? lines.stream().filter(l -> l.pipe() == pipe).map(Line::id).toList()
                : List.of();
    }

    public List<Line> lines() {
        return lines;
    }

    /** Whether another draft has the same materials and start, so that its sizes may still be shown for this one. */
    public boolean hasSameMaterialsAndStart(RunDraft other) {
        return RunMaterials.areAlike(this, other) && start() == other.start();
    }

    /** The index of the line for the pointer of a finding or an error; empty where it is no entry of a line. */
    public Optional<Integer> lineAt(String pointer) {
        PlanPath path = PlanPath.of(pointer);
        if (path.findIndex().isEmpty()) {
            return Optional.empty();
        }
        int at = path.findIndex().getAsInt();
        if (path.isIn(SECTIONS)) {
            return Optional.of(at);
        }
        return path.isIn(APPLIANCES)
                ? Optional.of(indexOf(
                                plan.path(APPLIANCES).path(at).path(FED_BY).asText()))
                        .filter(i -> i >= 0)
                : Optional.empty();
    }

    /** The index of the line for an id in a review: its own, its appliance's, or that of the line regulator at its end. */
    public Optional<Integer> lineOf(String id) {
        int own = indexOf(id);
        if (own >= 0) {
            return Optional.of(own);
        }
        for (String group : List.of(APPLIANCES, "regulators")) {
            for (JsonNode each : plan.path(group)) {
                if (each.path("id").asText().equals(id)) {
                    return Optional.of(indexOf(each.path(FED_BY).asText())).filter(i -> i >= 0);
                }
            }
        }
        return Optional.empty();
    }

    private int indexOf(String id) {
        ArrayNode sections = plan.withArray(SECTIONS);
        for (int i = 0; i < sections.size(); i++) {
            if (sections.get(i).path("id").asText().equals(id)) {
                return i;
            }
        }
        return -1;
    }

    /** A copy with what was typed in an entry; typing in the line after the last begins a new one. */
    public RunDraft typed(int index, Line.Column column, String text) {
        return changed(p -> {
            ArrayNode sections = p.withArray(SECTIONS);
            if (index >= sections.size()) {
                if (text.isBlank()) {
                    return;
                }
                RunLines.add(p);
            }
            ObjectNode section = (ObjectNode) sections.get(Math.min(index, sections.size() - 1));
            switch (column) {
                case NAME -> section.put(NAME, text);
                case LENGTH -> RunMaterials.setLength(section, text);
                case INPUT -> RunLines.setInput(p, section.path("id").asText(), text);
            }
            RunLines.dropBlankEnd(p);
        });
    }

    /** A copy in which a line leaves another line or regulator. */
    public RunDraft from(int index, String id) {
        return changed(p -> ((ObjectNode) p.withArray(SECTIONS).get(index)).put(FROM, id));
    }

    /** A copy without a line; lines that left it leave what it left, and the lines are lettered again. */
    public RunDraft without(int index) {
        return changed(p -> {
            ArrayNode sections = p.withArray(SECTIONS);
            JsonNode gone = sections.remove(index);
            String id = gone.path("id").asText();
            for (JsonNode s : sections) {
                if (s.path(FROM).asText().equals(id)) {
                    ((ObjectNode) s).put(FROM, gone.path(FROM).asText());
                }
            }
            RunLines.removeAppliance(p, id);
            RunNames.rename(p);
        });
    }

    /** A copy with the lines of a pasted list added. */
    public RunDraft plus(List<PastedLine> pasted) {
        RunDraft d = this;
        for (PastedLine each : pasted) {
            int at = d.lines().size();
            String name = each.name().isBlank() ? "as pasted" : each.name();
            d = d.typed(at, Line.Column.NAME, name)
                    .typed(at, Line.Column.LENGTH, each.length())
                    .typed(at, Line.Column.INPUT, each.input());
            if (each.from().isPresent()) {
                d = d.from(at, each.from().get());
            }
            if (each.pipe().isPresent()) {
                d = d.with(at, each.pipe().get());
            }
        }
        return d;
    }

    /** A copy with another fitting allowance. */
    public RunDraft with(Allowance allowance) {
        return changed(p -> p.put("fittingAllowance", allowance.written()));
    }

    /** A copy with another material of the run; a line with a material of its own keeps it. */
    public RunDraft with(Pipe pipe) {
        return changed(p -> RunMaterials.setRun(p, pipe));
    }

    /** A copy with another material of one line. */
    public RunDraft with(int index, Pipe pipe) {
        return changed(p -> ((ObjectNode) p.withArray(SECTIONS).get(index)).put(RunMaterials.MATERIAL, pipe.written()));
    }

    /** A copy with another start. With 2 psi the first line ends at the line regulator, and the lines that left it leave that. */
    public RunDraft with(PressureStart start) {
        if (start == start()) {
            return this;
        }
        return changed(p -> {
            if (start() == PressureStart.TWO_PSI) {
                String fed = p.path("regulators").path(1).path(FED_BY).asText(PressureStart.FIRST_REGULATOR);
                RunNames.refer(p, PressureStart.LINE_REGULATOR, fed);
            }
            p.set("regulators", start.regulators());
            if (start == PressureStart.TWO_PSI) {
                RunNames.placeLineRegulator(p);
            }
        });
    }

    /** A copy with a change made; each end of the run is then given an appliance, in the order of the lines. */
    private RunDraft changed(Consumer<ObjectNode> change) {
        ObjectNode p = plan.deepCopy();
        change.accept(p);
        RunMaterials.settle(p);
        List<JsonNode> inOrder = new ArrayList<>();
        PressureStart start = PressureStart.of(p.path("regulators")).orElse(PressureStart.WALL);
        Map<String, JsonNode> sections = new HashMap<>();
        p.path(SECTIONS).forEach(s -> sections.put(s.path("id").asText(), s));
        for (Line line : RunLines.of(p)) {
            if (sections.get(line.id()) instanceof ObjectNode section) {
                Pipe.of(section.path(RunMaterials.MATERIAL).asText())
                        .ifPresent(pipe -> section.put("setting", pipe.setting(start, line.branches())));
            }
            if (line.branches() && line.input().isBlank()) {
                RunLines.removeAppliance(p, line.id());
                continue;
            }
            ObjectNode end = null;
            for (JsonNode a : p.path(APPLIANCES)) {
                if (a.path(FED_BY).asText().equals(line.id())) {
                    end = (ObjectNode) a;
                }
            }
            if (end == null) {
                end = RunLines.appliance(p, line.id());
            }
            if (!line.name().isBlank()) {
                end.put(NAME, line.name());
            }
            inOrder.add(end);
        }
        ArrayNode appliances = p.putArray(APPLIANCES);
        inOrder.forEach(appliances::add);
        return new RunDraft(p);
    }
}
