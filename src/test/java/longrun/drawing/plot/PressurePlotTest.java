package longrun.drawing.plot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import longrun.Samples;
import longrun.capacity.CapacityTables;
import longrun.piping.Piping;
import longrun.pressure.Pressures;
import longrun.sizing.Sizing;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** The plot of the pressure along the longest run. */
class PressurePlotTest {

    private static Pressures pressures(String json) {
        return Pressures.of(Sizing.of(Piping.of(Samples.plan(json)), CapacityTables.standard()));
    }

    static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    @Test
    void limitsAndTheTightSectionAreNamed() throws Exception {
        String svg = PressurePlot.svg(pressures(Samples.text("sample-plan.json")), 1);
        parsed(svg);
        assertThat(svg)
                .contains("Pressure along the longest run from R2 to range")
                .contains("allowed drop, 10.50 in.")
                .contains("set, all firing 10.68 in.")
                .contains("tightest: section A, 82 % used")
                .contains("var(--ink")
                .contains("stroke-width:2.5");
    }

    @Test
    void theLabelsLeastIsDrawnWhereItIsEntered() {
        String json = Samples.text("sample-plan.json")
                .replace("\"input\": \"65000 Btu/h\"", "\"input\": \"65000 Btu/h\", \"minInlet\": \"9 in w.c.\"");
        assertThat(PressurePlot.svg(pressures(json), 1)).contains("label&#39;s least 9.00 in.");
    }

    @Test
    void picturesAreThoseKept() {
        Pressures sample = pressures(Samples.text("sample-plan.json"));
        Golden.same("pressure-psi.svg", PressurePlot.svg(sample, 0));
        Golden.same("pressure.svg", PressurePlot.svg(sample, 1));
        String orchard = Samples.text("drawing/orchard-house.json");
        Golden.same("pressure-label.svg", PressurePlot.svg(pressures(orchard), 1));
        String unmeasured = Samples.text("sample-plan.json").replace("[\"14 ft\"]", "[]");
        Golden.same("pressure-unknown.svg", PressurePlot.svg(pressures(unmeasured), 1));
    }

    @Test
    void highPressureIsShownInPsi() {
        assertThat(PressurePlot.svg(pressures(Samples.text("sample-plan.json")), 0))
                .contains("allowed drop, 9.00 psi");
    }

    @Test
    void whatAPersonTypedCannotBecomeMarkup() throws Exception {
        String json = Samples.text("sample-plan.json")
                .replace("\"range\"", "\"<script>'&\\u0001\"")
                .replace("\"kind\": \"<script>'&\\u0001\"", "\"kind\": \"range\"");
        String svg = PressurePlot.svg(pressures(json), 1);
        parsed(svg);
        assertThat(svg).contains("&lt;script&gt;&#39;&amp;\uFFFD").doesNotContain("<script");
    }

    @Test
    void anUnknownRunSaysSo() throws Exception {
        String svg = PressurePlot.svg(pressures(Samples.text("sample-plan.json").replace("[\"14 ft\"]", "[]")), 1);
        parsed(svg);
        assertThat(svg).contains("Not known");
    }

    @Test
    void theSameBytesInEveryLocale() {
        Locale before = Locale.getDefault();
        String here = PressurePlot.svg(pressures(Samples.text("sample-plan.json")), 1);
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(PressurePlot.svg(pressures(Samples.text("sample-plan.json")), 1))
                    .isEqualTo(here);
        } finally {
            Locale.setDefault(before);
        }
    }
}
