package longrun.drawing.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import longrun.Samples;
import longrun.plan.Appliance.Part;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

/** Parts in flow order from the pipe to the burner, drawn. */
class HookupDrawingTest {

    private static List<Part> parts(String connection) {
        return Samples.plan("{\"format\":\"longrun-plan/1\",\"appliances\":[{\"id\":\"a\",\"connection\":[" + connection
                        + "]}]}")
                .appliances()
                .get(0)
                .connection()
                .findValue()
                .orElseThrow();
    }

    private static void assertWellFormed(String svg) throws Exception {
        DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    @Test
    void everyKindOfPartIsDrawnWellFormed() throws Exception {
        List<Part> parts = parts(
                "{\"part\":\"shutoff\",\"distance\":\"> 5 ft\",\"sameRoom\":false},{\"part\":\"union\"},"
                        + "{\"part\":\"sediment-trap\",\"gasTurns\":false,\"capPointsDown\":false},{\"part\":\"rigid-pipe\"},"
                        + "{\"part\":\"flexible-connector\",\"throughWall\":true,\"concealed\":true},{\"part\":\"built-in-trap\"},{}");
        String svg = HookupDrawing.of("Heater <1> & 'two'", parts, Set.of(2), List.of(0, 2, 1, 3, 4, 5, 6));
        assertWellFormed(svg);
        assertThat(svg)
                .contains("data-part='6'", "valve to appliance", "belongs here")
                .doesNotContain("<1>");
    }

    @Test
    void thePartsAreToldInFlowOrder() {
        assertThat(HookupDrawing.inWords("heater", parts("{\"part\":\"sediment-trap\"},{\"part\":\"shutoff\"}")))
                .isEqualTo("From the end of the pipe to heater: sediment trap, shutoff.");
    }

    @Test
    void thePipeComesDownAtATrapWhoseGasTurnsAndGoesStraightWhereItDoesNot() {
        String turning =
                HookupDrawing.of("h", parts("{\"part\":\"sediment-trap\",\"gasTurns\":true}"), Set.of(), List.of());
        String straight =
                HookupDrawing.of("h", parts("{\"part\":\"sediment-trap\",\"gasTurns\":false}"), Set.of(), List.of());
        assertThat(turning).contains("V106H");
        assertThat(straight).doesNotContain("V106H");
    }

    @Test
    void nothingIsMarkedInARightRow() {
        assertThat(HookupDrawing.of("h", parts("{\"part\":\"shutoff\"}"), Set.of(), List.of(0)))
                .doesNotContain("mark-wrong", "belongs");
    }

    @Test
    void aVentsDistancesStandInItsElevationKnownNoneAndUnknown() throws Exception {
        var regulator = Samples.plan(
                        "{\"format\":\"longrun-plan/1\",\"regulators\":[{\"id\":\"R\",\"kind\":\"second-stage\","
                                + "\"ventToOpening\":\"4 ft\",\"ventToIgnition\":\"none\"}]}")
                .regulators()
                .get(0);
        String svg = VentDrawing.of(regulator);
        assertWellFormed(svg);
        assertThat(svg).contains(">4 ft<", ">there is none<", ">not known<", "relief outlet");
    }

    @Test
    void whatIsNotFittedAtALineRegulatorIsDotted() throws Exception {
        var regulator = Samples.plan(
                        "{\"format\":\"longrun-plan/1\",\"regulators\":[{\"id\":\"R\",\"kind\":\"line\","
                                + "\"shutoffBefore\":true,\"teeBefore\":false,\"vent\":\"limiter\",\"unionWithin\":\"10 in\"}]}")
                .regulators()
                .get(0);
        String svg = LineRegulatorDrawing.of(regulator);
        assertWellFormed(svg);
        assertThat(svg).contains("none fitted", "10 in away", "vent: limiter", "not known");
    }

    @Test
    void noEdgeCutsThePipeOrALongName() {
        String svg =
                HookupDrawing.of("Tankless heater in the attic", parts("{\"part\":\"shutoff\"}"), Set.of(), List.of());
        assertThat(svg).contains("viewBox='-8 0 ", "text-anchor='end'");
    }

    @Test
    void theThreeUsualPartsFitAPhone() {
        List<Part> usual = parts(
                "{\"part\":\"shutoff\",\"distance\":\"2 ft\"},{\"part\":\"sediment-trap\"},{\"part\":\"flexible-connector\"}");
        String svg = HookupDrawing.narrow("Water heater", usual, Set.of(1), List.of(1, 0, 2));
        int width = Integer.parseInt(svg.replaceAll("(?s).*style='width:([0-9]+)px.*", "$1"));
        assertThat(width).isLessThanOrEqualTo(374);
        assertThat(svg).contains("1 shutoff", "2 trap", "3 connector", "mark-wrong", "2 ft, valve to appliance");
    }
}
