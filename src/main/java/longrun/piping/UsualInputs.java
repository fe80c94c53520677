package longrun.piping;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.finding.AskWhom;
import longrun.finding.Citation;
import longrun.finding.Finding;
import longrun.finding.FindingBuilder;
import longrun.finding.RuleName;
import longrun.finding.Severity;
import longrun.origin.Confidence;
import longrun.origin.DataFile;
import longrun.origin.DataRow;
import longrun.plan.Appliance;
import longrun.plan.ApplianceNames;
import longrun.plan.Plan;
import longrun.plan.choice.ApplianceKind;
import longrun.quantity.HeatRate;
import longrun.quantity.Show;

/**
 * Asks again where an input is far from what its kind of appliance usually has: a zero too many, or the natural gas
 * line of the plate. Usual is half to twice the row of 2018 IFGC Table 402.2, held from memory; an on-demand water heater
 * 30,000 to 250,000 Btu/h, memory. Kinds without a row are asked
 * about only where the input is less than a pilot light burns.
 */
public final class UsualInputs {

    private static final Map<ApplianceKind, Range> RANGES = ranges();

    /** A pilot light burns about so much, Btu/h; held from memory. */
    private static final double LEAST_OF_ANY = 1_000;

    /**
     * What a kind usually has.
     *
     * @param least the least input that is usual
     * @param greatest the greatest
     */
    public record Range(HeatRate least, HeatRate greatest, Confidence confidence) {

        private Range with(double row, Confidence held) {
            Confidence weaker = held == Confidence.MEMORY ? held : confidence;
            return of(Math.min(least.btuh(), row / 2), Math.max(greatest.btuh(), row * 2), weaker);
        }

        private static Range of(double leastBtuh, double greatestBtuh, Confidence confidence) {
            return new Range(HeatRate.ofBtuh(leastBtuh), HeatRate.ofBtuh(greatestBtuh), confidence);
        }
    }

    private UsualInputs() {}

    /** What a kind usually has; empty where nothing is known of it. */
    public static Optional<Range> find(ApplianceKind kind) {
        return Optional.ofNullable(RANGES.get(kind));
    }

    /** A question at each input that is outside its kind's range, in the plan's order. */
    public static List<Finding> of(Plan plan) {
        ApplianceNames names = ApplianceNames.of(plan);
        List<Finding> out = new ArrayList<>();
        for (int i = 0; i < plan.appliances().size(); i++) {
            Appliance a = plan.appliances().get(i);
            Optional<Range> usual = a.kind().findValue().flatMap(UsualInputs::find);
            String field = "/appliances/" + i + "/input";
            if (usual.isPresent() && a.input().is(h -> isFar(h, usual.get()))) {
                out.add(question(a, names.called(a), usual.get(), field));
            } else if (usual.isEmpty() && a.input().is(h -> h.btuh() > 0 && h.btuh() < LEAST_OF_ANY)) {
                out.add(thousands(a, names.called(a), field));
            }
        }
        return out;
    }

    private static boolean isFar(HeatRate input, Range usual) {
        return input.compareTo(usual.least()) < 0 || input.compareTo(usual.greatest()) > 0;
    }

    /** Of whatever kind: so little is a figure meant in thousands. */
    private static Finding thousands(Appliance a, String called, String field) {
        String input = a.input().findValue().map(h -> Show.btuh(h.btuh())).orElse("");
        String meant =
                a.input().findValue().map(h -> Show.btuh(1000 * h.btuh())).orElse("");
        return FindingBuilder.finding(RuleName.ENTRY_MISSING, Severity.NOTE, a.id(), Citation.commonPractice())
                .found("an input of " + input + " is less than a pilot light burns")
                .required("the INPUT of the rating plate, propane line, as it stands there")
                .remedy("look whether the figure is meant in thousands; where it is right, leave it")
                .ask(AskWhom.RATING_PLATE, "Is the INPUT of " + called + " " + input + " or " + meant + "?")
                .atEntry(field);
    }

    private static Finding question(Appliance a, String called, Range usual, String field) {
        String range = Show.whole(usual.least().btuh()) + " to " + Show.btuh(usual.greatest());
        String input = a.input().findValue().map(h -> Show.btuh(h.btuh())).orElse("");
        boolean onDemand = a.kind().is(ApplianceKind.ON_DEMAND_WATER_HEATER);
        return FindingBuilder.finding(
                        RuleName.ENTRY_MISSING,
                        Severity.NOTE,
                        a.id(),
                        new Citation(
                                onDemand ? "common practice" : "2018 International Fuel Gas Code, Table 402.2",
                                onDemand ? "" : "2018",
                                usual.confidence()))
                .found("an input of " + input + " is unusual: of its kind most have " + range)
                .required("the INPUT of the rating plate, propane line, as it stands there")
                .remedy("look for a zero too many or the natural gas line; where the figure is right, leave it")
                .ask(
                        AskWhom.RATING_PLATE,
                        "Is the INPUT of " + called + " really " + input + "? Of its kind most have " + range + ".")
                .atEntry(field);
    }

    private static Map<ApplianceKind, Range> ranges() {
        Map<ApplianceKind, Range> out = new EnumMap<>(ApplianceKind.class);
        out.put(ApplianceKind.ON_DEMAND_WATER_HEATER, Range.of(30_000, 250_000, Confidence.MEMORY));
        for (DataRow row : DataFile.read("appliances/typical-inputs.csv").rows()) {
            double btuh = row.positive("input_btu_h");
            Confidence held = row.choice("confidence", Confidence.class);
            out.merge(
                    row.choice("kind", ApplianceKind.class),
                    Range.of(btuh / 2, btuh * 2, held),
                    (known, one) -> known.with(btuh, held));
        }
        return out;
    }
}
