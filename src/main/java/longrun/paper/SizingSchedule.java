package longrun.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import longrun.capacity.CapacityTable;
import longrun.capacity.CapacityTables;
import longrun.paper.page.Html;
import longrun.paper.page.SheetWords;
import longrun.piping.Outlet;
import longrun.piping.Piping;
import longrun.piping.Side;
import longrun.piping.Stage;
import longrun.plan.Section;
import longrun.quantity.HeatRate;
import longrun.quantity.Show;
import longrun.review.Review;
import longrun.sizing.AllowanceItem;
import longrun.sizing.SectionSize;
import longrun.sizing.StageSize;
import org.jsoup.nodes.Element;

/**
 * The sizes as one redoes them with the book: a line a section with its load, row, table and cell; under it each
 * stage's longest run added up, and each table by the name the book gives it.
 */
final class SizingSchedule {

    private static final List<String> HEADINGS = List.of(
            "Section",
            "From, to",
            "Pipe and legs",
            "Meas- ured, ft",
            "Fit- tings, ft",
            "Load, Btu/h",
            "Table",
            "Row, ft",
            "Needs, in.",
            "Used, in.",
            "Carries, Btu/h",
            "Used, %",
            "Held as");
    private static final List<String> CLASSES =
            List.of("z s", "", "", "r", "r", "r", "", "r", "r", "rz", "r", "r", "held");

    private final Review review;
    private final Piping piping;
    private final Map<String, CapacityTable> tables = new LinkedHashMap<>();

    SizingSchedule(Review review) {
        this.review = review;
        this.piping = review.piping();
        for (int s = 0; s < piping.sectionCount(); s++) {
            review.sizing().section(s).table().ifPresent(t -> tables.putIfAbsent(t.id(), t));
        }
    }

    List<Element> elements() {
        List<Element> out = new ArrayList<>();
        out.add(Html.heading("Sizing schedule", "copper by its nominal size, CSST by EHD"));
        if (piping.sectionCount() == 0) {
            out.add(Html.text("p", "", "No section of pipe is entered yet."));
            return out;
        }
        List<List<String>> rows = new ArrayList<>();
        for (int s = 0; s < piping.sectionCount(); s++) {
            rows.add(row(s));
        }
        out.add(Html.table("Every section of pipe with its size", HEADINGS, CLASSES, rows)
                .addClass("sizes"));
        tables.values().forEach(t -> out.add(Html.text("p", "src", table(t))));
        out.add(Html.text(
                "p",
                "src",
                "To redo a size: take the row of its table for the longest run below (the same length or the next"
                        + " longer, never between two), and the smallest size whose capacity in that row is at least"
                        + " the load. An equal capacity passes."));
        for (int stage = 0; stage < piping.stages().size(); stage++) {
            out.addAll(stage(stage));
        }
        if (SheetWords.sections(review).stream().anyMatch(piping::isProvisional)) {
            out.add(Html.led(
                    "So far:",
                    "a size so marked rests on what is entered; an entry still missing can make it larger. It is not a"
                            + " size to cut pipe by."));
        }
        out.addAll(counted("Counted, not entered:", s -> !piping.endsInPartsNotSeen(s)));
        out.addAll(counted("Counted, assumed, not seen:", piping::endsInPartsNotSeen));
        out.addAll(againstThePrint());
        return out;
    }

    private List<String> row(int s) {
        Section section = piping.section(s);
        SectionSize size = review.sizing().section(s);
        OptionalDouble share = size.shareUsed();
        return List.of(
                section.id(),
                from(s) + " to " + to(s),
                SheetWords.pipe(section) + "; " + SheetWords.legs(section)
                        + (section.rough().is(true) ? "; rough, measure" : "")
                        + (section.isAssumed() ? "; assumed, not seen" : ""),
                SheetWords.feet(piping.measured(s)),
                SheetWords.feet(review.sizing().counted(s)),
                SheetWords.heat(piping.load(s).whole()),
                size.table().map(this::key).orElse(SheetWords.BLANK),
                size.rowRun().map(r -> Show.plain(r.feet())).orElse(SheetWords.BLANK),
                SheetWords.needed(size),
                SheetWords.size(size),
                SheetWords.heat(size.capacity()),
                share.isPresent() ? Show.whole(share.getAsDouble() * 100) : SheetWords.BLANK,
                held(size) + (piping.isProvisional(s) && size.size().isPresent() ? ", so far" : ""));
    }

    private static String held(SectionSize size) {
        return switch (size.status()) {
            case UNKNOWN -> "not yet sized";
            case NO_SIZE ->
                size.noSize()
                        .map(r -> r.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '))
                        .orElse("no size");
            case UNDERSIZED -> "TOO SMALL";
            case SIZED, ADEQUATE -> size.confidence().map(c -> c.written()).orElse("");
        };
    }

    private String from(int s) {
        int parent = piping.parent(s);
        if (parent >= 0) {
            return piping.section(parent).id();
        }
        return piping.findStage(s).map(Stage::id).orElse("not entered");
    }

    private String to(int s) {
        return piping.findOutlet(s).map(o -> SheetWords.outlet(review, o)).orElse("branch");
    }

    private String key(CapacityTable table) {
        return "T" + (List.copyOf(tables.keySet()).indexOf(table.id()) + 1);
    }

    private String table(CapacityTable t) {
        return key(t) + ": " + t.title() + ". " + t.source()
                + (t.source().contains(t.edition()) ? "" : ", " + t.edition()) + ". Start "
                + Show.pressure(t.inlet()) + ", drop " + Show.pressure(t.drop())
                + (t.computed() ? "; computed by the code\u2019s equation." : "");
    }

    private static String side(Side side) {
        return switch (side) {
            case TANK_SIDE -> "tank side";
            case HOUSE_SIDE -> "house side";
            case UNKNOWN -> "side not known";
        };
    }

    private List<Element> stage(int index) {
        Stage stage = piping.stages().get(index);
        StageSize size = review.sizing().stage(index);
        if (stage.sections().isEmpty()) {
            return List.of();
        }
        String name = "Behind " + SheetWords.regulator(stage.regulator()) + ", " + side(stage.side()) + ".";
        if (size.longestRun().isEmpty()) {
            return List.of(
                    Html.led(name, "The longest run is not known yet: a length, material or pressure is missing."));
        }
        List<String> way = new ArrayList<>();
        for (int s = size.longestRunTo().map(Outlet::section).orElse(-1); s >= 0; s = piping.parent(s)) {
            way.add(0, piping.section(s).id() + " " + SheetWords.feet(piping.measured(s)));
        }
        String items = review.sizing().allowanceItems(index).isEmpty()
                ? "nothing for fittings"
                : String.join(
                        ", ",
                        review.sizing().allowanceItems(index).stream()
                                .map(SizingSchedule::item)
                                .toList());
        return List.of(Html.led(
                name,
                "Longest run " + SheetWords.feet(size.longestRun()) + " ft, to "
                        + size.longestRunTo()
                                .map(o -> SheetWords.outlet(review, o))
                                .orElse("its end")
                        + ": measured " + String.join(" + ", way) + " = " + SheetWords.feet(size.measured())
                        + "; fittings " + items + " = " + SheetWords.feet(size.allowance())
                        + ". Every section of it takes this one length. Load "
                        + piping.load(stage).whole().map(Show::btuh).orElse("not known whole")
                        + "."));
    }

    /** Parts that nobody has entered or seen and that are counted because the rules ask for them. */
    private List<Element> counted(String led, IntPredicate of) {
        List<String> said = new ArrayList<>();
        for (int s = 0; s < piping.sectionCount(); s++) {
            List<String> parts = review.sizing().assumedParts(s).stream()
                    .map(p -> p.written().replace('-', ' '))
                    .toList();
            if (!parts.isEmpty() && of.test(s)) {
                said.add(piping.section(s).id() + ": " + String.join(", ", parts));
            }
        }
        return said.isEmpty()
                ? List.of()
                : List.of(Html.led(led, "parts the rules ask for at the appliance, " + String.join("; ", said) + "."));
    }

    private static String item(AllowanceItem i) {
        return i.what() + " " + Show.decimals(i.length().feet(), 2);
    }

    /** Where the book's own page says more than the equation bears, both cells are shown, since the book will be held against it. */
    private List<Element> againstThePrint() {
        List<List<String>> rows = new ArrayList<>();
        for (int s = 0; s < piping.sectionCount(); s++) {
            SectionSize size = review.sizing().section(s);
            if (size.table().isEmpty() || size.row().isEmpty() || size.needed().isEmpty()) {
                continue;
            }
            CapacityTable corrected = size.table().get();
            String id = piping.section(s).id();
            int row = size.row().getAsInt();
            int column = size.needed().getAsInt();
            CapacityTables.standard().asPrinted(corrected).ifPresent(printed -> {
                OptionalInt printedRow = printed.findRow(corrected.run(row));
                if (printedRow.isEmpty()) {
                    return;
                }
                Optional<HeatRate> said = printed.capacity(printedRow.getAsInt(), column);
                Optional<HeatRate> held = corrected.capacity(row, column);
                if (!said.equals(held)) {
                    rows.add(List.of(
                            id,
                            Show.plain(corrected.run(row).feet()),
                            corrected.sizes().get(column),
                            SheetWords.heat(said),
                            SheetWords.heat(held)));
                }
            });
        }
        if (rows.isEmpty()) {
            return List.of();
        }
        return List.of(
                Html.heading("Against the printed page", "beyond 60 ft its length labels are shifted"),
                Html.table(
                        "Cells in which the printed page and the code's equation differ",
                        List.of("Section", "Row, ft", "Size, in.", "Printed there, Btu/h", "Used here, Btu/h"),
                        List.of("z s", "r", "r", "r", "r"),
                        rows),
                Html.text(
                        "p",
                        "src",
                        "The printed page leaves out two length labels, so each value beyond 60 ft stands beside a"
                                + " longer run than the code\u2019s own equation gives it. The smaller is used: it is what"
                                + " the equation bears."));
    }
}
