package longrun.paper.calculation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longrun.piping.Piping;
import longrun.review.Review;
import longrun.words.Names;

/** Puts the figures of a review into the order of book and pencil; what belongs to no step comes last, none is left out. */
final class CalculationOrder {

    private static final Pattern LIST_ITEM = Pattern.compile("(/(?:sections|stages|outlets|regulators))/(\\d+)/.*");

    private static final Pattern DEMAND = Pattern.compile("/tank/demands/(\\d+)/.*");

    /** A step: its heading and the pointers of its figures, each pattern's after the one before. */
    private record Step(String title, String quiet, List<Pattern> takes) {

        static Step of(String title, String quiet, String... takes) {
            return new Step(
                    title, quiet, List.of(takes).stream().map(Pattern::compile).toList());
        }

        int place(String pointer) {
            for (int i = 0; i < takes.size(); i++) {
                if (takes.get(i).matcher(pointer).matches()) {
                    return i;
                }
            }
            return -1;
        }
    }

    private static final List<Step> STEPS = List.of(
            Step.of(
                    "Loads",
                    "from the burners back to the tank",
                    "/(sections|stages)/\\d+/loadBtuh",
                    "/connectedLoadBtuh"),
            Step.of(
                    "Runs",
                    "the longest of each stage, measured and with its fittings",
                    "/sections/\\d+/measuredFt",
                    "/stages/\\d+/(measuredFt|allowanceFt|longestRun.*Ft)"),
            Step.of("Rows", "one for the whole of a stage", "/sections/\\d+/rowFt"),
            Step.of("Cells", "the size in use and what it carries", "/sections/\\d+/(capacityBtuh|usedPercent)"),
            Step.of(
                    "Drops and pressures",
                    "everything firing, from the regulator on",
                    "/regulators/\\d+/setting.*",
                    "/sections/\\d+/dropInWc",
                    "/regulators/\\d+/(inlet|lockUp|droop).*",
                    "/outlets/\\d+/pressure.*",
                    "/regulators/.*",
                    "/readings/.*"),
            Step.of(
                    "Beside the pressures",
                    "speed, room inside the pipe, and what rising costs",
                    "/(sections|outlets)/\\d+/(velocity|inside|static).*"),
            Step.of("Room left", "every size unchanged", "/(outlets|stages)/\\d+/.*[hH]eadroom.*"),
            Step.of("Vapour", "tank at the refill gauge, on the coldest morning", "/tank/.*"),
            Step.of("Hot water", "its cold water, and the room's heat it takes", "/hotWater/.*"),
            Step.of("The year", "month by month", "/fuel/.*"),
            Step.of("Further figures", "", ".*"));

    private CalculationOrder() {}

    static List<CalculationPart> of(Review review) {
        Map<Step, List<CalculationPart.Line>> lines = new LinkedHashMap<>();
        STEPS.forEach(s -> lines.put(s, new ArrayList<>()));
        for (CalculationPart.Line line : NumberLines.of(review, CalculationOrder::at)) {
            Step step = STEPS.stream()
                    .filter(s -> s.place(line.pointer()) >= 0)
                    .findFirst()
                    .orElseThrow();
            lines.getOrDefault(step, new ArrayList<>()).add(line);
        }
        List<CalculationPart> out = new ArrayList<>();
        lines.forEach((step, of) -> {
            if (!of.isEmpty()) {
                out.add(new CalculationPart(step.title(), step.quiet(), inOrder(review, step, of)));
            }
        });
        return out;
    }

    private static List<CalculationPart.Line> inOrder(Review review, Step step, List<CalculationPart.Line> lines) {
        Piping piping = review.piping();
        List<CalculationPart.Line> out = new ArrayList<>(lines);
        out.sort(Comparator.comparingInt((CalculationPart.Line l) -> step.place(l.pointer()))
                .thenComparingInt(l -> l.pointer().endsWith("/loadBtuh") ? -depth(piping, l.pointer()) : 0));
        return out;
    }

    /** How far from the tank a load stands, so that each is summed after those it is made of. */
    private static int depth(Piping piping, String pointer) {
        Matcher m = LIST_ITEM.matcher(pointer);
        if (!m.matches()) {
            return 0;
        }
        int item = Integer.parseInt(m.group(2));
        int depth = 1;
        int section = item;
        if (m.group(1).equals("/stages")) {
            section = piping.sectionFeeding(piping.stages().get(item).regulatorIndex());
        }
        while (section >= 0) {
            depth += 2;
            int above = piping.parent(section);
            if (above < 0 && piping.stageIndex(section) >= 0) {
                depth += 2;
                above = piping.sectionFeeding(
                        piping.stages().get(piping.stageIndex(section)).regulatorIndex());
            }
            section = above;
        }
        return depth;
    }

    private static String at(Review review, String pointer) {
        Matcher demand = DEMAND.matcher(pointer);
        if (demand.matches()) {
            int item = Integer.parseInt(demand.group(1));
            return review.tank()
                    .map(t -> Names.capital(t.demands().get(item).name()))
                    .orElse("");
        }
        Matcher m = LIST_ITEM.matcher(pointer);
        if (!m.matches()) {
            return "";
        }
        int item = Integer.parseInt(m.group(2));
        return switch (m.group(1)) {
            case "/sections" -> review.piping().section(item).id();
            case "/stages" -> review.piping().stages().get(item).id();
            case "/outlets" -> Names.of(review, review.plan().appliances().get(item));
            default -> review.plan().regulators().get(item).id();
        };
    }
}
