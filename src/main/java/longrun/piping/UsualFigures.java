package longrun.piping;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import longrun.finding.AskWhom;
import longrun.finding.Citation;
import longrun.finding.Finding;
import longrun.finding.FindingBuilder;
import longrun.finding.RuleName;
import longrun.finding.Severity;
import longrun.plan.Fact;
import longrun.plan.Plan;
import longrun.plan.Tank;
import longrun.plan.Use;
import longrun.quantity.Show;
import longrun.quantity.Volume;

/**
 * Asks again where a count or a yearly figure is far from what a house usually has: a key too many, or the wrong field.
 * What no house can have the reader of the plan refuses. The bounds are common practice, held from memory.
 */
public final class UsualFigures {

    private final Plan plan;
    private final List<Finding> out = new ArrayList<>();

    private UsualFigures(Plan plan) {
        this.plan = plan;
    }

    /** A question at each figure that is outside the usual, in the order of the plan. */
    public static List<Finding> of(Plan plan) {
        UsualFigures all = new UsualFigures(plan);
        all.site();
        all.tanks();
        plan.use().ifPresent(all::use);
        return List.copyOf(all.out);
    }

    private void site() {
        plan.site().ifPresent(s -> {
            count(s.people(), 1, 20, "site", "/site/people", "people in the house");
            count(s.leadDays(), 0, 30, "site", "/site/leadDays", "days from call to truck");
        });
    }

    private void tanks() {
        List<Tank> all = plan.allTanks();
        boolean alone = plan.tank().size() == 1;
        for (int i = 0; i < all.size(); i++) {
            String at = alone ? "/tank" : (plan.tank().isEmpty() ? "/tanks/" : "/tank/") + i;
            count(all.get(i).count(), 1, 6, "tank", at + "/count", "tanks alike");
            volume(all.get(i).waterCapacity(), 2000, "tank", at + "/waterCapacity", "of water capacity");
        }
    }

    private void use(Use use) {
        use.hotWater()
                .ifPresent(h ->
                        volume(h.dailyVolume(), 300, "hot-water", "/use/hotWater/dailyVolume", "of hot water a day"));
        for (int i = 0; i < use.others().size(); i++) {
            volume(
                    use.others().get(i).volumePerYear(),
                    3000,
                    "plan",
                    "/use/others/" + i + "/volumePerYear",
                    "a year for one appliance");
        }
        count(use.pricePerGal(), 0.5, 20, "plan", "/use/pricePerGal", "as the price of a gallon");
        count(use.pricePerKwh(), 0.02, 2, "plan", "/use/pricePerKwh", "as the price of a kilowatt-hour");
    }

    private void count(Fact<Double> fact, double least, double greatest, String at, String field, String what) {
        ask(fact, v -> v, least, greatest, v -> number(v), at, field, what);
    }

    private void volume(Fact<Volume> fact, double greatest, String at, String field, String what) {
        ask(fact, Volume::gallons, 0, greatest, v -> number(v) + " gal", at, field, what);
    }

    private <T> void ask(
            Fact<T> fact,
            Function<T, Double> number,
            double least,
            double greatest,
            Function<Double, String> words,
            String at,
            String field,
            String what) {
        fact.findValue().map(number).filter(v -> v < least || v > greatest).ifPresent(v -> {
            String range =
                    least > 0 ? words.apply(least) + " to " + words.apply(greatest) : "up to " + words.apply(greatest);
            String said = words.apply(v) + " " + what;
            out.add(FindingBuilder.finding(RuleName.ENTRY_MISSING, Severity.NOTE, at, Citation.commonPractice())
                    .found(said + " is unusual: most houses have " + range)
                    .required("the figure as it is")
                    .remedy("look for a key too many; where the figure is right, leave it")
                    .ask(AskWhom.OWNER, "Is it really " + said + "? Usual is " + range + ".")
                    .atEntry(field));
        });
    }

    private static String number(double v) {
        return v == Math.rint(v) ? Show.whole(v) : Show.plain(v);
    }
}
