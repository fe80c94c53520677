package longrun.pressure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longrun.Samples;
import longrun.capacity.CapacityTables;
import longrun.piping.Piping;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.sizing.SectionStatus;
import longrun.sizing.Sizing;
import org.junit.jupiter.api.Test;

/** Headroom is exact: all of it changes no size, the next step changes one. Judged by sizing the changed plan anew. */
class HeadroomTest {

    private static final String DIVERSITY = "'diversity':{'share':'70 %','reason':'never all at once'}";

    private static Sizing size(String json) {
        return Sizing.of(Piping.of(Samples.plan(json)), CapacityTables.standard());
    }

    /** Needed sizes and statuses that must not change. */
    private static List<String> sizes(Sizing sizing) {
        List<String> out = new ArrayList<>();
        for (int s = 0; s < sizing.piping().sectionCount(); s++) {
            out.add(sizing.section(s).neededSize().orElse("-") + " "
                    + (sizing.section(s).status() == SectionStatus.UNDERSIZED) + " "
                    + (sizing.section(s).status() == SectionStatus.NO_SIZE));
        }
        return out;
    }

    @Test
    void allTheHeadroomChangesNoSizeAndOneBtuhMoreDoes() {
        int checked = 0;
        int zero = 0;
        for (long seed = 1; seed <= 150; seed++) {
            String diversity = seed % 5 == 0 ? DIVERSITY : "";
            String json = new RandomHouses(seed, seed % 2 == 0, SecondWayTest.allowance(seed), diversity).json;
            Sizing sizing = size(json);
            Headroom headroom = Headroom.of(sizing);
            List<String> before = sizes(sizing);
            int n = sizing.piping().plan().appliances().size();
            for (int a = 0; a < n; a += 1 + n / 4) {
                double more = headroom.atAppliance(a).orElseThrow().btuh();
                String at = "seed " + seed + " appliance " + a + " headroom " + more;
                if (blocked(sizing, a)) {
                    assertThat(more).as(at).isZero();
                    zero++;
                    continue;
                }
                assertThat(sizes(size(withInput(json, a, more)))).as(at).isEqualTo(before);
                assertThat(sizes(size(withInput(json, a, more + 1)))).as(at).isNotEqualTo(before);
                checked++;
            }
        }
        assertThat(checked).isGreaterThan(200);
        assertThat(zero).isPositive();
    }

    private static boolean blocked(Sizing sizing, int appliance) {
        Piping piping = sizing.piping();
        int s = piping.findSection(piping.plan()
                        .appliances()
                        .get(appliance)
                        .fedBy()
                        .findValue()
                        .orElseThrow())
                .orElseThrow();
        while (s >= 0) {
            SectionStatus status = sizing.section(s).status();
            if (status == SectionStatus.UNDERSIZED || status == SectionStatus.NO_SIZE) {
                return true;
            }
            s = piping.parent(s) >= 0
                    ? piping.parent(s)
                    : piping.sectionFeeding(piping.findStage(s).orElseThrow().regulatorIndex());
        }
        return false;
    }

    private static String withInput(String json, int appliance, double more) {
        Matcher m = Pattern.compile("(\"id\":\"A" + appliance + "\",\"kind\":\"other\",\"input\":\")([0-9]+)")
                .matcher(json);
        assertThat(m.find()).isTrue();
        long input = Long.parseLong(m.group(2)) + (long) more;
        return m.replaceFirst("$1" + input);
    }

    @Test
    void allTheFeetChangeNoSizeAndAHundredthMoreDoes() {
        int checked = 0;
        for (long seed = 1; seed <= 150; seed++) {
            String json = new RandomHouses(seed, seed % 2 == 0, SecondWayTest.allowance(seed)).json;
            Sizing sizing = size(json);
            Headroom headroom = Headroom.of(sizing);
            List<String> before = sizes(sizing);
            for (int stage = 0; stage < sizing.piping().stages().size(); stage++) {
                double more = headroom.lengthOfStage(stage).orElseThrow().feet();
                String at = "seed " + seed + " stage " + stage + " headroom " + more + " ft";
                int last = sizing.stage(stage).longestRunTo().orElseThrow().section();
                if (new LengthRoom(sizing, stage).isBlocked()) {
                    assertThat(more).as(at).isZero();
                    continue;
                }
                assertThat(sizes(size(longer(json, last, more)))).as(at).isEqualTo(before);
                assertThat(sizes(size(longer(json, last, more + 0.01)))).as(at).isNotEqualTo(before);
                checked++;
            }
        }
        assertThat(checked).isGreaterThan(200);
    }

    /** The plan with the last leg of one section so much longer. */
    private static String longer(String json, int section, double more) {
        Matcher m = Pattern.compile("(\"id\":\"S" + section + "\",[^}]*?\"legs\":\\[[^\\]]*?)([0-9]+) ft\"\\]")
                .matcher(json);
        assertThat(m.find()).isTrue();
        String feet = String.format(Locale.ROOT, "%.2f", Long.parseLong(m.group(2)) + more);
        return m.replaceFirst("$1" + feet + " ft\"]");
    }

    @Test
    void theSampleHouseSaysItsHeadroomInWords() {
        Sizing sizing = Sizing.of(Piping.of(Samples.sample()), CapacityTables.standard());
        Headroom headroom = Headroom.of(sizing);
        // A: 297,000 - 245,000; B has more room; C: EHD 18 carries 74,000 - 65,000 needed, EHD 19 in place
        assertThat(headroom.atAppliance(0)).contains(HeatRate.ofBtuh(52_000));
        assertThat(headroom.atAppliance(1)).contains(HeatRate.ofBtuh(9_000));
        assertThat(headroom.outletWords(0))
                .isEqualTo("heater: 52,000 Btu/h more: nothing changes; 52,001 Btu/h: section A grows");
        assertThat(headroom.ofStage(1)).contains(HeatRate.ofBtuh(9_000));
        // row 40: EHD 18 carries 64,000, under C's 65,000; so row 30 is the last, where the run stands already
        assertThat(headroom.lengthOfStage(1)).contains(Length.ofFeet(0));
        assertThat(headroom.stageWords(1))
                .isEqualTo("0 ft farther: nothing changes; 0.01 ft: section C asks for more than its EHD 19");
        assertThat(headroom.ofRegulator(0)).contains(HeatRate.ofBtuh(855_000));
        assertThat(headroom.ofRegulator(1)).contains(HeatRate.ofBtuh(555_000));
    }

    @Test
    void aMissingInputLeavesTheHeadroomUnknown() {
        String json = Samples.text("sample-plan.json").replace("\"input\": \"65000 Btu/h\", ", "");
        Headroom headroom = Headroom.of(size(json));
        assertThat(headroom.atAppliance(0)).isEmpty();
        assertThat(headroom.ofStage(1)).isEmpty();
        assertThat(headroom.lengthOfStage(1)).isEmpty();
    }
}
