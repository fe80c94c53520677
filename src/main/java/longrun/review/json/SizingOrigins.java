package longrun.review.json;

import java.util.ArrayList;
import java.util.List;
import longrun.capacity.CapacityTable;
import longrun.origin.Confidence;
import longrun.origin.Origin;
import longrun.piping.Outlet;
import longrun.piping.Piping;
import longrun.piping.Stage;
import longrun.plan.Section;
import longrun.plan.SizeNames;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Show;
import longrun.review.Review;
import longrun.sizing.AllowanceItem;
import longrun.sizing.SectionSize;
import longrun.sizing.Sizing;
import longrun.sizing.StageSize;

/** Where the loads, lengths and sizes come from. Each origin goes one step down; the figures it names have their own. */
public final class SizingOrigins {

    private static final String SUM_OF_INPUTS =
            "sum of the full inputs fed, reserves included (2018 International Fuel Gas Code, 402.2)";
    private static final String LONGEST_LENGTH =
            "longest length method (2018 International Fuel Gas Code, 402.4.1): every section takes the longest run";
    private static final String NEXT_LONGER =
            "the row is the same length or the next longer, never between two (2018 International Fuel Gas Code,"
                    + " Appendix A)";

    private final Review review;
    private final Piping piping;

    public SizingOrigins(Review review) {
        this.review = review;
        this.piping = review.piping();
    }

    /** The origin of the connected load: every input and reserve. */
    public Origin connectedLoad() {
        List<Origin> inputs = new ArrayList<>();
        for (var a : review.plan().appliances()) {
            inputs.add(Origin.entered("input of " + a.id(), a.input().findText().orElse("unknown")));
        }
        for (int i = 0; i < piping.sectionCount(); i++) {
            if (review.isFutureOutlet(i)) {
                inputs.add(reserve(piping.section(i)));
            }
        }
        return Origin.derived(
                "connected load", Show.btuh(review.connectedLoad()), SUM_OF_INPUTS, Confidence.PRINT, inputs);
    }

    private static Origin reserve(Section s) {
        return Origin.entered("reserve of " + s.id(), s.reserve().findText().orElse("unknown"));
    }

    /** The origin of a stage's load: the sections that leave its regulator. */
    public Origin stageLoad(Stage stage) {
        List<Origin> inputs = new ArrayList<>();
        for (int s : stage.sections()) {
            if (piping.parent(s) < 0) {
                inputs.add(load(s, "load of section "));
            }
        }
        return Origin.derived(
                "load of " + stage.id(), text(piping.load(stage)), SUM_OF_INPUTS, Confidence.PRINT, withShare(inputs));
    }

    /** The origin of a section's load: the appliance, regulator or reserve at its end, or the sections that leave it. */
    public Origin sectionLoad(int section) {
        List<Origin> inputs = new ArrayList<>();
        piping.children(section).forEach(c -> inputs.add(load(c, "load of section ")));
        piping.findOutlet(section).ifPresent(o -> inputs.add(hanging(o)));
        return Origin.derived(
                "load of " + piping.section(section).id(),
                text(piping.load(section)),
                SUM_OF_INPUTS,
                Confidence.PRINT,
                withShare(inputs));
    }

    private List<Origin> withShare(List<Origin> inputs) {
        review.plan()
                .diversity()
                .filter(d -> d.reason().isKnown() && d.share().isKnown())
                .ifPresent(d -> inputs.add(Origin.entered(
                        "share of the load, because " + d.reason().findText().orElse(""),
                        d.share().findText().orElse(""))));
        return inputs;
    }

    private Origin hanging(Outlet o) {
        return switch (o.kind()) {
            case APPLIANCE ->
                Origin.entered(
                        "input of " + o.id(),
                        review.plan()
                                .appliances()
                                .get(o.item())
                                .input()
                                .findText()
                                .orElse("unknown"));
            case REGULATOR ->
                Origin.derived(
                        "load behind " + o.id(),
                        text(piping.load(piping.stages().get(o.item()))),
                        "load of that regulator's own stage",
                        Confidence.PRINT,
                        List.of());
            case CAPPED, OPEN -> reserve(piping.section(o.item()));
        };
    }

    private Origin load(int section, String what) {
        return Origin.derived(
                what + piping.section(section).id(),
                text(piping.load(section)),
                SUM_OF_INPUTS,
                Confidence.PRINT,
                List.of());
    }

    private static String text(longrun.piping.Load load) {
        return load.whole().map(Show::btuh).orElse("unknown");
    }

    /** The origin of the longest run: every section of it as measured, and what the fittings add. */
    public Origin longestRun(int stage) {
        StageSize size = review.sizing().stage(stage);
        List<Origin> inputs = measuredParts(size);
        for (AllowanceItem item : review.sizing().allowanceItems(stage)) {
            inputs.add(Origin.derived(
                    item.what(),
                    Show.decimals(item.length().feet(), 2) + " ft",
                    item.how(),
                    item.confidence(),
                    List.of()));
        }
        return Origin.derived(
                "longest run, to " + size.longestRunTo().map(Outlet::id).orElse("nothing"),
                Show.feet(size.longestRun().orElse(Length.ZERO)),
                LONGEST_LENGTH,
                Confidence.PRINT,
                inputs);
    }

    /** The origin of the longest run without the parts that are counted although nobody has entered or seen them. */
    public Origin longestRunWithoutAssumed(int stage) {
        Sizing without = review.sizing().withoutAssumedParts().orElseThrow();
        StageSize size = without.stage(stage);
        List<Origin> inputs = measuredParts(size);
        for (AllowanceItem item : without.allowanceItems(stage)) {
            inputs.add(Origin.derived(
                    item.what(),
                    Show.decimals(item.length().feet(), 2) + " ft",
                    item.how(),
                    item.confidence(),
                    List.of()));
        }
        return Origin.derived(
                "longest run without parts not entered or not seen, to "
                        + size.longestRunTo().map(Outlet::id).orElse("nothing"),
                Show.feet(size.longestRun().orElse(Length.ZERO)),
                LONGEST_LENGTH,
                Confidence.PRINT,
                inputs);
    }

    /** The origin of the longest run's measured length. */
    public Origin measuredRun(int stage) {
        StageSize size = review.sizing().stage(stage);
        return Origin.derived(
                "longest run, measured",
                Show.feet(size.measured().orElse(Length.ZERO)),
                "sum of the sections' legs from the regulator's outlet to where the connector begins",
                Confidence.PRINT,
                measuredParts(size));
    }

    /** The origin of what fittings add to the longest run. */
    public Origin allowance(int stage) {
        List<Origin> inputs = new ArrayList<>();
        for (AllowanceItem item : review.sizing().allowanceItems(stage)) {
            inputs.add(Origin.derived(
                    item.what(),
                    Show.decimals(item.length().feet(), 2) + " ft",
                    item.how(),
                    item.confidence(),
                    List.of()));
        }
        return Origin.derived(
                "added for fittings",
                Show.feet(review.sizing().stage(stage).allowance().orElse(Length.ZERO)),
                "2018 International Residential Code, Appendix A, Table A.2.2",
                Confidence.PRINT,
                inputs);
    }

    private List<Origin> measuredParts(StageSize size) {
        List<Origin> inputs = new ArrayList<>();
        int s = size.longestRunTo().map(Outlet::section).orElse(-1);
        while (s >= 0) {
            inputs.add(0, measured(s));
            s = piping.parent(s);
        }
        return inputs;
    }

    /** The origin of a section's own length. */
    public Origin measured(int section) {
        Section s = piping.section(section);
        String legs = s.legs().findText().orElse("unknown");
        return Origin.derived(
                s.id() + ", measured",
                Show.feet(piping.measured(section).orElse(Length.ZERO)),
                "sum of its legs",
                Confidence.PRINT,
                List.of(Origin.entered("legs of " + s.id(), legs)));
    }

    /** The origin of the table row by which a section is sized. */
    public Origin row(int section) {
        SectionSize size = review.sizing().section(section);
        StageSize stage = review.sizing().stage(piping.stageIndex(section));
        return Origin.derived(
                "row of " + piping.section(section).id(),
                Show.rowFeet(size.rowRun().orElse(Length.ZERO)),
                NEXT_LONGER,
                Confidence.PRINT,
                List.of(Origin.derived(
                        "longest run",
                        Show.feet(stage.longestRun().orElse(Length.ZERO)),
                        LONGEST_LENGTH,
                        Confidence.PRINT,
                        List.of())));
    }

    /** The origin of the capacity of a section's size: the cell of the table. */
    public Origin capacity(int section) {
        SectionSize size = review.sizing().section(section);
        CapacityTable table = size.table().orElseThrow();
        String name = SizeNames.shown(table.material(), size.size().orElseThrow());
        String cell = "table " + table.id() + " (" + table.source() + "), row "
                + Show.rowFeet(size.rowRun().orElseThrow()) + ", size " + name;
        List<Origin> inputs = new ArrayList<>();
        inputs.add(Origin.derived(
                "row", Show.rowFeet(size.rowRun().orElseThrow()), NEXT_LONGER, Confidence.PRINT, List.of()));
        size.bore()
                .ifPresent(b -> inputs.add(Origin.derived(
                        "bore of " + name,
                        Show.plain(b.inches()) + " in.",
                        "column head of the table",
                        Confidence.PRINT,
                        List.of())));
        piping.section(section)
                .installedSize()
                .findText()
                .ifPresent(t -> inputs.add(Origin.entered("size in place", t)));
        piping.section(section).chosenSize().findText().ifPresent(t -> inputs.add(Origin.entered("size chosen", t)));
        return Origin.derived(
                "what " + name + " carries",
                Show.btuh(size.capacity().orElse(HeatRate.ZERO)),
                cell,
                size.confidence().orElseThrow(),
                inputs);
    }

    /** The origin of the share of its capacity that a section's load uses. */
    public Origin shareUsed(int section) {
        SectionSize size = review.sizing().section(section);
        return Origin.derived(
                "share used by " + piping.section(section).id(),
                Show.decimals(size.shareUsed().orElse(0) * 100, 1) + " %",
                "load divided by capacity",
                Confidence.PRINT,
                List.of(load(section, "load of section "), capacity(section)));
    }
}
