package longrun.plan.json;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import longrun.plan.Fact;
import longrun.plan.FittingAllowance;
import longrun.plan.Plan;
import longrun.plan.Tank;
import longrun.plan.Use;
import longrun.plan.choice.Material;
import longrun.quantity.Show;

/** Counts and amounts that can't be: as many values as are asked for, and nothing no house has. */
final class AmountCheck {

    private final Plan plan;
    private final BiConsumer<String, String> error;

    private AmountCheck(Plan plan, BiConsumer<String, String> error) {
        this.plan = plan;
        this.error = error;
    }

    static void check(Plan plan, BiConsumer<String, String> error) {
        AmountCheck check = new AmountCheck(plan, error);
        check.counts();
        check.amounts();
        check.limits();
    }

    /** Far beyond what is usual, which a finding asks about, lies what can't be at all. */
    private void limits() {
        plan.site().ifPresent(s -> {
            limit(s.people(), 1000, "/site/people", "people in one house");
            limit(s.leadDays(), 366, "/site/leadDays", "days from call to truck");
        });
        tanks(plan.tank(), "/tank");
        tanks(plan.tanks(), "/tanks");
        plan.use().ifPresent(use -> {
            limit(use.pricePerGal(), 1_000_000, "/use/pricePerGal", "as the price of a gallon");
            limit(use.pricePerKwh(), 1_000_000, "/use/pricePerKwh", "as the price of a kilowatt-hour");
            for (int i = 0; i < use.others().size(); i++) {
                limit(use.others().get(i).hoursPerDay(), 24, "/use/others/" + i + "/hoursPerDay", "hours in a day");
            }
            use.hotWater()
                    .flatMap(Use.HotWater::storage)
                    .ifPresent(s -> limit(s.cop(), 20, "/use/hotWater/storage/cop", "as a coefficient of performance"));
        });
    }

    private void tanks(List<Tank> tanks, String pointer) {
        for (int i = 0; i < tanks.size(); i++) {
            limit(tanks.get(i).count(), 1000, pointer + "/" + i + "/count", "tanks alike");
        }
    }

    private void limit(Fact<Double> fact, double greatest, String pointer, String what) {
        fact.findValue()
                .filter(v -> v > greatest)
                .ifPresent(v -> error.accept(
                        pointer,
                        // as entered: 24.1 is not 24
                        BigDecimal.valueOf(v).stripTrailingZeros().toPlainString()
                                + " is more than can be: write up to " + Show.whole(greatest) + " " + what
                                + ", or look for a key too many"));
    }

    private void counts() {
        plan.site().ifPresent(site -> {
            if (site.monthlyMeanTemp().is(t -> t.size() != 12)) {
                error.accept("/site/monthlyMeanTemp", "write twelve temperatures, January first");
            }
            site.coldWater().ifPresent(c -> oneOrTwelve(c.temp(), "/site/coldWater/temp"));
        });
        plan.use()
                .flatMap(Use::hotWater)
                .flatMap(Use.HotWater::storage)
                .ifPresent(s -> oneOrTwelve(s.roomTemp(), "/use/hotWater/storage/roomTemp"));
        plan.use().ifPresent(use -> {
            for (int i = 0; i < use.others().size(); i++) {
                if (use.others().get(i).months().is(m -> m.stream().anyMatch(AmountCheck::noMonth))) {
                    error.accept("/use/others/" + i + "/months", "write months as whole numbers from 1 to 12");
                }
            }
        });
    }

    private static boolean noMonth(double month) {
        return month < 1 || month > 12 || month != Math.rint(month);
    }

    private void oneOrTwelve(Fact<? extends List<?>> values, String pointer) {
        if (values instanceof Fact.Known<? extends List<?>> known
                && known.value().size() != 1
                && known.value().size() != 12) {
            error.accept(pointer, "write one temperature, or twelve, January first");
        }
    }

    private void amounts() {
        for (int i = 0; i < plan.appliances().size(); i++) {
            if (plan.appliances().get(i).input().is(h -> h.btuh() <= 0)) {
                error.accept(
                        "/appliances/" + i + "/input",
                        "an input of zero fires nothing: write the INPUT of the rating plate, propane line");
            }
        }
        plan.diversity().ifPresent(d -> {
            if (d.share().is(s -> s.fraction() <= 0 || s.fraction() > 1)) {
                error.accept("/diversity/share", "write a share above 0 and up to 100 %");
            }
        });
        if (plan.fittingAllowance()
                .is(a -> a instanceof FittingAllowance.Share s && s.share().fraction() > 3)) {
            error.accept(
                    "/fittingAllowance", "more than 300 % for fittings: write none, counted, or a share such as 20 %");
        }
        for (Map.Entry<Material, List<String>> e : plan.availableSizes().entrySet()) {
            if (e.getValue().isEmpty()) {
                error.accept(
                        "/availableSizes/" + e.getKey().written(),
                        "an empty list leaves no size to choose: name the sizes, or leave the entry out");
            }
        }
    }
}
