package longrun.drawing.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import javax.xml.parsers.DocumentBuilderFactory;
import longrun.Samples;
import longrun.plan.Plan;
import longrun.plan.Section;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

/** How a pipe lies and passes a wall, and where a vent ends, drawn with what was entered; what was not says so. */
class LaidDrawingsTest {

    private static Plan plan(String section, String appliance) {
        return Samples.plan("{\"format\":\"longrun-plan/1\",\"sections\":[{\"id\":\"Y1\"" + section
                + "}],\"appliances\":[{\"id\":\"a\",\"kind\":\"furnace\"" + appliance + "}]}");
    }

    private static Section section(String entries) {
        return plan(entries, "").sections().get(0);
    }

    private static void assertWellFormed(String svg) throws Exception {
        DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    @Test
    void aBuriedPlasticPipeShowsItsCoverAndItsWire() throws Exception {
        String svg = TrenchDrawing.of(
                section(",\"material\":\"pe-pipe\",\"depth\":\"18 in\",\"tracerWire\":\"14 AWG\",\"under\":\"drive\""));
        assertWellFormed(svg);
        assertThat(svg).contains("18 in").contains("wire: 14 AWG").contains("a drive");
    }

    @Test
    void whatIsNotEnteredOfATrenchIsNotKnownAndNeverThere() throws Exception {
        String svg = TrenchDrawing.of(section(",\"material\":\"pe-pipe\""));
        assertWellFormed(svg);
        assertThat(svg).contains("Cover over the pipe: not known").contains("tracer wire: not known");
        assertThat(TrenchDrawing.of(section(",\"material\":\"pe-pipe\",\"tracerWire\":\"none\"")))
                .contains("no wire");
        assertThat(TrenchDrawing.of(section(",\"material\":\"steel\""))).contains("coating: not known");
    }

    @Test
    void aPassageShowsItsSleeveAndItsSeal() throws Exception {
        Section passed = section(",\"passes\":[{\"what\":\"outside-wall\",\"sleeved\":true,\"sealed\":false},{}]");
        String sleeved = PassageDrawing.of(
                "Y1", passed.passes().findValue().orElseThrow().get(0));
        String unknown = PassageDrawing.of(
                "Y1", passed.passes().findValue().orElseThrow().get(1));
        assertWellFormed(sleeved);
        assertWellFormed(unknown);
        assertThat(sleeved).contains("sleeve: in a sleeve").contains("ends: not sealed");
        assertThat(unknown).contains("sleeve: not known").contains("not known");
    }

    @Test
    void theEndOfAVentStandsAboveGroundAndSnowBesideTheRegulator() throws Exception {
        Plan plan =
                plan("", ",\"vent\":\"direct\",\"terminalAboveGrade\":\"3 ft\",\"terminalToRegulator\":\"> 10 ft\"");
        String svg = TerminalDrawing.of(plan.appliances().get(0), "the heater", plan.site());
        assertWellFormed(svg);
        assertThat(svg)
                .contains("3 ft")
                .contains("over 10 ft")
                .contains("snow: not known")
                .contains("The vent of the heater");
    }
}
