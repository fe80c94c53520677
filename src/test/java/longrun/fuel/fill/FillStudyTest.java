package longrun.fuel.fill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.Samples;
import longrun.fuel.FuelYear;
import longrun.fuel.OtherYear;
import longrun.fuel.YearGallons;
import longrun.plan.Plan;
import longrun.review.Review;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import longrun.tank.Demand;
import org.junit.jupiter.api.Test;

/** How long a fill lasts, of an invented house: 500 gal at 62 %, a furnace, a range, a fireplace lit some hours a day. */
class FillStudyTest {

    private static final Reviewer REVIEWER = Reviewer.standard();

    static final String HOUSE = """
            { "format": "longrun-plan/1",
              "site": { "winterDesignTemp": "8 degF", "leadDays": 7,
                "monthlyMeanTemp": ["29 degF", "32 degF", "40 degF", "50 degF", "59 degF", "68 degF", "72 degF", "70 degF", "63 degF", "52 degF", "42 degF", "32 degF"] },
              "appliances": [
                { "id": "a", "kind": "furnace", "name": "furnace", "input": "60000 Btu/h" },
                { "id": "b", "kind": "range", "name": "range", "input": "65000 Btu/h" },
                { "id": "c", "kind": "fireplace", "name": "fireplace", "input": "30000 Btu/h" } ],
              "tank": { "kind": "asme", "waterCapacity": "500 gal", "orientation": "horizontal", "placement": "above-ground", "gauge": "62 %", "gaugeDate": "2026-10-01", "refillAt": "30 %" },
              "use": { "heating": [ { "appliance": "a", "designLoad": "38000 Btu/h", "efficiency": "95 %" } ],
                "others": [ { "appliance": "b", "volumePerYear": "35 gal" }, { "appliance": "c", "hoursPerDay": 2, "months": [11, 12, 1, 2] } ],
                "pricePerGal": 2.85 },
              "deliveries": [] }
            """;

    private static Review review(Plan plan) {
        return REVIEWER.review(plan, ReviewParts.ALL);
    }

    private static FillReport study(Plan plan) {
        Review r = review(plan);
        return FillStudy.of(plan, r.tank().orElseThrow(), r.fuel().orElseThrow());
    }

    private static Plan house(String piece, String other) {
        assertThat(HOUSE).contains(piece);
        return Samples.plan(HOUSE.replace(piece, other));
    }

    private static FillReport study(String piece, String other) {
        return study(house(piece, other));
    }

    private static Range days(FillReport r) {
        return r.ranges().orElseThrow().days().orElseThrow();
    }

    @Test
    void withoutTicketsEveryFigureIsTheWholeHousesToTheLastDigit() {
        Plan plan = Samples.plan(HOUSE);
        Review r = review(plan);
        FillReport fill = FillStudy.of(plan, r.tank().orElseThrow(), r.fuel().orElseThrow());
        assertThat(fill.fuel()).isSameAs(r.fuel().orElseThrow());
        assertThat(fill.tank()).isSameAs(r.tank().orElseThrow());
        assertThat(fill.byEntries().orElseThrow().daily())
                .isEqualTo(r.fuel().orElseThrow().dailyGal());
    }

    @Test
    void theMiddleIsThePlainAnswer() {
        FillReport fill = study(Samples.plan(HOUSE));
        Corners plain = new Corners(Samples.plan(HOUSE), fill.tank(), 1, fill.coldest(), fill.warmest());
        FillRanges middle = plain.ranges(List.of()).orElseThrow();
        long days = ChronoUnit.DAYS.between(
                LocalDate.of(2026, 10, 1), fill.fuel().nextRefill().orElseThrow());
        assertThat(middle.days().orElseThrow()).isEqualTo(new Range(days, days));
        assertThat(middle.coldest().low())
                .isEqualTo(fill.fuel().daysPerFill().coldestMonth().number());
        assertThat(middle.warmest().low())
                .isEqualTo(fill.fuel().daysPerFill().warmestMonth().number());
        assertThat(middle.gallons().low()).isCloseTo(fill.fuel().annualGal().number(), within(1e-9));
        assertThat(middle.fills().low())
                .isCloseTo(fill.fuel().deliveriesPerYear().number(), within(1e-12));
    }

    /** Every combination of every doubt at its lower end, its upper end or at rest: three to the fourth. */
    @Test
    void everyCornerOfTheDoubtsLiesWithinTheRange() {
        for (Plan plan : List.of(
                Samples.plan(HOUSE),
                house("\"62 %\"", "\"33 %\""),
                house("\"62 %\"", "\"79 %\""),
                house("2026-10-01", "2026-04-20"))) {
            FillReport fill = study(plan);
            List<Doubt> doubts = fill.narrowing().stream().map(Narrowing::doubt).toList();
            assertThat(doubts).hasSize(4);
            Range days = days(fill);
            FillRanges all = fill.ranges().orElseThrow();
            int corners = (int) Math.pow(3, doubts.size());
            for (int c = 0; c < corners; c++) {
                OtherYear other = OtherYear.PLAIN;
                double gauge = 0;
                int rest = c;
                for (Doubt d : doubts) {
                    int end = rest % 3;
                    rest /= 3;
                    other = end == 0 ? other : other.and(end == 1 ? d.shorter() : d.longer());
                    gauge += end == 0 ? 0 : end == 1 ? -d.gaugeGal() : d.gaugeGal();
                }
                YearGallons year = FuelYear.gallons(plan, other).orElseThrow();
                LocalDate from = plan.allTanks().get(0).gaugeDate().findValue().orElseThrow();
                double now = Math.max(0, fill.tank().nowGal().number() + gauge);
                long until = ChronoUnit.DAYS.between(
                        from,
                        year.refillDay(from, now, fill.tank().refillGal().number())
                                .orElseThrow());
                assertThat((double) until).isBetween(days.low(), days.high());
                double usable = fill.tank().usableGal().number() + gauge;
                assertThat(usable / (year.monthly().get(0) / 31))
                        .isBetween(all.coldest().low() - 1e-9, all.coldest().high() + 1e-9);
                assertThat(year.year())
                        .isBetween(all.gallons().low() - 1e-9, all.gallons().high() + 1e-9);
                assertThat(year.year() / usable)
                        .isBetween(all.fills().low() - 1e-9, all.fills().high() + 1e-9);
            }
        }
    }

    /** A cylinder weighed, gallons from the bills, no heating: nothing is in doubt. */
    @Test
    void nothingInDoubtHasNoRange() {
        FillReport fill = study(Samples.plan(HOUSE.replace(
                        "\"heating\": [ { \"appliance\": \"a\", \"designLoad\": \"38000 Btu/h\", \"efficiency\": \"95 %\" } ],",
                        "")
                .replace(
                        "{ \"id\": \"a\", \"kind\": \"furnace\", \"name\": \"furnace\", \"input\": \"60000 Btu/h\" },",
                        "")
                .replace("\"hoursPerDay\": 2", "\"volumePerYear\": \"20 gal\"")
                .replace(
                        "\"kind\": \"asme\", \"waterCapacity\": \"500 gal\", \"orientation\": \"horizontal\", \"placement\": \"above-ground\", \"gauge\": \"62 %\"",
                        "\"kind\": \"cylinder\", \"propaneWeight\": \"100 lb\", \"gauge\": \"60 lb\"")));
        assertThat(days(fill).isWide()).isFalse();
        assertThat(fill.narrowing()).isEmpty();
        FillRanges all = fill.ranges().orElseThrow();
        for (Range r : List.of(all.coldest(), all.warmest(), all.mean(), all.fills(), all.gallons())) {
            assertThat(r.isWide()).isFalse();
        }
    }

    @Test
    void noUseHasNoDaysAndSaysSo() {
        FillReport fill = study(Samples.plan(HOUSE.replace(
                        "\"heating\": [ { \"appliance\": \"a\", \"designLoad\": \"38000 Btu/h\", \"efficiency\": \"95 %\" } ],",
                        "")
                .replace(
                        "{ \"id\": \"a\", \"kind\": \"furnace\", \"name\": \"furnace\", \"input\": \"60000 Btu/h\" },",
                        "")
                .replace("35 gal", "0 gal")
                .replace("\"hoursPerDay\": 2", "\"hoursPerDay\": 0")));
        assertThat(fill.isNoUse()).isTrue();
        assertThat(fill.ranges()).isEmpty();
        assertThat(fill.fuel().nextRefill()).isEmpty();
    }

    @Test
    void aFigureMissingIsUnknownAndNotARange() {
        FillReport fill = study("\"hoursPerDay\": 2, ", "");
        assertThat(fill.isNoUse()).isFalse();
        assertThat(fill.ranges()).isEmpty();
        assertThat(fill.fuel().annualGal().isKnown()).isFalse();
        assertThat(fill.ladder())
                .allSatisfy(r -> assertThat(r.coldestDays().isKnown()).isFalse());
    }

    /** Knowing an entry for certain never makes the range wider, and the first of the list is the one that helps most. */
    @Test
    void whatNarrowsMostStandsFirst() {
        FillReport fill = study(Samples.plan(HOUSE));
        double width = days(fill).width();
        double before = Double.POSITIVE_INFINITY;
        for (Narrowing n : fill.narrowing()) {
            assertThat(n.saved()).isBetween(0.0, before);
            assertThat(n.then().width()).isEqualTo(width - n.saved());
            before = n.saved();
        }
        assertThat(fill.narrowing().get(0).doubt().entry()).isEqualTo("the gauge, 5 in 100");
    }

    /**
     * 80 % less the refill gauge of 500 gal is 250 gal (supply reference SU-9); a larger tank never lasts less long, and
     * NFPA 58 6.4.1 (secondary) keeps over 500 to 1,200 gal 25 ft off, over 250 to 500 gal 10 ft.
     */
    @Test
    void theLadderTellsDaysVapourAndDistanceOfEachStandardTank() {
        FillReport fill = study(Samples.plan(HOUSE));
        assertThat(fill.tank().usableGal().number()).isEqualTo(250);
        assertThat(fill.ladder()).extracting(Rung::waterGal).containsExactly(120.0, 250.0, 320.0, 500.0, 1000.0);
        assertThat(fill.ladder()).extracting(Rung::standsThere).containsExactly(false, false, false, true, false);
        double before = 0;
        for (Rung r : fill.ladder()) {
            assertThat(r.coldestDays().number())
                    .isCloseTo(0.5 * r.waterGal() / fill.coldestPerDay().number(), within(1e-9));
            assertThat(r.coldestDays().number()).isGreaterThan(before);
            before = r.coldestDays().number();
        }
        Rung own = fill.ladder().get(3);
        assertThat(own.coldestDays().number())
                .isEqualTo(fill.fuel().daysPerFill().coldestMonth().number());
        assertThat(own.everything()).isEqualTo(fill.tank().demands().get(0));
        assertThat(own.distances().orElseThrow().buildingFt()).isEqualTo(10);
        assertThat(fill.ladder().get(4).distances().orElseThrow().buildingFt()).isEqualTo(25);
        assertThat(fill.ladder().get(4).everything().status()).isEqualTo(Demand.Status.CARRIES);
        assertThat(fill.ladder().get(0).everything().status()).isEqualTo(Demand.Status.SHORT);
    }

    // Tickets.

    private static Plan tickets(double times, String... dates) {
        YearGallons year =
                FuelYear.gallons(Samples.plan(HOUSE), OtherYear.PLAIN).orElseThrow();
        List<String> out = new ArrayList<>();
        LocalDate before = LocalDate.parse(dates[0]);
        for (String d : dates) {
            LocalDate date = LocalDate.parse(d);
            double gallons = out.isEmpty() ? 200 : times * year.between(before, date);
            out.add("{ \"date\": \"" + d + "\", \"volume\": \"" + gallons + " gal\" }");
            before = date;
        }
        return house("\"deliveries\": []", "\"deliveries\": [" + String.join(", ", out) + "]");
    }

    @Test
    void twoFillsSetTheScaleOfTheWholeYear() {
        FillReport plain = study(Samples.plan(HOUSE));
        FillReport fill = study(tickets(1.2, "2026-01-12", "2026-02-24"));
        assertThat(fill.fit().orElseThrow().scale()).isCloseTo(1.2, within(1e-9));
        assertThat(fill.fuel().annualGal().number())
                .isCloseTo(1.2 * plain.fuel().annualGal().number(), within(1e-6));
        assertThat(fill.fuel().daysPerFill().coldestMonth().number())
                .isCloseTo(plain.fuel().daysPerFill().coldestMonth().number() / 1.2, within(1e-6));
        assertThat(fill.fuel().nextRefill().orElseThrow())
                .isBefore(plain.fuel().nextRefill().orElseThrow());
        assertThat(fill.narrowing())
                .extracting(n -> n.doubt().field())
                .containsExactlyInAnyOrder("/tank/gauge", "/site/monthlyMeanTemp", "/deliveries");
    }

    @Test
    void theThirdFillIsForetoldByTheFirstTwoAndItsMissIsTold() {
        FillReport two = study(tickets(1.2, "2026-01-12", "2026-02-24"));
        TicketFit.Prediction next = two.fit()
                .orElseThrow()
                .predict(two.byEntries().orElseThrow(), LocalDate.of(2026, 4, 20))
                .orElseThrow();
        FillReport three = study(tickets(1.2, "2026-01-12", "2026-02-24", "2026-04-20"));
        TicketFit.Past third = three.fit().orElseThrow().past().get(1);
        assertThat(third.predictedGal().orElseThrow()).isCloseTo(next.gallons(), within(1e-9));
        assertThat(third.miss().orElseThrow()).isCloseTo(0, within(1e-9));
        assertThat(next.range().low()).isLessThan(next.gallons());
        assertThat(next.range().high()).isGreaterThan(next.gallons());
        assertThat(three.fit().orElseThrow().past().get(0).predictedGal()).isEmpty();
        assertThat(two.fit().orElseThrow().predict(two.byEntries().orElseThrow(), LocalDate.of(2026, 2, 24)))
                .isEqualTo(Optional.empty());
    }

    /** A ticket a tenth over what the others predicted is a miss of a tenth, and widens the spread. */
    @Test
    void aMissWidensTheSpread() {
        Plan even = tickets(1.0, "2026-01-12", "2026-02-24", "2026-04-20");
        TicketFit good = study(even).fit().orElseThrow();
        double third =
                even.deliveries().get(2).volume().findValue().orElseThrow().gallons();
        Plan off = house(
                "\"deliveries\": []",
                "\"deliveries\": [{ \"date\": \"2026-01-12\", \"volume\": \"200 gal\" },"
                        + "{ \"date\": \"2026-02-24\", \"volume\": \""
                        + even.deliveries()
                                .get(1)
                                .volume()
                                .findValue()
                                .orElseThrow()
                                .gallons() + " gal\" },"
                        + "{ \"date\": \"2026-04-20\", \"volume\": \"" + 1.1 * third + " gal\" }]");
        TicketFit bad = study(off).fit().orElseThrow();
        assertThat(bad.past().get(1).miss().orElseThrow()).isCloseTo(0.1, within(1e-9));
        assertThat(bad.spread()).isGreaterThan(good.spread());
    }

    @Test
    void oneTicketSetsNothing() {
        assertThat(study(tickets(1.2, "2026-01-12")).fit()).isEmpty();
    }

    /** K, degree days a gallon: 400 gal in 2,000, 180 in 900, 180 in 1,500 (a supplier's scheduling text: 5.0, 5.0, 8.33). */
    @Test
    void theSuppliersKFactorComesOutAsHePrintsIt() {
        record Case(double gallons, double degreeDays, double k) {}
        for (Case c : List.of(new Case(400, 2000, 5.0), new Case(180, 900, 5.0), new Case(180, 1500, 8.33))) {
            var interval = new longrun.fuel.Calibration.Interval(
                    LocalDate.of(2026, 1, 1), LocalDate.of(2026, 3, 1), c.gallons(), 59, c.degreeDays(), 1);
            assertThat(interval.k()).isCloseTo(c.k(), within(0.005));
        }
    }
}
