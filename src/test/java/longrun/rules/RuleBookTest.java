package longrun.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import longrun.rules.explanation.Explanation;
import longrun.rules.explanation.Explanations;
import org.junit.jupiter.api.Test;

/** All rules with their explanations as one text, written from the same source the screens show. */
class RuleBookTest {

    private static final Path BOOK = Path.of("target", "rules.md");

    @Test
    void everyRuleStandsInTheBookWithItsLimitsAndItsExamples() throws IOException {
        StringBuilder book =
                new StringBuilder("# The rules\n\nEvery example is this house with the entries shown:\n\n");
        book.append("```json\n").append(Explanations.house()).append("```\n");
        String topic = "";
        for (Explanation e : Explanations.all()) {
            if (!e.topic().equals(topic)) {
                topic = e.topic();
                book.append("\n## ").append(topic).append('\n');
            }
            book.append("\n### ")
                    .append(e.rule())
                    .append("\n\n")
                    .append(e.title())
                    .append("\n\n");
            book.append("What can happen: ").append(e.whatCanHappen()).append("\n\n");
            for (Explanation.Section t : e.sections()) {
                book.append("- ").append(t.code().map(c -> c.written()).orElse("every code"));
                book.append(": ").append(t.required()).append("; ").append(t.source());
                book.append("; ").append(t.confidence().written()).append(".\n");
            }
            book.append("\nWrong:\n\n```json\n").append(e.wrong().entries()).append("\n```\n");
            book.append("\nRight:\n\n```json\n").append(e.right().entries()).append("\n```\n");
        }
        Files.createDirectories(BOOK.getParent());
        Files.writeString(BOOK, book);
        assertThat(Files.readString(BOOK))
                .contains(Rules.all().stream().map(r -> "### " + r.name()).toArray(String[]::new));
    }
}
