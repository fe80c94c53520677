package longrun.sizing;

import java.util.ArrayList;
import java.util.List;
import longrun.capacity.CapacityTable;
import longrun.finding.AskWhom;
import longrun.finding.Citation;
import longrun.finding.Finding;
import longrun.finding.FindingBuilder;
import longrun.finding.RuleName;
import longrun.finding.Severity;
import longrun.origin.Confidence;
import longrun.piping.Piping;
import longrun.plan.FittingAllowance;
import longrun.plan.Section;
import longrun.plan.SizeNames;
import longrun.plan.choice.Material;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Show;

/** What the sizes show: too small, no size, a cell from memory, turns not described. */
public final class SizingFindings {

    private static final RuleName UNDERSIZED = new RuleName("section-undersized");
    private static final RuleName NO_SIZE = new RuleName("section-no-size");
    private static final RuleName FROM_MEMORY = new RuleName("size-from-memory");

    private final Sizing sizing;
    private final Piping piping;
    private final List<Finding> out = new ArrayList<>();

    private SizingFindings(Sizing sizing) {
        this.sizing = sizing;
        this.piping = sizing.piping();
    }

    /** Every finding of the sizes, in the plan's order. */
    public static List<Finding> of(Sizing sizing) {
        SizingFindings f = new SizingFindings(sizing);
        f.csstSeries();
        for (int i = 0; i < f.piping.sectionCount(); i++) {
            f.section(i);
        }
        f.out.addAll(AssumedParts.of(sizing));
        return List.copyOf(f.out);
    }

    private void section(int i) {
        SectionSize size = sizing.section(i);
        switch (size.status()) {
            case UNDERSIZED -> undersized(i, size);
            case NO_SIZE -> noSize(i, size);
            case SIZED, ADEQUATE, UNKNOWN -> {}
        }
        if (size.confidence().filter(c -> c == Confidence.MEMORY).isPresent()) {
            fromMemory(i, size);
        }
        undirected(i);
    }

    private void undersized(int i, SectionSize size) {
        Section s = piping.section(i);
        CapacityTable table = size.table().orElseThrow();
        boolean installed = s.installedSize().isKnown();
        String carries = size.capacity().map(c -> "carries " + Show.btuh(c)).orElse("has no capacity in the table");
        String needed = size.neededSize()
                .map(n -> SizeNames.shown(table.material(), n) + " or larger")
                .orElse("more than the largest size that can be had");
        out.add(FindingBuilder.finding(
                        UNDERSIZED,
                        Severity.MUST_FIX,
                        s.id(),
                        new Citation(
                                table.source(),
                                table.edition(),
                                size.confidence().orElse(Confidence.PRINT)))
                .found(shown(size) + (installed ? " in place " : " chosen ") + carries + " at the row of "
                        + Show.rowFeet(size.rowRun().orElseThrow()) + "; the load is "
                        + Show.btuh(size.load().orElseThrow()))
                .required(needed)
                .remedy(installed ? "lay a larger pipe, or feed less from it" : "choose " + needed)
                .atEntry("/sections/" + i + (installed ? "/installedSize" : "/chosenSize")));
    }

    private void noSize(int i, SectionSize size) {
        Section s = piping.section(i);
        String at = "/sections/" + i;
        Material material = s.material().findValue().orElseThrow();
        FindingBuilder f = FindingBuilder.finding(
                NO_SIZE, Severity.MUST_FIX, s.id(), Citation.fuelGasCode("402.4.1, longest length method"));
        String field = switch (size.noSize().orElseThrow()) {
            case RUN_LONGER_THAN_TABLE -> {
                Length run = sizing.stage(piping.stageIndex(i)).longestRun().orElse(Length.ZERO);
                CapacityTable t = size.table().orElseThrow();
                f.found("the longest run is " + Show.feet(run))
                        .required("at most " + Show.rowFeet(t.run(t.rowCount() - 1)) + ", the last row of the table")
                        .remedy("put a regulator nearer, use a higher pressure, or ask for an engineered size");
                yield at + "/legs";
            }
            case LOAD_OVER_LARGEST -> {
                boolean limited = piping.plan().availableSizes().containsKey(material);
                f.found("the load is " + Show.btuh(size.load().orElse(HeatRate.ZERO))
                                + ", more than the largest size " + (limited ? "that can be had " : "")
                                + "carries")
                        .required("a size whose capacity is at least the load")
                        .remedy(
                                limited
                                        ? "name a larger size among those that can be had, or split the load"
                                        : "split the load, use another material, or a higher pressure");
                yield limited ? "/availableSizes/" + material.written() : at + "/material";
            }
            case NO_TABLE -> {
                f.found("there is no table of " + material.label() + " at " + stagePressures(i))
                        .required("the maker's table for this pressure and drop")
                        .remedy("load the maker's table, or choose a pressure and drop that has one")
                        .ask(
                                AskWhom.FITTER,
                                "Which maker's table sizes " + material.label() + " at " + stagePressures(i) + "?");
                yield "/tubingTables";
            }
            case MEMORY_TABLE -> {
                f.found("the table of " + material.label() + " at " + stagePressures(i)
                                + " is held from memory throughout")
                        .required("the maker's table")
                        .remedy("load the maker's table; or turn tables from memory on, and treat every size as"
                                + " unverified");
                yield "/useMemoryTables";
            }
            case OWN_TABLE_DOES_NOT_FIT -> {
                f.found("the table \"" + s.table().findValue().orElse("") + "\" is not for " + material.label() + " at "
                                + stagePressures(i))
                        .required("a table for this material, inlet pressure and drop")
                        .remedy("name another table, or mend its material, inlet or drop");
                yield at + "/table";
            }
        };
        out.add(f.atEntry(field));
    }

    private String stagePressures(int i) {
        var r = piping.findStage(i).orElseThrow().regulator();
        return Show.pressure(r.outlet().findValue().orElseThrow()) + " with a drop of "
                + Show.pressure(r.allowedDrop().findValue().orElseThrow());
    }

    private void fromMemory(int i, SectionSize size) {
        CapacityTable table = size.table().orElseThrow();
        out.add(FindingBuilder.finding(
                        FROM_MEMORY,
                        Severity.CAUTION,
                        piping.section(i).id(),
                        new Citation(table.source(), table.edition(), Confidence.MEMORY))
                .found(shown(size) + " rests on the row of "
                        + Show.rowFeet(size.rowRun().orElseThrow())
                        + ", which is held from memory: treat as binding until the authority says otherwise")
                .required("the same row in the print or in the maker's table")
                .remedy("compare the row with the print, or load the maker's table")
                .ask(
                        AskWhom.FITTER,
                        "What does your table give for " + shown(size) + " at "
                                + Show.rowFeet(size.rowRun().orElseThrow()) + "?")
                .atEntry("/sections/" + i + "/table"));
    }

    private void undirected(int i) {
        if (!(sizing.allowance() instanceof FittingAllowance.Counted)
                || piping.turns(i).undirected().equals(Length.ZERO)) {
            return;
        }
        out.add(FindingBuilder.finding(
                        RuleName.ENTRY_MISSING,
                        Severity.NOTE,
                        piping.section(i).id(),
                        new Citation("CSA B149.1, Annex B", "", Confidence.SECONDARY))
                .found("which way " + Show.feet(piping.turns(i).undirected())
                        + " of it turn is not described; a fifth of that is added for turns")
                .required("the way each leg goes, or the fittings on it")
                .remedy("enter legs with directions, such as up 4 ft, north 12 ft, or list the fittings")
                .atEntry("/sections/" + i + "/legs"));
    }

    private void csstSeries() {
        boolean csst = piping.plan().sections().stream()
                .anyMatch(s -> s.material().is(Material.CSST) && !s.table().isKnown());
        if (csst && !piping.plan().availableSizes().containsKey(Material.CSST)) {
            out.add(FindingBuilder.finding(RuleName.ENTRY_MISSING, Severity.NOTE, "plan", Citation.fuelGasCode("402.3"))
                    .found("the brand's series of CSST is not named; sizes are chosen over all EHD columns of the"
                            + " code's table, and no shop stocks them all")
                    .required("the EHD sizes of the brand that is used")
                    .remedy("name the sizes that can be had, or load the maker's table")
                    .ask(AskWhom.SUPPLIER, "Which brand of CSST, and which EHD sizes does it come in?")
                    .atEntry("/availableSizes/csst"));
        }
    }

    private static String shown(SectionSize size) {
        return SizeNames.shown(
                size.table().orElseThrow().material(), size.size().orElseThrow());
    }
}
