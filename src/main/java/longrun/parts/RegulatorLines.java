package longrun.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.piping.Load;
import longrun.piping.Piping;
import longrun.plan.Plan;
import longrun.plan.Regulator;
import longrun.plan.Site;
import longrun.plan.choice.RegulatorKind;
import longrun.plan.choice.RegulatorVent;
import longrun.quantity.Show;

/** The regulators with what stands beside them, and the building's shutoff. */
final class RegulatorLines {

    private static final PartGroup GROUP = PartGroup.REGULATORS;

    private RegulatorLines() {}

    static List<PartLine> of(Bought bought) {
        Piping piping = bought.piping();
        Plan plan = piping.plan();
        List<PartLine> out = new ArrayList<>();
        Tally beside = new Tally(GROUP);
        for (int i = 0; i < plan.regulators().size(); i++) {
            Regulator r = plan.regulators().get(i);
            out.add(regulator(r, piping.load(piping.stages().get(i))));
            beside(r, beside);
            if (r.vent().is(RegulatorVent.PIPED)) {
                out.add(PartLine.uncounted(
                        GROUP,
                        "Vent pipe to the outdoors",
                        "",
                        List.of(r.id()),
                        r.id() + ": its length is not in a plan"));
            }
        }
        out.addAll(beside.lines());
        if (piping.sectionCount() > 0) {
            out.add(mainShutoff(plan));
        }
        return out;
    }

    private static PartLine regulator(Regulator r, Load load) {
        String kind = r.kind().findValue().map(RegulatorKind::label).orElse("regulator, its kind not entered");
        List<String> said = new ArrayList<>();
        said.add(load.complete() ? "must pass " + Show.btuh(load.known()) : "its load is not known whole");
        r.capacity().findValue().ifPresent(c -> said.add("rated " + Show.btuh(c.btuh()) + " as entered"));
        return PartLine.pieces(
                GROUP,
                kind.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + kind.substring(1),
                r.outlet().findValue().map(p -> "set to " + Show.pressure(p)).orElse("setting not entered"),
                1,
                List.of(r.id()),
                r.id() + ": " + String.join("; ", said));
    }

    private static void beside(Regulator r, Tally tally) {
        List<String> where = List.of(r.id());
        String basis = "as entered at the regulator";
        if (r.shutoffBefore().is(true)) {
            tally.add("Shutoff valve before a regulator", "", 1, r.id(), where, basis);
        }
        int tees = (r.teeBefore().is(true) ? 1 : 0) + (r.teeAfter().is(true) ? 1 : 0);
        tally.add("Tee for a gauge, with its plug", "", tees, r.id(), where, basis);
        if (r.unionWithin().isKnown()) {
            tally.add("Union", "", 1, r.id(), where, basis);
        }
        if (r.vent().is(RegulatorVent.LIMITER)) {
            tally.add("Vent limiter", "", 1, r.id(), where, basis);
        }
    }

    private static PartLine mainShutoff(Plan plan) {
        Optional<Site.MainShutoff> main = plan.site().flatMap(Site::mainShutoff);
        return main.isPresent()
                        && (main.get().outdoors().isKnown()
                                || main.get().reachable().isKnown())
                ? PartLine.pieces(GROUP, "Main shutoff of the building", "", 1, List.of(), "as entered for the site")
                : PartLine.uncounted(
                        GROUP, "Main shutoff of the building", "", List.of(), "not entered: the rules ask for one");
    }
}
