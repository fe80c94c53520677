package longrun.tank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import longrun.finding.AskWhom;
import longrun.finding.Citation;
import longrun.finding.Finding;
import longrun.finding.FindingBuilder;
import longrun.finding.RuleName;
import longrun.finding.Severity;
import longrun.origin.Confidence;
import longrun.origin.Figure;
import longrun.origin.Missing;
import longrun.plan.Plan;
import longrun.plan.Site;
import longrun.plan.choice.Placement;

/** Findings on the tank's vapour: its mean over the design day and its peaks. */
public final class TankFindings {

    static final RuleName MEAN = new RuleName("tank-vapour-mean");
    static final RuleName PEAK = new RuleName("tank-vapour-peak");
    private static final Citation VAPORISATION =
            new Citation("vaporisation rule of the LP-gas trade, D x L x K x M", "", Confidence.MEMORY);

    private TankFindings() {}

    /** Every finding of the tank's vapour; none for a plan that asks nothing of a tank. */
    public static List<Finding> of(Plan plan, TankReport report) {
        boolean asked = !plan.allTanks().isEmpty()
                || plan.use().isPresent()
                || plan.site().map(Site::winterDesignTemp).map(f -> f.isKnown()).orElse(false);
        if (!asked) {
            return List.of();
        }
        List<Finding> out = new ArrayList<>();
        mean(plan, report).ifPresent(out::add);
        peak(plan, report).ifPresent(out::add);
        boolean onlyDerived = report.derived()
                && buried(plan)
                && !report.supplier()
                && report.capacityAtDesignBtuh().isKnown();
        if (onlyDerived && out.stream().allMatch(f -> f.severity() == Severity.NOTE)) {
            out.removeIf(f -> f.name().equals(PEAK));
            out.add(derived(plan, report));
        }
        return List.copyOf(out);
    }

    private static Optional<Finding> mean(Plan plan, TankReport report) {
        Figure capacity = report.capacityAtDesignBtuh();
        Demand mean = last(report);
        if (capacity.isKnown() && capacity.number() <= 0) {
            return Optional.of(nothing(plan, report));
        }
        if (!mean.btuh().isKnown()) {
            return Optional.of(asks(
                    MEAN, "the mean of the design day is unknown", mean.btuh().missing(), AskWhom.OWNER));
        }
        return switch (mean.status()) {
            case SHORT -> Optional.of(over(plan, report, mean, MEAN, Severity.MUST_FIX));
            case DOUBTFUL ->
                Optional.of(over(
                        plan, report, mean, MEAN, report.plannedBtuh().isKnown() ? Severity.CAUTION : Severity.NOTE));
            default -> Optional.empty();
        };
    }

    private static Demand last(TankReport report) {
        return report.demands().get(report.demands().size() - 1);
    }

    private static Optional<Finding> peak(Plan plan, TankReport report) {
        if (!report.capacityAtDesignBtuh().isKnown()) {
            return Optional.of(asks(
                    PEAK,
                    "the vapour the tank gives is unknown",
                    report.capacityAtDesignBtuh().missing(),
                    AskWhom.SUPPLIER));
        }
        if (report.capacityAtDesignBtuh().number() <= 0) {
            return Optional.empty(); // said once, with the mean
        }
        Comparator<Demand> byLoad = Comparator.comparingDouble(d -> d.btuh().number());
        Optional<Demand> worst = report.demands().stream()
                .filter(d -> !d.mean() && d.btuh().isKnown())
                .max(byLoad);
        if (worst.filter(d -> d.status() == Demand.Status.SHORT).isPresent()) {
            return Optional.of(over(plan, report, worst.get(), PEAK, Severity.CAUTION));
        }
        Demand everything = report.demands().get(0);
        if (!everything.btuh().isKnown()) {
            return Optional.of(asks(
                    PEAK,
                    "what everything firing needs is unknown",
                    everything.btuh().missing(),
                    AskWhom.RATING_PLATE));
        }
        return worst.filter(d -> d.status() == Demand.Status.DOUBTFUL)
                .map(d -> over(plan, report, d, PEAK, Severity.NOTE));
    }

    private static Finding nothing(Plan plan, TankReport report) {
        double design = SpaceHeating.design(plan).value().orElse(VapourRule.LIQUID_F);
        double boils = report.boilingF().number();
        String what = design <= boils
                ? "at " + Figure.text(design, "degF") + " gas stops altogether: propane boils at "
                        + Figure.text(Math.rint(boils), "degF") + elevation(plan)
                : "at " + Figure.text(design, "degF") + " the tank cannot keep the "
                        + report.leastPsig().text() + " its regulator needs; it cannot feed a 10 psi regulator";
        FindingBuilder builder = FindingBuilder.finding(MEAN, Severity.MUST_FIX, "tank", VAPORISATION);
        String found = what + "; vapour 0 Btu/h";
        return (design <= boils ? builder.found(found) : builder.foundNaming(found))
                .required("vapour for the house at the winter design temperature, above 0 Btu/h")
                .remedy(
                        "Bury the tank, or ask the supplier for a vaporiser; check the winter design temperature entered.")
                .ask(AskWhom.SUPPLIER, "What does the supplier set where it gets this cold?")
                .atEntry("/site/winterDesignTemp");
    }

    private static String elevation(Plan plan) {
        return plan.site()
                .flatMap(site -> site.elevation().findText())
                .map(e -> " at " + e)
                .orElse(" at the sea's level; no elevation is entered");
    }

    private static Finding over(Plan plan, TankReport report, Demand d, RuleName rule, Severity severity) {
        boolean isShort = d.status() == Demand.Status.SHORT;
        String limit = (isShort ? report.capacityAtDesignBtuh() : report.plannedBtuh()).text();
        String found = d.name() + " needs " + d.btuh().text() + "; the tank gives "
                + (report.plannedBtuh().isKnown()
                        ? report.plannedBtuh().text() + kept(report)
                        : "an unknown amount" + kept(report))
                + " at the refill gauge and the design temperature, "
                + report.capacityAtDesignBtuh().text() + " at most for a short time"
                + (report.derived() && !report.supplier() ? ", derived" : "")
                + held(d)
                + taken(d);
        return FindingBuilder.finding(rule, severity, "tank", VAPORISATION)
                .foundNaming(found)
                .required(
                        isShort
                                ? "at most " + limit
                                : report.plannedBtuh().isKnown()
                                        ? "at most " + limit + kept(report)
                                        : "the supplier's own figure, in Btu/h: the table names no tank pressure")
                .remedy(
                        isShort
                                ? "Take a larger tank, or a second one alike, or refill at a higher gauge."
                                : "Ask the supplier which figure he counts on; enter it as the vapour capacity.")
                .ask(
                        AskWhom.SUPPLIER,
                        "How much vapour does the supplier count on from this tank at the refill gauge at the winter"
                                + " design temperature?")
                .atEntry(at(plan));
    }

    private static String at(Plan plan) {
        return plan.tank().isEmpty() ? "/tanks/0/vapourCapacity" : "/tank/vapourCapacity";
    }

    private static String kept(TankReport report) {
        return " while keeping " + report.keptPsig().text();
    }

    private static String taken(Demand d) {
        return d.takes().isEmpty() ? "" : "; " + String.join("; ", d.takes());
    }

    private static String held(Demand d) {
        if (d.withoutEnd()) {
            return "; by the liquid's heat balance it is held as long as there is liquid";
        }
        return d.lasts()
                .map(time -> "; held for " + time
                        + " from the refill gauge on, the level falling, from liquid as warm as the air or"
                        + " ground about it")
                .orElse("");
    }

    private static Finding asks(RuleName rule, String what, List<Missing> missing, AskWhom whom) {
        // Not the first in the list: another order of the lists asks the same.
        Missing first =
                missing.stream().min(Comparator.comparing(Missing::words)).orElse(new Missing("/tank", "the tank"));
        return FindingBuilder.finding(rule, Severity.NOTE, "tank", Citation.commonPractice())
                .found(what + ". Still to be entered: " + first.called())
                .required(first.words())
                .remedy("Enter " + first.called() + ".")
                .ask(whom, first.question())
                .atEntry(first.field());
    }

    private static boolean buried(Plan plan) {
        return plan.allTanks().stream().anyMatch(t -> t.placement().is(Placement.UNDERGROUND));
    }

    private static Finding derived(Plan plan, TankReport report) {
        return FindingBuilder.finding(
                        PEAK,
                        Severity.CAUTION,
                        "tank",
                        new Citation(
                                "heat conduction to a buried cylinder; soil's conductivity held from memory",
                                "",
                                Confidence.MEMORY))
                .foundNaming(
                        "the buried tank's " + report.capacityAtDesignBtuh().text()
                                + " is derived from heat through the soil; the rule for tanks above ground does not hold")
                .required("the supplier's own figure for this tank in this ground, in Btu/h")
                .remedy("Ask the supplier for his figure and enter it as the vapour capacity.")
                .ask(
                        AskWhom.SUPPLIER,
                        "How much vapour does the supplier count on from this buried tank at the refill gauge?")
                .atEntry(at(plan));
    }
}
