package longrun.checked.report;

import java.util.List;
import longrun.checked.doubt.HeldFile;
import longrun.checked.doubt.MemoryRule;
import longrun.checked.doubt.Told;
import longrun.origin.Confidence;

/** How facts are held, what is from memory, what rests on one source, what is not checked. */
final class DoubtParts {

    private DoubtParts() {}

    static Part held() {
        return new Part(
                "held",
                "How its facts are held",
                List.of(
                        "Counted are figures of a capacity table and rows of any other. Print: read in a code, standard or"
                                + " regulation. Secondary: read on a page that repeats one, or in a maker's paper."),
                List.of(new Grid(
                        "Facts by how they are held",
                        HeldFile.listAll().size() + " files",
                        List.of("What", "Print", "Secondary", "Computed", "Memory", "In their own words"),
                        HeldFile.listAll().stream().map(DoubtParts::row).toList())));
    }

    private static List<Cell> row(HeldFile f) {
        return List.of(
                Cell.of(f.what()),
                count(f, Confidence.PRINT),
                count(f, Confidence.SECONDARY),
                count(f, Confidence.COMPUTED),
                count(f, Confidence.MEMORY),
                Cell.of(f.says().isEmpty() ? "each says its own" : f.says()));
    }

    private static Cell count(HeldFile f, Confidence confidence) {
        return f.counted().isEmpty() ? Cell.of("as told") : Cell.of(f.count(confidence));
    }

    static Part memory() {
        return new Part(
                "memory",
                "Requirements held from memory",
                List.of("They bind until the authority says otherwise, and each finding that rests on one says so."),
                List.of(new Grid(
                        "Requirements held from memory",
                        MemoryRule.listAll().size() + " requirements",
                        List.of("Rule", "What is required", "Remembered from"),
                        MemoryRule.listAll().stream()
                                .map(m -> List.of(Cell.of(m.rule()), Cell.of(m.required()), Cell.of(m.source())))
                                .toList())));
    }

    static Part oneSource() {
        return new Part(
                "one-source",
                "What rests on one source",
                List.of(),
                List.of(grid("What rests on one source", "What", "On what, and what follows", Told.listOfOneSource())));
    }

    static Part notChecked() {
        return new Part(
                "not-checked",
                "What is not checked",
                List.of("Nothing outside was held against these."),
                List.of(grid("What is not checked", "What", "Why, and what stands in for it", Told.listNotChecked())));
    }

    static Grid grid(String caption, String what, String why, List<Told> told) {
        return new Grid(
                caption,
                String.valueOf(told.size()),
                List.of(what, why),
                told.stream()
                        .map(t -> List.of(Cell.of(t.what()), Cell.of(t.why())))
                        .toList());
    }
}
