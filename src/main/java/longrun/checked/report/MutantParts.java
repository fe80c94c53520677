package longrun.checked.report;

import java.util.List;
import java.util.Locale;
import longrun.checked.mutant.MutationScore;
import longrun.checked.mutant.SurvivingMutant;

/** The part of the report on mutants: whether the tests would notice a mistake in the program. */
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
                        "A mutant is the program with one small thing wrong: a plus in place of a minus, a limit that counts an"
                                + " equal value on the other side, a result left out. The tests are run against each mutant; where"
                                + " one fails, such a mistake would have been noticed. Those that no test notices were reviewed one"
                                + " by one: either they change nothing anyone could see, or the reason they stay is given. This is"
                                + " measured by hand, last on " + MutationScore.measured()
                                + ", and not in each build. Drawings, papers, screens and the saving of houses were not"
                                + " measured."),
                List.of(
                        new ReportTable(
                                "Mutants by package",
                                Summary.number(killed) + " of " + Summary.number(made) + " noticed",
                                List.of("Package", "Made", "Noticed", "Share", "Not noticed"),
                                scores.stream().map(MutantParts::row).toList()),
                        new ReportTable(
                                "Mutants that no test notices",
                                Summary.number(made - killed),
                                List.of("Where", "What is changed", "Why it stays"),
                                SurvivingMutant.listAll().stream()
                                        .map(MutantParts::row)
                                        .toList())));
    }

    private static List<Cell> row(MutationScore s) {
        return List.of(
                Cell.of(s.room(), s.about()),
                Cell.of(s.made()),
                Cell.of(s.killed()),
                Cell.of(String.format(Locale.ROOT, "%.1f %%", s.percent())),
                Cell.of(s.survivors()));
    }

    private static List<Cell> row(SurvivingMutant m) {
        return List.of(
                Cell.of(m.room(), m.where()),
                Cell.of((m.count() == 1 ? "" : m.count() + " times: ")
                        + m.change().words()),
                Cell.of(m.why()));
    }
}
