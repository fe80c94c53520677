package longrun.checked.report;

import java.util.List;
import longrun.checked.doubt.Caveat;
import longrun.checked.doubt.FileConfidence;
import longrun.checked.doubt.RequirementFromMemory;
import longrun.origin.Confidence;

/** The parts of the report on doubts: confidence of facts, requirements from memory, single sources, what is not checked. */
final class DoubtParts {

    private DoubtParts() {}

    static Part held() {
        return new Part(
                "held",
                "Where its facts are from",
                List.of(
                        "The count is of figures in a capacity table and of rows in any other file. Print: read in a code,"
                                + " standard or regulation. Secondary: read on a page that repeats one, or in a maker's sheet."
                                + " Computed: made by the code's equation. Memory: not yet read again in print."),
                List.of(new ReportTable(
                        "Facts by source",
                        FileConfidence.listAll().size() + " files",
                        List.of("What", "Print", "Secondary", "Computed", "Memory", "What the file says"),
                        FileConfidence.listAll().stream().map(DoubtParts::row).toList())));
    }

    private static List<Cell> row(FileConfidence f) {
        return List.of(
                Cell.of(f.what()),
                count(f, Confidence.PRINT),
                count(f, Confidence.SECONDARY),
                count(f, Confidence.COMPUTED),
                count(f, Confidence.MEMORY),
                Cell.of(f.says().isEmpty() ? "each row says its own" : f.says()));
    }

    private static Cell count(FileConfidence f, Confidence confidence) {
        return f.counted().isEmpty() ? Cell.of("see last column") : Cell.of(f.count(confidence));
    }

    static Part memory() {
        return new Part(
                "memory",
                "Requirements held from memory",
                List.of(
                        "They are binding until the authority says otherwise, and each finding that rests on one says so."),
                List.of(new ReportTable(
                        "Requirements held from memory",
                        RequirementFromMemory.listAll().size() + " requirements",
                        List.of("Rule", "What is required", "Section"),
                        RequirementFromMemory.listAll().stream()
                                .map(m -> List.of(Cell.of(m.rule()), Cell.of(m.required()), Cell.of(m.source())))
                                .toList())));
    }

    static Part oneSource() {
        return new Part(
                "one-source",
                "What rests on one source",
                List.of(),
                List.of(table(
                        "What rests on one source", "What", "The source, and what follows", Caveat.listOfOneSource())));
    }

    static Part notChecked() {
        return new Part(
                "not-checked",
                "What is not checked",
                List.of("These were not compared with anything outside the program."),
                List.of(table(
                        "What is not checked", "What", "Why, and what takes its place", Caveat.listNotChecked())));
    }

    static ReportTable table(String caption, String what, String why, List<Caveat> caveats) {
        return new ReportTable(
                caption,
                String.valueOf(caveats.size()),
                List.of(what, why),
                caveats.stream()
                        .map(t -> List.of(Cell.of(t.what()), Cell.of(t.why())))
                        .toList());
    }
}
