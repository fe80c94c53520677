package longrun.pressure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import longrun.capacity.CapacityTable;
import longrun.capacity.FittingLengths;
import longrun.capacity.TableLength;
import longrun.origin.Confidence;
import longrun.origin.Origin;
import longrun.piping.Piping;
import longrun.plan.SizeNames;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.sizing.SectionSize;

/** Where the figures of a section are from, one level deep. Empty figures have the value "not known". */
public final class SectionOrigins {

    private static final String EQUATION =
            "drop by the code's equation in flow form, %s pressure (2018 International Fuel Gas Code 402.4)";

    private final Pressures pressures;
    private final Piping piping;
    private final RegulatorOrigins regulators;

    public SectionOrigins(Pressures pressures) {
        this.pressures = pressures;
        this.piping = pressures.sizing().piping();
        this.regulators = new RegulatorOrigins(pressures);
    }

    /** The drop of a section. */
    public Origin drop(int section) {
        SectionSize size = pressures.sizing().section(section);
        SectionFlow flow = pressures.flow(section);
        List<Origin> inputs = new ArrayList<>(List.of(load(section), measured(section), counted(section)));
        String how;
        Confidence confidence = Confidence.COMPUTED;
        if (flow.hasBore()) {
            how = String.format(Locale.ROOT, EQUATION, isHigh(section) ? "high" : "low");
            inputs.add(bore(size, flow));
            inputs.add(regulators.setting(piping.stageIndex(section)));
        } else if (size.used().isPresent()) {
            CapacityTable table = size.table().orElseThrow();
            how = "drop of its table times the section's length over the length at which the table carries this load;"
                    + " log-log between rows";
            inputs.add(tableLength(section, table, size));
            confidence = size.confidence().orElse(Confidence.COMPUTED);
        } else {
            how = "no size, so no drop";
        }
        return Origin.derived(
                "drop of section " + piping.section(section).id(),
                Words.inWc(pressures.section(section).drop()),
                how,
                confidence,
                inputs);
    }

    private boolean isHigh(int section) {
        return piping.findStage(section)
                .flatMap(s -> s.regulator().outlet().findValue())
                .filter(p -> p.psi() >= 1.5)
                .isPresent();
    }

    private Origin load(int section) {
        Optional<HeatRate> load = piping.load(section).whole();
        return Origin.derived(
                "load of section " + piping.section(section).id(),
                Words.btuh(load),
                "sum of the inputs it feeds (2018 International Fuel Gas Code 402.2)",
                Confidence.PRINT,
                List.of());
    }

    private Origin measured(int section) {
        return Origin.entered(
                "measured length",
                piping.measured(section).map(l -> Words.feet(l)).orElse("not known"));
    }

    private Origin counted(int section) {
        return Origin.derived(
                "its own counted fittings",
                pressures.sizing().counted(section).map(l -> Words.feet(l)).orElse("not known"),
                FittingLengths.SOURCE + "; corrugated tubing by the footnote of its table",
                Confidence.PRINT,
                List.of());
    }

    private static Origin bore(SectionSize size, SectionFlow flow) {
        CapacityTable table = size.table().orElseThrow();
        return Origin.derived(
                "bore of " + SizeNames.shown(table.material(), size.size().orElseThrow()),
                Words.number(flow.boreIn(), 3) + " in.",
                "inside diameter in the head of " + table.title() + ", " + table.source(),
                Confidence.PRINT,
                List.of());
    }

    private Origin tableLength(int section, CapacityTable table, SectionSize size) {
        int column = size.used().orElseThrow();
        Optional<HeatRate> load = piping.load(section).whole();
        Optional<Length> length = load.flatMap(l -> TableLength.find(table, column, l));
        return Origin.derived(
                "length at which "
                        + SizeNames.shown(table.material(), table.sizes().get(column)) + " carries this load",
                length.map(l -> Words.feet(l)).orElse("not known: above the table's first row"),
                table.source() + ", column " + table.sizes().get(column),
                size.confidence().orElse(Confidence.COMPUTED),
                List.of());
    }

    /** What a section loses by rising. */
    public Origin staticHead(int section) {
        return Origin.derived(
                "static of section " + piping.section(section).id(),
                Words.inWc(pressures.section(section).staticLoss()),
                "0.0073 in. w.c. a foot of rise, propane against air",
                Confidence.MEMORY,
                List.of(measured(section)));
    }

    /** A section's gas speed at its end. */
    public Origin velocity(int section) {
        OptionalDouble speed = pressures.section(section).velocityFtPerS();
        return Origin.derived(
                "velocity in section " + piping.section(section).id(),
                speed.isPresent() ? Words.number(speed.getAsDouble(), 1) + " ft/s" : "not known",
                "load / 2,488 Btu/ft3 at the pressure of its end, over the bore",
                Confidence.COMPUTED,
                List.of(
                        load(section),
                        FiguredElsewhere.inWc(
                                "pressure at its end",
                                pressures.section(section).end())));
    }

    /** A section's inside volume. */
    public Origin insideVolume(int section) {
        OptionalDouble volume = pressures.section(section).insideFt3();
        return Origin.derived(
                "inside volume of section " + piping.section(section).id(),
                volume.isPresent() ? Words.number(volume.getAsDouble(), 4) + " ft3" : "not known",
                "area of the bore times measured length",
                Confidence.COMPUTED,
                List.of(measured(section)));
    }
}
