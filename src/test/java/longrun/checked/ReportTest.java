package longrun.checked;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import longrun.checked.doubt.FileConfidence;
import longrun.checked.published.CaseGroup;
import longrun.checked.report.BuildResult;
import longrun.checked.report.Report;
import longrun.paper.checked.CheckedFile;
import longrun.words.CautionWords;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** What the report on what was checked says, and that nothing is left out of it. */
class ReportTest {

    private static final LocalDate DAY = LocalDate.of(2026, 12, 1);

    @Test
    void everyPublishedCaseStandsInItWithItsSource() {
        Document page = Jsoup.parse(CheckedFile.html(Report.live(), DAY));
        String cases = page.select("#cases").text();
        CaseGroup.listAll().stream()
                .flatMap(g -> g.cases().stream())
                .forEach(c -> assertThat(cases).contains(c.title(), c.given(), c.source(), c.why()));
        assertThat(page.select("#cases tbody tr")).hasSize((int)
                CaseGroup.listAll().stream().mapToLong(g -> g.cases().size()).sum());
        assertThat(page.text()).contains(CautionWords.CARE, CautionWords.SMELL);
        assertThat(page.select("#not-checked tbody tr")).isNotEmpty();
        assertThat(page.select("#memory tbody tr")).isNotEmpty();
        assertThat(page.select("#equation tbody tr")).hasSize(10 + 19);
    }

    @Test
    void aCaseBeyondItsToleranceIsNotCountedAmongThoseThatHold() {
        assertThat(Report.live().lead().get(0)).contains("all are within the tolerance of the case");
        assertThat(CheckedCase.listAll()).allSatisfy(g -> assertThat(g.cases()).allMatch(CheckedCase::holds));
    }

    @Test
    void aBuildTellsWhatItsTestsFoundAndWhatDidNotRun() {
        Map<String, BuildResult> found = Map.of("sizing", new BuildResult(123, 7, 0, "2026-12-01T00:00:00Z"));
        Document page = Jsoup.parse(CheckedFile.html(Report.of(found), DAY));
        String ways = page.select("#second-way").text();
        assertThat(ways).contains("123 random houses", "from seed 7", "all the same", "not run in this build");
        assertThat(page.select("#second-way tbody tr"))
                .hasSize(SecondWay.listAll().size());
    }

    /** Every file of facts is told of; lists of words, own lists and the checked cases themselves are no facts. */
    @Test
    void noFileOfFactsIsLeftOut() throws IOException {
        List<String> own = List.of("tables/index.csv");
        try (Stream<Path> files = Files.walk(Path.of("data"))) {
            List<String> facts = files.map(f -> Path.of("data").relativize(f).toString())
                    .filter(f -> f.endsWith(".csv") && !f.startsWith("checked/") && !f.startsWith("words/"))
                    .filter(f -> !own.contains(f))
                    .toList();
            assertThat(FileConfidence.listAll())
                    .extracting(FileConfidence::file)
                    .containsExactlyInAnyOrderElementsOf(facts);
        }
    }

    @Test
    void thePageAndThePrintOfTheBuildAreWritten() throws IOException {
        Path folder = Path.of("target", "checked");
        BuildReport.write(folder);
        assertThat(Files.readString(folder.resolve("checked.html"))).contains(Report.TITLE);
        assertThat(Files.readAllBytes(folder.resolve("checked.pdf")))
                .startsWith("%PDF".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    }
}
