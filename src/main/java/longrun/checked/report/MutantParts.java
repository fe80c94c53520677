package longrun.checked.report;

import java.util.List;
import java.util.Locale;
import longrun.checked.mutant.LeftMutant;
import longrun.checked.mutant.MutationScore;

/** Whether the tests would notice a slip in the program. */
final class MutantParts {

    private MutantParts() {}

    static Part mutants() {
        List<MutationScore> scores = MutationScore.listAll();
        int made = scores.stream().mapToInt(MutationScore::made).sum();
        int killed = scores.stream().mapToInt(MutationScore::killed).sum();
        return new Part(
                "mutants",
                "Mutants",
                List.of(
                        "A mutant is the program with one small thing wrong: a plus where a minus belongs, a limit that counts"
                                + " what is equal on the other side, an answer left out. The tests are run against each; where one"
                                + " fails, the slip would have been noticed. Those that no test notices were read one by one: they"
                                + " change nothing that anyone could see, or why they stay is told. Measured by hand, not in each"
                                + " build; packages not named here were not measured."),
                List.of(
                        new Grid(
                                "Mutants by package",
                                Lead.number(killed) + " of " + Lead.number(made) + " noticed",
                                List.of("Package", "Made", "Noticed", "Share", "Left, with the reason"),
                                scores.stream().map(MutantParts::row).toList()),
                        new Grid(
                                "Mutants that no test notices",
                                Lead.number(made - killed),
                                List.of("Where", "What is changed", "Why it stays"),
                                LeftMutant.listAll().stream()
                                        .map(MutantParts::row)
                                        .toList())));
    }

    private static List<Cell> row(MutationScore s) {
        return List.of(
                Cell.of(s.room(), s.about()),
                Cell.of(s.made()),
                Cell.of(s.killed()),
                Cell.of(String.format(Locale.ROOT, "%.1f %%", s.percent())),
                Cell.of(s.left()));
    }

    private static List<Cell> row(LeftMutant m) {
        return List.of(
                Cell.of(m.room(), m.where()),
                Cell.of((m.count() == 1 ? "" : m.count() + " times ")
                        + m.change().words()),
                Cell.of(m.why()));
    }
}
