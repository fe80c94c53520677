package longrun.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longrun.Samples;
import longrun.paper.page.PaperSize;
import longrun.paper.page.Printing;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/**
 * The demo's sizes redone from the words of the sheet and the table files alone, as an inspector does with the book:
 * 2018 IFGC Table 402.4(28), Schedule 40 steel at 11 in. w.c. and 0.5 in. drop, with its shifted length labels put right.
 */
class SizingScheduleTest {

    private static final String TABLE = "/longrun/data/tables/steel-sch40-11inwc-0.5inwc-propane.csv";
    private static final Pattern RUN = Pattern.compile("Longest run ([0-9.]+) ft");

    private final List<Element> elements = elements();

    private static List<Element> elements() {
        String json = Samples.resource("/longrun/data/demo/orchard-house.json");
        Printing printing = new Printing(
                Reviewer.standard().review(Samples.plan(json), ReviewParts.ALL),
                json,
                LocalDate.of(2026, 10, 1),
                PaperSize.LETTER);
        return new SizingSchedule(printing.review()).elements();
    }

    private static Map<Double, List<String>> book() throws Exception {
        Map<Double, List<String>> rows = new LinkedHashMap<>();
        try (BufferedReader in = new BufferedReader(
                new InputStreamReader(SizingScheduleTest.class.getResourceAsStream(TABLE), StandardCharsets.UTF_8))) {
            List<String> lines =
                    in.lines().filter(l -> !l.startsWith("#") && !l.isBlank()).toList();
            rows.put(0.0, List.of(lines.get(0).split(",", -1)));
            lines.stream()
                    .skip(1)
                    .map(l -> List.of(l.split(",", -1)))
                    .filter(c -> c.get(0).matches("[0-9.]+"))
                    .forEach(c -> rows.put(Double.parseDouble(c.get(0)), c));
        }
        return rows;
    }

    private List<List<String>> rows() {
        Element table = elements.stream()
                .filter(e -> e.tagName().equals("table"))
                .findFirst()
                .orElseThrow();
        List<List<String>> out = new ArrayList<>();
        table.select("tbody tr").forEach(tr -> out.add(tr.select("td").eachText()));
        return out;
    }

    private double longestRunBehind(String regulator) {
        String words = elements.stream()
                .map(Element::text)
                .filter(t -> t.startsWith("Behind " + regulator))
                .findFirst()
                .orElseThrow();
        Matcher run = RUN.matcher(words);
        assertThat(run.find()).isTrue();
        return Double.parseDouble(run.group(1));
    }

    @Test
    void everySteelSizeFollowsFromTheSheetAndTheBook() throws Exception {
        Map<Double, List<String>> book = book();
        double run = longestRunBehind("R2");
        double row = book.keySet().stream()
                .filter(r -> r >= run)
                .mapToDouble(r -> r)
                .min()
                .orElseThrow();
        List<List<String>> steel =
                rows().stream().filter(r -> r.get(2).startsWith("steel")).toList();
        assertThat(steel).hasSize(5);
        for (List<String> line : steel) {
            double load = Double.parseDouble(line.get(5).replace(",", ""));
            int column = 1;
            while (1000 * Double.parseDouble("0" + book.get(row).get(column)) < load) {
                column++;
            }
            assertThat(Double.parseDouble(line.get(7)))
                    .as("row of %s", line.get(0))
                    .isEqualTo(row);
            assertThat(line.get(8))
                    .as("size of %s", line.get(0))
                    .isEqualTo(book.get(0.0).get(column));
            assertThat(line.get(10).replace(",", ""))
                    .as("cell of %s", line.get(0))
                    .isEqualTo(book.get(row).get(column) + "000");
        }
    }

    @Test
    void aHouseHalfEnteredHasBlanksAndNoZero() {
        String json = "{\"format\":\"longrun-plan/1\",\"sections\":[{\"id\":\"A\",\"material\":\"steel\"}]}";
        List<Element> half =
                new SizingSchedule(Reviewer.standard().review(Samples.plan(json), ReviewParts.ALL)).elements();
        String text = half.stream().map(Element::text).reduce("", (a, b) -> a + " " + b);
        assertThat(text).contains("not yet sized").doesNotContain(" 0 ").doesNotContain("0.0");
    }

    @Test
    void aSizeThatAnEntryMayStillChangeIsMarkedSoFar() {
        String json = Samples.resource("/longrun/data/demo/orchard-house.json")
                .replace(
                        "\"legs\": [\"east 8 ft\", \"down 5 ft\"] }",
                        "\"legs\": [\"east 8 ft\"] }, { \"id\": \"Z\", \"material\": \"steel\","
                                + " \"legs\": [\"5 ft\"], \"capped\": true, \"reserve\": \"20,000 Btu/h\" }");
        String text = new SizingSchedule(Reviewer.standard().review(Samples.plan(json), ReviewParts.ALL))
                .elements().stream().map(Element::text).reduce("", (a, b) -> a + " " + b);
        assertThat(text).contains("print, so far", "It is not a size to cut pipe by.");
    }

    @Test
    void partsCountedThoughNobodyEnteredThemAreNamed() {
        String json = Samples.resource("/longrun/data/demo/orchard-house.json")
                .replaceFirst("(?s)\"fedBy\": \"D\",\\s*\"connection\": \\[.*?\\] \\}", "\"fedBy\": \"D\" }");
        String text = new SizingSchedule(Reviewer.standard().review(Samples.plan(json), ReviewParts.ALL))
                .elements().stream().map(Element::text).reduce("", (a, b) -> a + " " + b);
        assertThat(text).contains("Counted, not entered:", "D: shutoff");
    }
}
