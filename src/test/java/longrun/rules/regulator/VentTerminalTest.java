package longrun.rules.regulator;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longrun.Samples;
import longrun.finding.Finding;
import longrun.rules.shape.House;
import longrun.rules.shape.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * From a regulator's relief to the end of an appliance's vent: 5 ft where the appliance is direct-vent (NFPA 58 2017
 * 6.10.1.6), 3 ft for another fan vent (common practice of makers' instructions). The distance may be entered on either
 * side. A row: the regulators (second-stage, line outdoors, line with its place not entered, kind not entered), the
 * appliances, each with its distance, "-" for not entered; then what is said at each, in that order.
 */
class VentTerminalTest {

    private static String entry(String name, String value) {
        return value.isEmpty() || value.equals("-") ? "" : ",\"" + name + "\":\"" + value + "\"";
    }

    private static String regulator(int i, String text) {
        String[] words = text.strip().split(" ", 2);
        String stands = switch (words[0]) {
            case "second" -> entry("kind", "second-stage") + entry("setting", "outdoors");
            case "line-outdoors" -> entry("kind", "line") + entry("setting", "outdoors");
            case "line-indoors" -> entry("kind", "line") + entry("setting", "indoors");
            case "line" -> entry("kind", "line");
            case "regulator" -> "";
            default -> throw new IllegalArgumentException(text);
        };
        return "{\"id\":\"R" + i + "\"" + stands + entry("ventToVentTerminal", words[1]) + "}";
    }

    private static String appliance(int i, String text) {
        String[] words = text.strip().split(" ", 2);
        String vent = words[0].equals("unknown") ? "" : entry("vent", words[0]);
        return "{\"id\":\"A" + i + "\"" + vent + entry("terminalToRegulator", words[1]) + "}";
    }

    private static String list(String texts, BiFunction<Integer, String, String> each) {
        List<String> out = new ArrayList<>();
        for (String text : texts.split(";")) {
            if (!text.isBlank()) {
                out.add(each.apply(out.size(), text));
            }
        }
        return String.join(",", out);
    }

    private static House house(String regulators, String appliances) {
        return House.of(Samples.plan("{\"format\":\"longrun-plan/1\",\"regulators\":["
                + list(regulators, VentTerminalTest::regulator) + "],\"appliances\":["
                + list(appliances, VentTerminalTest::appliance) + "]}"));
    }

    private static List<Verdict> judge(String regulators, String appliances) {
        House house = house(regulators, appliances);
        return Stream.of(new VentTerminalAtRegulator(), new VentTerminalAtAppliance())
                .flatMap(rule -> rule.judge(house).stream())
                .toList();
    }

    /** The state at each place, with the entry to change where something is told there. */
    private static String said(String regulators, String appliances) {
        return judge(regulators, appliances).stream()
                .map(v -> v.state().state().written()
                        + v.field()
                                .map(f -> " " + f.replace("/regulators/", "R").replace("/appliances/", "A"))
                                .orElse(""))
                .collect(Collectors.joining("; "));
    }

    private static List<Finding> told(String regulators, String appliances) {
        return judge(regulators, appliances).stream()
                .flatMap(v -> v.finding().stream())
                .toList();
    }

    @ParameterizedTest(name = "{0} | {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "second 4 ft | direct 4.5 ft | broken R0/ventToVentTerminal; broken",
                "second 4.5 ft | direct 4 ft | broken; broken A0/terminalToRegulator",
                "second 4 ft | direct 4 ft | broken R0/ventToVentTerminal; broken",
                "second 6 ft | direct 4 ft | broken; broken A0/terminalToRegulator",
                "second - | direct 4 ft | broken; broken A0/terminalToRegulator",
                "second 4 ft | direct - | broken R0/ventToVentTerminal; broken",
                "second none | direct 4 ft | broken; broken A0/terminalToRegulator",
                "second 4 ft | direct 4.5 ft; direct 3 ft | broken; broken; broken A1/terminalToRegulator",
                "second 6 ft; second 6 ft | direct 4 ft | holds; holds; broken A0/terminalToRegulator",
                "second 4 ft; second 6 ft | direct 5 ft | broken R0/ventToVentTerminal; holds; holds",
                "second > 2 ft | direct 4 ft | asks R0/ventToVentTerminal; broken A0/terminalToRegulator",
                "second 4 ft | direct > 2 ft | broken R0/ventToVentTerminal; asks A0/terminalToRegulator"
            })
    void distanceTooSmallIsToldOnceWhereTheSmallerWasEntered(String regulators, String appliances, String said) {
        assertThat(said(regulators, appliances)).isEqualTo(said);
    }

    @ParameterizedTest(name = "{0} | {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "second - | direct 5 ft | holds; holds",
                "second - | direct none | holds; holds",
                "second none | direct none | holds; holds",
                "second none | direct - | holds; holds",
                "second 5 ft | direct - | holds; holds",
                "second - | direct - | asks R0/ventToVentTerminal; asks",
                "second - | direct 6 ft; direct - | asks R0/ventToVentTerminal; holds; asks",
                "second - | direct 6 ft; draft - | holds; holds; not-for-this-plan",
                "second - | direct > 4 ft | asks R0/ventToVentTerminal; asks A0/terminalToRegulator",
                "second 6 ft; second - | direct - | holds; asks R1/ventToVentTerminal; asks"
            })
    void distanceEnteredOnOneSideServesTheOther(String regulators, String appliances, String said) {
        assertThat(said(regulators, appliances)).isEqualTo(said);
    }

    @ParameterizedTest(name = "{0} | {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "second 4 ft | draft - | not-for-this-plan; not-for-this-plan",
                "second - | none - | not-for-this-plan; not-for-this-plan",
                "second - | '' | not-for-this-plan",
                "second - | fan - | asks R0/ventToVentTerminal; asks",
                "second - | unknown - | asks R0/ventToVentTerminal; asks",
                "'' | direct 4 ft | not-for-this-plan",
                "line-indoors 4 ft | direct 4 ft | not-for-this-plan; not-for-this-plan",
                "line-outdoors 4 ft | direct - | broken R0/ventToVentTerminal; broken"
            })
    void onlyAVentThroughTheWallAndARegulatorOutdoorsKeepApart(String regulators, String appliances, String said) {
        assertThat(said(regulators, appliances)).isEqualTo(said);
    }

    @ParameterizedTest(name = "{0} | {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "second 3 ft | fan - | holds; holds",
                "second 2.9 ft | fan - | broken R0/ventToVentTerminal; broken",
                "second - | fan 3 ft | holds; holds",
                "second - | fan 2.9 ft | broken; broken A0/terminalToRegulator",
                "second > 2 ft | fan - | asks R0/ventToVentTerminal; asks",
                "second 4 ft | fan -; direct 6 ft | holds; holds; holds",
                "second 4 ft | fan -; direct none | holds; holds; holds",
                "second 4 ft | fan -; direct - | asks A1/terminalToRegulator; asks; asks",
                "second 4 ft | fan -; direct > 4 ft | asks R0/ventToVentTerminal; asks; asks A1/terminalToRegulator",
                "second 2.9 ft | fan -; direct 6 ft | broken R0/ventToVentTerminal; broken; holds",
                "second 6 ft | fan -; direct - | holds; holds; holds"
            })
    void fanVentKeepsThreeFeetWhereEveryDirectVentIsFar(String regulators, String appliances, String said) {
        assertThat(said(regulators, appliances)).isEqualTo(said);
    }

    @ParameterizedTest(name = "{0} | {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "second 4 ft | unknown - | asks A0/vent; asks",
                "second 4 ft | fan -; unknown - | asks A1/vent; asks; asks",
                "second 4 ft | fan -; unknown 6 ft | holds; holds; holds",
                "second 4 ft | direct 6 ft; unknown - | asks A1/vent; holds; asks",
                "second 2.9 ft | unknown - | broken R0/ventToVentTerminal; broken",
                "second 6 ft | unknown 4 ft | holds; asks A0/vent",
                "second 6 ft | unknown 2.9 ft | broken; broken A0/terminalToRegulator",
                "second 6 ft | unknown > 2 ft | holds; asks A0/vent"
            })
    void ventThatMayBeDirectAsksBetweenThreeAndFiveFeet(String regulators, String appliances, String said) {
        assertThat(said(regulators, appliances)).isEqualTo(said);
    }

    @ParameterizedTest(name = "{0} | {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "regulator 4 ft | direct - | asks R0/kind; asks",
                "regulator - | direct 4 ft | asks R0/kind; asks",
                "regulator - | direct 6 ft | asks R0/kind; holds",
                "regulator - | draft - | asks R0/kind; not-for-this-plan",
                "second 6 ft; regulator 4 ft | direct - | holds; asks R1/kind; asks",
                "second 6 ft; regulator 6 ft | direct - | holds; asks R1/kind; holds",
                "second 6 ft; regulator - | direct - | holds; asks R1/kind; asks",
                "second 6 ft; line-indoors - | direct - | holds; not-for-this-plan; holds",
                "line none | direct none | holds; holds",
                "line - | direct 6 ft | holds; holds",
                "line - | direct 4 ft | asks R0/setting; asks",
                "line 6 ft | direct 4 ft | asks R0/setting; asks",
                "line 4 ft | direct - | asks R0/setting; asks",
                "second 6 ft; line 6 ft | direct 4 ft | broken; holds; broken A0/terminalToRegulator"
            })
    void regulatorThatMayBeOutdoorsAsks(String regulators, String appliances, String said) {
        assertThat(said(regulators, appliances)).isEqualTo(said);
    }

    @Test
    void limitToldIsThatOfTheVentInTheHouse() {
        assertThat(told("second 2.9 ft", "fan -"))
                .extracting(Finding::remedy)
                .containsExactly(
                        "Move the vent of the second-stage regulator R0 to 3 ft or more from the vent terminal, or pipe it"
                                + " there.");
        assertThat(told("second 2.9 ft", "direct -"))
                .extracting(Finding::remedy)
                .allMatch(r -> r.contains(" 5 ft "));
        assertThat(told("second 2.9 ft", "unknown -"))
                .extracting(Finding::remedy)
                .allMatch(r -> r.contains(" 5 ft "));
        assertThat(told("second -", "fan 2.9 ft"))
                .extracting(Finding::remedy)
                .allMatch(r -> r.contains(" 3 ft "))
                .hasSize(1);
        assertThat(told("second -", "direct 2.9 ft"))
                .extracting(Finding::remedy)
                .allMatch(r -> r.contains(" 5 ft "))
                .hasSize(1);
    }

    @Test
    void whetherAVentIsDirectIsAskedOnlyWhereItMayBeEither() {
        assertThat(told("second 4 ft", "fan -; direct -"))
                .extracting(f -> f.ask().orElseThrow())
                .containsExactly("How far is the second-stage regulator R0 from the nearest direct-vent terminal?");
        String open = "; whether that is a direct-vent one is not clear";
        assertThat(told("second > 4 ft", "direct -")).extracting(Finding::found).noneMatch(f -> f.contains(open));
        assertThat(told("second > 2 ft", "fan -")).extracting(Finding::found).noneMatch(f -> f.contains(open));
        assertThat(told("second 4 ft", "fan -; direct -"))
                .extracting(Finding::found)
                .allMatch(f -> f.endsWith(" is 4 ft from the nearest vent terminal" + open));
        assertThat(told("second 6 ft", "unknown 4 ft"))
                .extracting(f -> f.found().contains("whether it is a direct-vent one is not entered"))
                .containsExactly(true);
        assertThat(told("second 6 ft", "direct > 4 ft"))
                .extracting(f -> f.found().contains("whether it is a direct-vent one"))
                .containsExactly(false);
    }
}
