package longrun.checked.report;

import java.util.List;
import longrun.checked.CheckedCase;
import longrun.checked.doubt.Caveat;
import longrun.checked.published.PublishedCase;
import longrun.checked.published.Tolerance;
import longrun.quantity.Show;

/** The parts of the report on published cases: those worked out, and those that cannot be. */
final class PublishedCaseParts {

    private PublishedCaseParts() {}

    static Part cases() {
        return new Part(
                "cases",
                "Published cases",
                List.of(
                        "Each is worked out as this report is made, by the same code that works out a house. Where a source is"
                                + " a page, a shop or a maker, only its kind is named."),
                CheckedCase.listAll().stream().map(PublishedCaseParts::table).toList());
    }

    private static ReportTable table(CheckedCase.Group group) {
        return new ReportTable(
                group.title(),
                sum(group.cases()),
                List.of("Case", "Published", "This program", "Difference", "Allowed, and why"),
                group.cases().stream().map(PublishedCaseParts::row).toList());
    }

    private static String sum(List<CheckedCase> cases) {
        long same = cases.stream().filter(c -> c.worst() < 1e-9).count();
        long beyond = cases.stream().filter(c -> !c.holds()).count();
        return cases.size() + " cases, " + (same == 0 ? "none" : same == cases.size() ? "all" : same)
                + " without a difference"
                + (beyond == 0 ? ", none beyond what is allowed" : ", " + beyond + " beyond what is allowed");
    }

    private static List<Cell> row(CheckedCase c) {
        PublishedCase p = c.published();
        String unit = p.isSizes() ? "in." : p.unit();
        return List.of(
                Cell.of(p.title(), p.given(), "From: " + p.source() + held(p)),
                Cell.of(String.join(", ", p.published()), unit),
                Cell.of(String.join(", ", c.ours()), unit),
                Cell.of(c.differenceWords(), c.holds() ? "" : "more than is allowed"),
                Cell.of(allowed(p), p.why()));
    }

    private static String held(PublishedCase p) {
        return switch (p.confidence()) {
            case SECONDARY -> " (secondary)";
            case MEMORY -> " (held from memory)";
            default -> "";
        };
    }

    private static String allowed(PublishedCase p) {
        Tolerance tolerance = p.tolerance();
        if (tolerance.most() == 0) {
            return "none";
        }
        if (p.isSizes()) {
            return Show.whole(tolerance.most()) + " size";
        }
        return tolerance.words(tolerance.most(), p.unit());
    }

    static Part notHeld() {
        return new Part(
                "not-held",
                "Published cases it cannot work out",
                List.of("Neither a plan nor a figure of this program can represent these cases."),
                List.of(DoubtParts.table("Cases not worked out", "Case", "Why not", Caveat.listNotHeld())));
    }
}
