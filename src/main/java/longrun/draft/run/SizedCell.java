package longrun.draft.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longrun.capacity.CapacityTable;
import longrun.capacity.CapacityTables;
import longrun.draft.sections.TableRow;
import longrun.origin.Confidence;
import longrun.piping.Outlet;
import longrun.piping.Piping;
import longrun.quantity.Length;
import longrun.quantity.Show;
import longrun.sizing.AllowanceItem;
import longrun.sizing.SectionSize;
import longrun.sizing.Sizing;
import longrun.sizing.StageSize;

/** The cell from which a size was read: the row used with its neighbours, and the steps of "where from?". */
public final class SizedCell {

    private final Sizing sizing;
    private final int section;
    private final SectionSize size;
    private final CapacityTable table;
    private final int row;
    private final int column;

    private SizedCell(Sizing sizing, int section) {
        this.sizing = sizing;
        this.section = section;
        this.size = sizing.section(section);
        this.table = size.table().orElseThrow();
        this.row = size.row().orElseThrow();
        this.column = size.used().orElseThrow();
    }

    /** The size of a section; it must have one. */
    public static RunAnswer.Sized of(Sizing sizing, int section) {
        return new SizedCell(sizing, section).sized();
    }

    private RunAnswer.Sized sized() {
        return new RunAnswer.Sized(
                size.size().orElseThrow(),
                size.sizeOd(),
                size.capacity().orElseThrow(),
                size.shareUsed().orElseThrow() * 100,
                new RunAnswer.ReadIn(named(""), TableRow.of(table, row, column), source(), held()),
                why(),
                size.bore());
    }

    /** The table with its pressures. */
    private String named(String bore) {
        return table.title() + ". " + source() + " Start " + Show.pressure(table.inlet()) + ", drop "
                + ended(Show.pressure(table.drop()) + bore);
    }

    private String source() {
        return table.source() + (table.source().contains(table.edition()) ? "" : ", " + table.edition()) + ".";
    }

    private String held() {
        String held = held(size.confidence().orElse(Confidence.MEMORY));
        return CapacityTables.standard().asPrinted(table).isPresent()
                        && table.run(row).feet() > 60
                ? held + " The printed table leaves out two length labels; each value is shown here at its true length."
                : held;
    }

    private static String held(Confidence confidence) {
        return switch (confidence) {
            case PRINT -> "The cell is as printed.";
            case COMPUTED -> "The cell is computed by the code\u2019s equation.";
            case SECONDARY -> "The cell is from a page that repeats the code.";
            case MEMORY -> "The cell is held from memory: check it against the print before pipe is cut.";
            case OWN -> "The cell is from a table of your own.";
        };
    }

    private List<RunAnswer.WhyStep> why() {
        StageSize stage = sizing.stage(sizing.piping().stageIndex(section));
        String feet = Show.decimals(stage.longestRun().orElse(Length.ZERO).feet(), 1);
        String rowFt = Show.plain(table.run(row).feet());
        String bore = size.bore().isPresent() ? ", bore " + bore() + " in." : "";
        List<RunAnswer.WhyStep> why = new ArrayList<>();
        why.add(new RunAnswer.WhyStep(
                "Row " + rowFt + " ft, size " + size.size().orElse(""), named(bore) + " " + held(), List.of()));
        why.add(new RunAnswer.WhyStep(
                "Why row " + rowFt,
                "The longest run is " + feet
                        + " ft. The row is that length or the next longer; never between two rows.",
                List.of()));
        why.add(new RunAnswer.WhyStep(
                "Why " + feet + " ft", "", sum(sizing, sizing.piping().stageIndex(section))));
        stage.longestRunTo()
                .ifPresent(to -> why.add(new RunAnswer.WhyStep(
                        "Why the run to the end of line "
                                + sizing.piping().section(to.section()).id(),
                        "It is the longest run, and every line uses that one length, near lines too.",
                        List.of())));
        return List.copyOf(why);
    }

    private static String ended(String words) {
        return words.endsWith(".") ? words : words + ".";
    }

    private String bore() {
        return String.format(Locale.ROOT, "%.3f", size.bore().orElseThrow().inches());
    }

    /** The lengths of the longest run of a stage, one after another, then their sum. */
    public static List<RunAnswer.Term> sum(Sizing sizing, int index) {
        Piping piping = sizing.piping();
        StageSize stage = sizing.stage(index);
        List<RunAnswer.Term> terms = new ArrayList<>();
        for (int s = stage.longestRunTo().map(Outlet::section).orElse(-1); s >= 0; s = piping.parent(s)) {
            terms.add(
                    0,
                    new RunAnswer.Term(
                            "line " + piping.section(s).id() + ", measured",
                            piping.measured(s).orElse(Length.ZERO)));
        }
        for (AllowanceItem item : sizing.allowanceItems(index)) {
            terms.add(new RunAnswer.Term(item.section(), item.part(), item.length()));
        }
        terms.add(new RunAnswer.Term("longest run", stage.longestRun().orElse(Length.ZERO)));
        return List.copyOf(terms);
    }
}
