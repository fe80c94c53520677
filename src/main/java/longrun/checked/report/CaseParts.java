package longrun.checked.report;

import java.util.List;
import longrun.checked.Checked;
import longrun.checked.doubt.Told;
import longrun.checked.published.PublishedCase;
import longrun.checked.published.Within;
import longrun.quantity.Show;

/** Published cases with our figures, and those that cannot be held. */
final class CaseParts {

    private CaseParts() {}

    static Part cases() {
        return new Part(
                "cases",
                "Published cases",
                List.of(
                        "Each is worked out by the same code that answers a house, now, as this is made. Where a source is a"
                                + " page, a shop or a maker it is called by its kind alone."),
                Checked.listAll().stream().map(CaseParts::grid).toList());
    }

    private static Grid grid(Checked.Group group) {
        return new Grid(
                group.title(),
                sum(group.cases()),
                List.of("Case", "Published", "Ours", "Difference", "Allowed, and why"),
                group.cases().stream().map(CaseParts::row).toList());
    }

    private static String sum(List<Checked> cases) {
        long same = cases.stream().filter(c -> c.worst() < 1e-9).count();
        long beyond = cases.stream().filter(c -> !c.holds()).count();
        return cases.size() + " cases, " + (same == 0 ? "none" : same == cases.size() ? "all" : same)
                + " without difference"
                + (beyond == 0 ? ", none beyond what is allowed" : ", " + beyond + " beyond what is allowed");
    }

    private static List<Cell> row(Checked c) {
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
        Within within = p.within();
        if (within.most() == 0) {
            return "none";
        }
        if (p.isSizes()) {
            return Show.whole(within.most()) + " size";
        }
        return within.words(within.most(), p.unit());
    }

    static Part notHeld() {
        return new Part(
                "not-held",
                "Published cases that it cannot hold",
                List.of("They were looked at, and neither a plan nor a figure of the program can hold them."),
                List.of(DoubtParts.grid("Cases not held", "Case", "Why not", Told.listNotHeld())));
    }
}
