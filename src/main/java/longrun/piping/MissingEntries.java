package longrun.piping;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import longrun.finding.AskWhom;
import longrun.finding.Citation;
import longrun.finding.Finding;
import longrun.finding.FindingBuilder;
import longrun.finding.ListWords;
import longrun.finding.RuleName;
import longrun.finding.Severity;
import longrun.plan.Appliance;
import longrun.plan.Plan;
import longrun.plan.Regulator;
import longrun.plan.Section;
import longrun.quantity.Length;

/** What the pipes lack before they can be sized; each a question at the entry that answers it. */
public final class MissingEntries {

    private static final int NAMED = 3;

    private MissingEntries() {}

    /** Every missing entry, in the plan's order. */
    public static List<Finding> of(Piping piping) {
        Plan plan = piping.plan();
        List<Finding> out = new ArrayList<>();
        for (int i = 0; i < plan.regulators().size(); i++) {
            regulator(piping, i, out);
        }
        for (int i = 0; i < plan.sections().size(); i++) {
            section(piping, i, out);
        }
        assumed(plan, out);
        for (int i = 0; i < plan.appliances().size(); i++) {
            Appliance a = plan.appliances().get(i);
            appliance(a, piping.names().called(a), "/appliances/" + i, out);
        }
        plan.diversity()
                .filter(d -> d.share().isKnown() && !d.reason().is(r -> !r.isBlank()))
                .ifPresent(d -> out.add(question(
                                "plan",
                                "a share of the load is entered without its reason; the full load is used",
                                Citation.fuelGasCode("402.2"))
                        .required("a written reason, which is printed, or no share")
                        .remedy("write the reason, or leave the share out")
                        .atEntry("/diversity/reason")));
        return out;
    }

    private static void regulator(Piping piping, int i, List<Finding> out) {
        Regulator r = piping.plan().regulators().get(i);
        String at = "/regulators/" + i;
        if (!r.outlet().isKnown()) {
            out.add(question(r.id(), "the outlet pressure is not entered")
                    .required("the pressure it is set to, such as 11 in w.c. or 10 psi")
                    .remedy("read it off the regulator's tag")
                    .ask(AskWhom.SUPPLIER, "What outlet pressure is regulator " + r.id() + " set to?")
                    .atEntry(at + "/outlet"));
        }
        if (!r.allowedDrop().isKnown()) {
            out.add(question(r.id(), "the pressure drop its pipe is allowed is not entered")
                    .required("0.5 in w.c. after an 11 in w.c. regulator, 1 psi in a 2 psi or 10 psi line")
                    .remedy("enter the drop of the table that is to be used")
                    .ask(AskWhom.FITTER, "Which pressure drop is the pipe after " + r.id() + " sized for?")
                    .atEntry(at + "/allowedDrop"));
        }
        if (!r.fedBy().isKnown()) {
            out.add(question(r.id(), "what feeds the regulator is not entered")
                    .required("a section, or the tank")
                    .remedy("name the section that feeds it, or the tank")
                    .ask(AskWhom.OWNER, "What feeds regulator " + r.id() + ": a section, or the tank?")
                    .atEntry(at + "/fedBy"));
        }
        if (piping.stages().get(i).sections().isEmpty()) {
            out.add(question(r.id(), "no section leaves the regulator, so its load is not known")
                    .required("at least one section from it")
                    .remedy("enter the pipe that leaves it")
                    .ask(AskWhom.OWNER, "Which pipe leaves regulator " + r.id() + "?")
                    .atEntry("/sections"));
        }
    }

    private static void section(Piping piping, int i, List<Finding> out) {
        Section s = piping.section(i);
        String at = "/sections/" + i;
        if (!s.from().isKnown()) {
            out.add(question(
                            s.id(),
                            "where the section leaves is not entered: its load is counted nowhere, and every size"
                                    + " may still grow")
                    .required("a regulator or a section")
                    .remedy("name what it leaves")
                    .ask(AskWhom.OWNER, "What does section " + s.id() + " leave: a regulator, or another section?")
                    .atEntry(at + "/from"));
        }
        if (!s.material().isKnown()) {
            out.add(question(s.id(), "the material is not entered")
                    .required("steel, copper, CSST, or polyethylene pipe or tubing")
                    .remedy("enter the material")
                    .ask(AskWhom.FITTER, "What is section " + s.id() + " made of?")
                    .atEntry(at + "/material"));
        }
        if (piping.measured(i).isEmpty()) {
            out.add(question(s.id(), "the length is not entered")
                    .required("its legs, such as up 4 ft, north 12 ft")
                    .remedy("pace it and enter the legs")
                    .ask(AskWhom.OWNER, "How long is section " + s.id() + ", leg by leg?")
                    .atEntry(at + "/legs"));
        } else if (piping.measured(i).get().equals(Length.ZERO)) {
            out.add(question(s.id(), "the length is 0 ft, and no pipe is that short")
                    .required("the length as it is measured")
                    .remedy("pace it and enter what you measure; every foot counts in the longest run")
                    .ask(AskWhom.FITTER, "How long is section " + s.id() + "?")
                    .atEntry(at + "/legs"));
        }
        boolean end = piping.findOutlet(i)
                .filter(o -> o.kind() == Outlet.Kind.CAPPED || o.kind() == Outlet.Kind.OPEN)
                .isPresent();
        if (end && s.reserve().isUnknown()) {
            out.add(question(s.id(), "the section feeds nothing, and the load kept for its end is not entered")
                    .required("what it feeds, or the reserve of a future appliance, or none")
                    .remedy("let it feed an appliance, or enter a reserve in Btu/h or none")
                    .ask(AskWhom.OWNER, "What will section " + s.id() + " feed?")
                    .atEntry(at + "/reserve"));
        }
    }

    /** Sections that nobody has looked at are asked about once, at the first of them. */
    private static void assumed(Plan plan, List<Finding> out) {
        List<Integer> all = IntStream.range(0, plan.sections().size())
                .filter(i -> plan.sections().get(i).isAssumed())
                .boxed()
                .toList();
        if (all.isEmpty()) {
            return;
        }
        String who = sections(all.stream().map(i -> plan.sections().get(i).id()).toList());
        boolean one = all.size() == 1;
        out.add(question(
                        plan.sections().get(all.get(0)).id(),
                        who + (one ? " is" : " are") + " assumed, not seen: what is entered of " + (one ? "it" : "them")
                                + " is taken as usual, and every size that rests on it may change")
                .required("a look at the pipe, or what is there instead")
                .remedy("look at " + who + ", put right what differs and mark " + (one ? "it" : "each") + " as seen")
                .ask(AskWhom.FITTER, "Are material, place and length of " + who + " as entered?")
                .atEntry("/sections/" + all.get(0) + "/assumed"));
    }

    private static String sections(List<String> ids) {
        return (ids.size() == 1 ? "section " : "sections ") + ListWords.most(ids, NAMED);
    }

    private static void appliance(Appliance a, String called, String at, List<Finding> out) {
        if (!a.input().isKnown()) {
            out.add(question(a.id(), "the input is not entered", Citation.fuelGasCode("402.2"))
                    .required("INPUT of the rating plate, propane line, in Btu/h")
                    .remedy("read the rating plate")
                    .ask(AskWhom.RATING_PLATE, "What INPUT, Btu/h, does the plate of " + called + " give for propane?")
                    .atEntry(at + "/input"));
        }
        if (!a.fedBy().isKnown()) {
            out.add(question(
                            a.id(),
                            "the section that feeds the appliance is not entered: no pipe carries its load, and every"
                                    + " size may still grow")
                    .required("the section that feeds it")
                    .remedy("name the section that ends at it")
                    .ask(AskWhom.OWNER, "Which section feeds " + called + "?")
                    .atEntry(at + "/fedBy"));
        }
    }

    private static FindingBuilder question(String at, String found) {
        return question(at, found, Citation.commonPractice());
    }

    private static FindingBuilder question(String at, String found, Citation citation) {
        return FindingBuilder.finding(RuleName.ENTRY_MISSING, Severity.NOTE, at, citation)
                .found(found);
    }
}
