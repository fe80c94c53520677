package longrun.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import longrun.finding.AskWhom;
import longrun.finding.Citation;
import longrun.finding.Finding;
import longrun.finding.FindingBuilder;
import longrun.finding.RuleName;
import longrun.finding.Severity;
import longrun.piping.Outlet;
import longrun.piping.Piping;
import longrun.plan.Appliance;
import longrun.plan.SizeNames;
import longrun.plan.choice.PartKind;
import longrun.quantity.Length;
import longrun.quantity.Show;

/**
 * Asks for a hookup that is not entered, and for one that is taken as usual and seen by nobody; says what is counted for
 * it until it is.
 */
public final class AssumedParts {

    private final Sizing sizing;
    private final Piping piping;

    private AssumedParts(Sizing sizing) {
        this.sizing = sizing;
        this.piping = sizing.piping();
    }

    /** A question at each appliance whose hookup is not entered or not seen, in the plan's order. */
    static List<Finding> of(Sizing sizing) {
        AssumedParts all = new AssumedParts(sizing);
        List<Finding> out = new ArrayList<>();
        List<Appliance> appliances = sizing.piping().plan().appliances();
        for (int a = 0; a < appliances.size(); a++) {
            if (appliances.get(a).connection().isUnknown()) {
                out.add(all.question(appliances.get(a), a));
            } else if (appliances.get(a).hasPartsNotSeen()) {
                out.add(all.confirm(appliances.get(a), a));
            }
        }
        return out;
    }

    /** What is there is asked before anything about it is: no answer about a part counts while nobody has seen the part. */
    private Finding confirm(Appliance appliance, int index) {
        List<Appliance.Part> parts = appliance.connection().findValue().orElseThrow();
        String row = parts.stream()
                .filter(p -> !p.isSeen())
                .map(p -> p.part()
                        .findValue()
                        .map(k -> k.written().replace('-', ' '))
                        .orElse("a part without a kind"))
                .collect(Collectors.joining(", "));
        int first = 0;
        while (parts.get(first).isSeen()) {
            first++;
        }
        return FindingBuilder.finding(
                        RuleName.ENTRY_MISSING, Severity.NOTE, appliance.id(), Citation.fuelGasCode("409.5 and 408.4"))
                .foundNaming("at " + piping.names().called(appliance) + " these parts are assumed, not seen: " + row
                        + counted(appliance))
                .required("a look at each part, or what is there instead")
                .remedy("look at " + piping.names().called(appliance)
                        + ", then mark its parts as seen or enter what is there")
                .ask(
                        AskWhom.FITTER,
                        "Are these the parts fitted at " + piping.names().called(appliance)
                                + ", in order from the pipe: " + row + "?")
                .atEntry("/appliances/" + index + "/connection/" + first + "/seen");
    }

    /** What is counted for the parts that nobody has entered or seen, with both lengths where it changes one. */
    private String counted(Appliance appliance) {
        int section =
                piping.findSection(appliance.fedBy().findValue().orElse("")).orElse(-1);
        List<PartKind> assumed = section < 0 ? List.of() : sizing.assumedParts(section);
        return assumed.isEmpty()
                ? ""
                : "; " + words(assumed) + " counted, which the rules ask for"
                        + bothFigures(section).map(b -> ": " + b).orElse("");
    }

    private Finding question(Appliance appliance, int index) {
        String counted = counted(appliance);
        return FindingBuilder.finding(
                        RuleName.ENTRY_MISSING, Severity.NOTE, appliance.id(), Citation.fuelGasCode("409.5 and 408.4"))
                .foundNaming("the parts between the pipe and " + piping.names().called(appliance) + " are not entered"
                        + counted)
                .required("its parts in flow order, or none")
                .remedy("enter the parts, from the pipe to the appliance")
                .ask(
                        AskWhom.FITTER,
                        "Which parts are fitted at " + piping.names().called(appliance)
                                + ", in order from the pipe to the appliance:"
                                + " shutoff, sediment trap, union, connector?")
                .atEntry("/appliances/" + index + "/connection");
    }

    /** "a shutoff is", "a shutoff and a sediment trap are". */
    public static String words(List<PartKind> parts) {
        return parts.stream()
                        .map(p -> p == PartKind.SHUTOFF ? "a shutoff" : "a sediment trap")
                        .collect(Collectors.joining(" and "))
                + (parts.size() == 1 ? " is" : " are");
    }

    /** What the parts that nobody has entered change in a section's stage; empty where that is nothing. */
    private Optional<String> bothFigures(int section) {
        int stage = piping.stageIndex(section);
        Optional<Sizing> without = sizing.withoutAssumedParts();
        if (stage < 0 || without.isEmpty() || sizing.stage(stage).longestRun().isEmpty()) {
            return Optional.empty();
        }
        StageSize with = sizing.stage(stage);
        StageSize bare = without.get().stage(stage);
        if (with.longestRun().equals(bare.longestRun())) {
            return Optional.empty();
        }
        List<String> grown = new ArrayList<>();
        for (int s = section; s >= 0; s = piping.parent(s)) {
            Optional<String> here = shown(sizing.section(s));
            Optional<String> there = shown(without.get().section(s));
            if (!here.equals(there)) {
                grown.add(
                        0,
                        "section " + piping.section(s).id() + " is " + there.orElse("no size") + " without, "
                                + here.orElse("no size") + " with");
            }
        }
        return Optional.of("the longest run, to "
                + with.longestRunTo().map(Outlet::id).orElse("its end") + ", is "
                + Show.feet(with.longestRun().get()) + " with parts not entered" + orSeen() + ", "
                + Show.feet(bare.longestRun().orElse(Length.ZERO)) + " without"
                + (grown.isEmpty() ? "; no size on the way differs" : "; " + list(grown)));
    }

    private String orSeen() {
        return piping.plan().appliances().stream().anyMatch(Appliance::hasPartsNotSeen) ? " or not seen" : "";
    }

    private static String list(List<String> grown) {
        String first = String.join("; ", grown.subList(0, Math.min(3, grown.size())));
        return grown.size() > 3 ? first + "; and " + (grown.size() - 3) + " more" : first;
    }

    private static Optional<String> shown(SectionSize size) {
        return size.neededSize()
                .map(n -> SizeNames.shown(size.table().orElseThrow().material(), n));
    }
}
