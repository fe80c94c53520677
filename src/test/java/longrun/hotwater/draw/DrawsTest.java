package longrun.hotwater.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longrun.Samples;
import longrun.plan.Use;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Draws of a day: how they are read, cut and lengthened, and the test patterns that stand in for them. */
class DrawsTest {

    private static HouseDraws draws(String list, double gallons) {
        Use.HotWater entry = Samples.plan("{\"format\":\"longrun-plan/1\",\"use\":{\"hotWater\":{\"draws\":["
                        + list.replace('\'', '"') + "]}}}")
                .use()
                .flatMap(Use::hotWater)
                .orElseThrow();
        return HouseDraws.of(entry, gallons, 105);
    }

    @Test
    void aDrawIsAsItWasEntered() {
        assertThat(draws(
                                "{'name':'bath','start':'06:30:30','lasts':'10 min','flow':'4 gal/min','useTemp':'100"
                                        + " degF'}",
                                40)
                        .asEntered())
                .containsExactly(new Draw("bath", 390.5, 10, 4, 100));
    }

    /** Common practice: a draw without a time is an evening's shower, at the house's use temperature. */
    @Test
    void aDrawWithoutTimeNameOrTemperatureIsAnEveningsAtTheUseTemperature() {
        assertThat(draws("{'lasts':'10 min','flow':'4 gal/min'}", 40).asEntered())
                .containsExactly(new Draw("draw 1", 19 * 60, 10, 4, 105));
    }

    @Test
    void aDrawWithoutFlowOrLengthIsInNoSumAndNamed() {
        HouseDraws draws = draws(
                "{'lasts':'10 min'},{'lasts':'10 min','flow':'4 gal/min'},{'flow':'4 gal/min'},{'lasts':'0"
                        + " min','flow':'4 gal/min'},{'lasts':'10 min','flow':'0 gal/min'},{'name':'x','lasts':'5"
                        + " min','flow':'1 gal/min'},{'lasts':'5 min','flow':'1 gal/min'}",
                45);
        assertThat(draws.unfinished()).containsExactly(0, 2, 3, 4);
        assertThat(draws.asEntered()).extracting(Draw::name).containsExactly("draw 2", "x", "draw 7");
        assertThat(draws.pattern()).isEmpty();
    }

    @Test
    void aHouseThatUsesNoHotWaterDrawsNoneInTheYear() {
        assertThat(draws("{'lasts':'10 min','flow':'4 gal/min'}", 0).ofTheYear())
                .isEmpty();
        assertThat(draws("{'lasts':'10 min','flow':'4 gal/min'}", 0.001).ofTheYear())
                .singleElement()
                .satisfies(d -> assertThat(d.gallons()).isCloseTo(0.001, within(1e-12)));
    }

    @Test
    void allDrawsAreLengthenedAlikeToTheDaysVolume() {
        HouseDraws draws = draws("{'lasts':'10 min','flow':'4 gal/min'},{'lasts':'5 min','flow':'2 gal/min'}", 100);
        assertThat(draws.ofTheYear()).extracting(Draw::minutes).containsExactly(20.0, 10.0);
        assertThat(draws.asEntered()).extracting(Draw::minutes).containsExactly(10.0, 5.0);
    }

    @Test
    void withoutADrawThePatternIsScaledToTheDay() {
        HouseDraws draws = draws("", 60);
        assertThat(draws.pattern()).contains("medium");
        assertThat(draws.asEntered()).isEqualTo(draws.ofTheYear());
        assertThat(draws.ofTheYear().stream().mapToDouble(Draw::gallons).sum()).isCloseTo(60, within(1e-9));
    }

    /** A day has 1,440 minutes: what would outlast it runs all day at a larger flow. */
    @ParameterizedTest
    @CsvSource({"1440, 1, 1440, 2", "720, 2, 1440, 2", "720, 3, 1440, 3", "720, 1.5, 1080, 2"})
    void aDrawNeverOutlastsTheDay(double minutes, double factor, double longer, double gpm) {
        Draw draw = new Draw("d", 30, minutes, 2, 105).scaled(factor);
        assertThat(draw).isEqualTo(new Draw("d", 30, longer, gpm, 105));
        assertThat(draw.gallons()).isCloseTo(minutes * 2 * factor, within(1e-9));
    }

    /** 10 CFR 430 subpart B appendix E (held from memory): 38, 55 and 84 gal a day. */
    @ParameterizedTest
    @CsvSource({
        "0, low",
        "46.4, low",
        "46.5, low",
        "46.6, medium",
        "55, medium",
        "69.4, medium",
        "69.5, medium",
        "69.6, high",
        "300, high"
    })
    void thePatternNearestTheDaysVolumeStandsIn(double gallons, String pattern) {
        assertThat(DrawPatterns.nearest(gallons)).isEqualTo(pattern);
    }

    /** The same test: 15 gal at 1.7 gal/min at its start, 2 gal at 1 gal/min half an hour on; begun here at 6:00. */
    @Test
    void theTestsClockBeginsAtSix() {
        List<Draw> low = DrawPatterns.draws("low", 125);
        assertThat(low).hasSize(12);
        assertThat(low.get(0)).isEqualTo(new Draw("draw 1 of the test", 360, 15 / 1.7, 1.7, 125));
        assertThat(low.get(1)).isEqualTo(new Draw("draw 2 of the test", 390, 2, 1, 125));
        assertThat(low.get(3).startMin()).isEqualTo(16 * 60 + 30);
        assertThat(low).allMatch(d -> d.startMin() >= 0 && d.startMin() < 1440);
        assertThat(DrawPatterns.draws("none", 125)).isEmpty();
    }

    @Test
    void aDayIsCutWhereADrawBeginsOrEnds() {
        DrawDay day = DrawDay.of(List.of(new Draw("a", 60, 10, 2, 110), new Draw("b", 65, 10, 3, 100)));
        assertThat(day.slices())
                .containsExactly(
                        new DrawDay.Slice(0, 60, 0, 0, List.of()),
                        new DrawDay.Slice(60, 5, 2, 110, List.of(0)),
                        new DrawDay.Slice(65, 5, 5, 104, List.of(0, 1)),
                        new DrawDay.Slice(70, 5, 3, 100, List.of(1)),
                        new DrawDay.Slice(75, 1365, 0, 0, List.of()));
    }

    @Test
    void whatGoesOnPastMidnightComesAtTheDaysBeginning() {
        DrawDay day = DrawDay.of(List.of(new Draw("a", 1430, 30, 2, 105)));
        assertThat(day.slices())
                .containsExactly(
                        new DrawDay.Slice(0, 20, 2, 105, List.of(0)),
                        new DrawDay.Slice(20, 1410, 0, 0, List.of()),
                        new DrawDay.Slice(1430, 10, 2, 105, List.of(0)));
        assertThat(DrawDay.of(List.of(new Draw("a", 1430, 10, 2, 105))).slices())
                .containsExactly(
                        new DrawDay.Slice(0, 1430, 0, 0, List.of()), new DrawDay.Slice(1430, 10, 2, 105, List.of(0)));
        assertThat(DrawDay.of(List.of()).slices()).containsExactly(new DrawDay.Slice(0, 1440, 0, 0, List.of()));
    }
}
