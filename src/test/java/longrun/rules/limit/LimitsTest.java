package longrun.rules.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import longrun.finding.Severity;
import longrun.origin.Confidence;
import longrun.origin.DataFile;
import longrun.plan.Distance;
import longrun.plan.PlannedHouse;
import longrun.plan.choice.CodeProfile;
import longrun.quantity.Length;
import longrun.quantity.Measure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What each code requires of a length, what a local amendment puts in its place, and how it is told. */
class LimitsTest {

    private static final CodeProfile FUEL_GAS = CodeProfile.FUEL_GAS_2018;

    private static Threshold nipple(CodeProfile code) {
        return Thresholds.builtIn().get("trap-nipple-length", "", code);
    }

    private static Limits limits(String... amendment) {
        PlannedHouse house = PlannedHouse.empty();
        return Limits.of(
                (amendment.length == 0
                                ? house
                                : house.set("/code", "{'amendments':[" + String.join(",", amendment) + "]}"))
                        .plan(),
                FUEL_GAS);
    }

    /** IFGC 408.4: a capped nipple of any length; NFPA 54 figure 9.6.8 (memory): 3 in. at least. */
    @ParameterizedTest
    @CsvSource({
        "FUEL_GAS_2018, 0, false, BROKEN",
        "FUEL_GAS_2018, 0, true, HOLDS",
        "FUEL_GAS_2018, 0.1, false, HOLDS",
        "NFPA_54_58, 0.2, false, BROKEN",
        "NFPA_54_58, 0.25, false, HOLDS",
        "NFPA_54_58, 0.2, true, ASKS"
    })
    void aTrapsNippleIsOfAnyLengthOrThreeInches(CodeProfile code, double feet, boolean orMore, State state) {
        assertThat(nipple(code).test(new Distance(Length.ofFeet(feet), orMore))).isEqualTo(state);
    }

    @Test
    void anotherCodeThatAsksForMoreIsFound() {
        Distance inch = Distance.of(Length.ofFeet(1 / 12.0));
        assertThat(limits().findStricterBrokenBy("trap-nipple-length", "", inch))
                .hasValueSatisfying(t -> assertThat(t.code()).contains(CodeProfile.NFPA_54_58));
        assertThat(limits().findStricterBrokenBy("trap-nipple-length", "", Distance.of(Length.ofFeet(0.25))))
                .isEmpty();
        assertThat(limits().listOthers("trap-nipple-length", ""))
                .extracting(t -> t.code().orElseThrow())
                .containsExactly(CodeProfile.NFPA_54_58, CodeProfile.PLUMBING_CODE);
        assertThat(limits().findOtherThatAsks("trap-nipple-length", "")).isPresent();
        assertThat(limits().listOthers("trap-nipple-length", "no such")).isEmpty();
        assertThat(limits().listOthers("gas-type", "")).isEmpty();
    }

    @Test
    void aLocalAmendmentTakesThePlaceOfThePrintedLimit() {
        Limits amended = limits("{'rule':'trap-nipple-length','limit':'4 in','source':'town code 12'}");
        Threshold t = amended.get("trap-nipple-length", "");
        assertThat(t.bound()).isEqualTo(Bound.LEAST);
        assertThat(t.test(Distance.of(Length.ofFeet(0.3)))).isEqualTo(State.BROKEN);
        assertThat(t.test(Distance.of(Length.ofFeet(0.34)))).isEqualTo(State.HOLDS);
        assertThat(t.required()).isEqualTo("at least 4 in");
        assertThat(t.reference()).startsWith("town code 12 (local amendment) in place of IFGC 408.4");
        assertThat(t.confidence()).isEqualTo(Confidence.OWN);
        assertThat(t.severity()).isEqualTo(Severity.MUST_FIX);
        assertThat(amended.isAmended("trap-nipple-length", "")).isTrue();
        assertThat(amended.isAmended("gas-type", "")).isFalse();
        assertThat(amended.findStricterBrokenBy("trap-nipple-length", "", Distance.of(Length.ofFeet(0.1))))
                .isEmpty();
        assertThat(limits().isAmended("trap-nipple-length", "")).isFalse();
    }

    @Test
    void anAmendmentOfALimitKeepsItsWordsAndItsBound() {
        Limits amended = limits("{'rule':'shutoff-within-reach','limit':'3 ft'}");
        Threshold own = amended.get("shutoff-within-reach", "");
        Threshold printed = limits().get("shutoff-within-reach", "");
        assertThat(own.bound()).isEqualTo(printed.bound()).isEqualTo(Bound.MOST);
        assertThat(own.requirement()).isEqualTo(printed.requirement());
        assertThat(own.limitText()).isEqualTo("3 ft");
        assertThat(own.reference()).startsWith("source not entered (local amendment)");
        assertThat(own.isLooserThan(printed)).isFalse();
        assertThat(printed.isLooserThan(own)).isTrue();
        assertThat(printed.isLooserThan(printed)).isFalse();
    }

    @Test
    void anAmendmentWithoutALimitOrOfAFactChangesNothing() {
        Limits none = limits("{'rule':'trap-nipple-length'}", "{'rule':'gas-type','limit':'3 ft'}");
        assertThat(none.get("trap-nipple-length", "")).isEqualTo(nipple(FUEL_GAS));
        assertThat(none.get("gas-type", "")).isEqualTo(limits().get("gas-type", ""));
        assertThat(none.isAmended("gas-type", "")).isFalse();
        assertThat(Limits.isAmendable(nipple(FUEL_GAS))).isTrue();
        Limits twice =
                limits("{'rule':'trap-nipple-length','limit':'4 in'}", "{'rule':'trap-nipple-length','limit':'5 in'}");
        assertThat(twice.get("trap-nipple-length", "").limitText()).isEqualTo("4 in");
    }

    /** Of two least distances the smaller is the looser. */
    @Test
    void aLeastDistanceIsLooserTheSmallerItIs() {
        Threshold three = nipple(CodeProfile.NFPA_54_58);
        Threshold four = three.amended(Length.ofFeet(4 / 12.0), "4 in", "town");
        assertThat(three.isLooserThan(four)).isTrue();
        assertThat(four.isLooserThan(three)).isFalse();
        assertThat(three.isLooserThan(three)).isFalse();
        assertThat(nipple(FUEL_GAS).isLooserThan(three)).isTrue();
    }

    @Test
    void aRequirementSaysItsLimitItsSourceAndThatItIsFromMemory() {
        Threshold memory = nipple(CodeProfile.NFPA_54_58);
        assertThat(memory.required()).isEqualTo("a trap nipple at least 3 in long (" + Threshold.FROM_MEMORY + ")");
        assertThat(memory.source()).isEqualTo("NFPA 54 figure 9.6.8, 2018");
        assertThat(nipple(CodeProfile.PLUMBING_CODE).source()).isEqualTo("UPC figure 1212.9");
        assertThat(nipple(FUEL_GAS).required()).isEqualTo("a capped nipple of any length in the trap");
        assertThat(nipple(FUEL_GAS).asks()).isTrue();
        assertThat(nipple(FUEL_GAS).rule()).isEqualTo("trap-nipple-length");
    }

    @Test
    void aLimitThatIsNoLengthIsReadByItsOwnMeasure() {
        Threshold wire = Thresholds.builtIn().listAll().stream()
                .filter(t -> t.limitText().endsWith(" AWG"))
                .findFirst()
                .orElseThrow();
        assertThat(wire.limitIn(Measure.WIRE)).isNotNull();
        assertThat(wire.limit()).isEmpty();
        assertThatThrownBy(() -> wire.limitIn(Measure.TEMPERATURE))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining(wire.limitText());
    }

    @Test
    void aRowThatIsMissingOrMisnamedIsSaidToBe() {
        assertThatThrownBy(() -> Thresholds.builtIn().get("no-such-rule", "", FUEL_GAS))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no row for no-such-rule");
        String head =
                "# thresholds\nrule,variant,code,severity,bound,limit,required,reference,edition,confidence,fact\n";
        assertThatThrownBy(() -> Thresholds.read(DataFile.parse(
                        "rules/thresholds.csv", head + "A b,,any,must-fix,least,3 ft,x,y,,print,SV-01\n")))
                .hasMessageContaining("rules/thresholds.csv:3");
        assertThat(Thresholds.read(
                                DataFile.parse(
                                        "rules/thresholds.csv",
                                        head
                                                + "a,,any,must-fix,least,8 AWG,x,y,,print,SV-01\na,b,any,note,most,140 degF,x,y,,print,SV-01\n"))
                        .listOf("a"))
                .hasSize(2)
                .allSatisfy(t -> assertThat(t.limit()).isEmpty());
    }

    @Test
    void factsOfARuleAreThoseThatNameIt() {
        assertThat(RuleFacts.of("trap-nipple-length"))
                .isNotEmpty()
                .allMatch(f -> f.rules().contains("trap-nipple-length"));
        assertThat(RuleFacts.of("no-such-rule")).isEmpty();
        assertThat(RuleFacts.all())
                .hasSizeGreaterThan(RuleFacts.of("trap-nipple-length").size());
    }
}
