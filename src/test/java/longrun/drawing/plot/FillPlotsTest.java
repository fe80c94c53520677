package longrun.drawing.plot;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longrun.drawing.tank.TankShape;
import longrun.fuel.FuelYear;
import longrun.fuel.fill.FillReport;
import longrun.fuel.fill.FillStudy;
import longrun.plan.Plan;
import longrun.tank.Houses;
import longrun.tank.TankReport;
import longrun.tank.TankStudy;
import org.junit.jupiter.api.Test;

/** The pictures of how long a fill lasts, of the invented orchard house: 500 gal, refilled at 30 %. */
class FillPlotsTest {

    private static FillReport fill(Plan plan) {
        TankReport tank = TankStudy.of(plan);
        return FillStudy.of(plan, tank, FuelYear.of(plan, tank));
    }

    private static String year(FillReport fill) {
        return FillYearPlot.of(fill).orElseThrow().svg();
    }

    /** Every text starts, ends or is centred within the picture's width. */
    private static void withinThePicture(String svg, double width) {
        Matcher text = Pattern.compile("<text x=\"(-?[0-9.]+)\"").matcher(svg);
        int found = 0;
        while (text.find()) {
            found++;
            assertThat(Double.parseDouble(text.group(1))).isBetween(0.0, width);
        }
        assertThat(found).isPositive();
    }

    @Test
    void theYearNamesItsFillsTheRangeOfTheNextAndTheDayToCall() {
        FillReport fill = fill(Houses.orchard());
        String svg = year(fill);
        assertThat(svg)
                .contains("fill, 80 %", "refill, 30 %")
                .contains("call by " + LevelPlot.day(fill.fuel().callBy().orElseThrow()))
                .contains(fill.fuel().level().orElseThrow().deliveries().size() + " fills in the year");
        LocalDate read = LocalDate.of(2026, 10, 1);
        var days = fill.ranges().orElseThrow().days().orElseThrow();
        assertThat(svg)
                .contains(LevelPlot.day(read.plusDays((long) days.low())) + " to "
                        + LevelPlot.day(read.plusDays((long) days.high())));
        withinThePicture(svg, 600);
    }

    /** A small cylinder is filled so often that its fills are counted, not named. */
    @Test
    void manyFillsAreCountedAndNotNamed() {
        String svg = year(fill(Houses.orchard(
                "\"kind\": \"asme\", \"waterCapacity\": \"500 gal\", \"orientation\": \"horizontal\", \"placement\": \"above-ground\"",
                "\"kind\": \"cylinder\", \"propaneWeight\": \"100 lb\"")));
        assertThat(svg).containsPattern("[0-9]+ fills</text>");
        withinThePicture(svg, 600);
    }

    @Test
    void withoutAGaugeThereIsNoYearToDraw() {
        assertThat(FillYearPlot.of(fill(Houses.orchard("\"gauge\": \"62 %\", ", ""))))
                .isEmpty();
    }

    @Test
    void theDaysOfTheRefillHoldTheDayToCallToo() {
        String svg = new FillDateBar(
                        LocalDate.of(2026, 11, 19),
                        LocalDate.of(2026, 11, 28),
                        LocalDate.of(2026, 12, 7),
                        LocalDate.of(2026, 11, 12))
                .svg();
        assertThat(svg).contains("call by 12 Nov", "19 Nov", "28 Nov", "7 Dec");
        withinThePicture(svg, 320);
        String single = new FillDateBar(
                        LocalDate.of(2026, 11, 28),
                        LocalDate.of(2026, 11, 28),
                        LocalDate.of(2026, 11, 28),
                        LocalDate.of(2026, 11, 21))
                .svg();
        assertThat(single).contains("28 Nov").doesNotContain("stroke-width:6");
    }

    @Test
    void theNeedIsDrawnWhateverTheTankGives() {
        for (double need : new double[] {1_000, 155_000, 324_000, 9_000_000}) {
            String svg = new MorningBar(109_000, 340_000, need, "keeping 20 psig").svg();
            assertThat(svg).contains("need ", "340,000 by the rule");
            withinThePicture(svg, 320);
        }
    }

    @Test
    void allTanksAreDrawnToOneScale() {
        double small = new TankShape(66, 24, false).width() - 4;
        double large = new TankShape(191, 41, false).width() - 4;
        assertThat(large / small).isEqualTo(191.0 / 66, org.assertj.core.api.Assertions.within(1e-9));
    }

    @Test
    void aGaugeNotReadShowsNoHand() {
        assertThat(new GaugePicture(-1, 30).svg()).contains("not read yet", "not read");
        assertThat(new GaugePicture(62, 30).svg()).contains("Gauge at 62 %, refill mark at 30 %");
    }
}
