package longrun.draft.run;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.draft.sections.TableRow;
import longrun.finding.Finding;
import longrun.quantity.Bore;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;

/**
 * What Size a run shows of a review.
 *
 * @param lines the answers by the letters of the lines
 * @param findings must-fix findings, cautions, and the questions on which the sizes depend
 * @param alsoAsked the other questions, on appliances, regulators and where they stand
 */
public record RunAnswer(Map<String, LineAnswer> lines, List<Finding> findings, List<Finding> alsoAsked) {

    public RunAnswer {
        lines = Map.copyOf(lines);
        findings = List.copyOf(findings);
        alsoAsked = List.copyOf(alsoAsked);
    }

    /** No answer. */
    public static final RunAnswer NOTHING = new RunAnswer(Map.of(), List.of(), List.of());

    /** How far a line is sized. */
    public enum Status {
        SIZED,
        NO_SIZE,
        UNKNOWN
    }

    /**
     * One line's answer.
     *
     * @param load what it carries; empty while that is unknown
     * @param stage the longest run of its stage; empty while that is unknown
     * @param cell the cell from which its size was read; empty without a size
     * @param soFar whether a load of its stage is not yet known, so that the size may still become larger
     */
    public record LineAnswer(
            Status status, Optional<HeatRate> load, Optional<StageRun> stage, Optional<Sized> cell, boolean soFar) {}

    /**
     * The longest run of a stage, which sets the row for all its lines.
     *
     * @param measured sum of the measured lengths
     * @param withFittings the measured length and the fitting allowance
     * @param added the fitting allowance
     * @param enteredParts the same with only the parts entered; empty where no other part is counted
     * @param row the row of the table; empty where no row is as long
     * @param to the letter of the line at its end, or the name of what it ends at
     * @param regulator the id of the regulator at its start
     * @param sum its lengths one by one, then their sum
     */
    public record StageRun(
            Length measured,
            Length withFittings,
            Length added,
            Optional<EnteredParts> enteredParts,
            Optional<Length> row,
            String to,
            String regulator,
            List<Term> sum) {

        /** The same sum with equal parts of several lines added together, to fit on paper. */
        public List<Term> gathered() {
            Map<String, Length> parts = new LinkedHashMap<>();
            sum.forEach(t -> parts.merge(t.part(), t.length(), Length::plus));
            return parts.entrySet().stream()
                    .map(e -> new Term(Optional.empty(), e.getKey(), e.getValue()))
                    .toList();
        }
    }

    /** The longest run and the size of the line, counting only the parts that are entered. */
    public record EnteredParts(Length run, Optional<String> size) {}

    /**
     * A size read from a table.
     *
     * @param od the outside diameter by which the same copper tube is sold; empty for other pipe
     * @param sharePercent the share of the capacity used, percent
     */
    public record Sized(
            String size,
            Optional<String> od,
            HeatRate capacity,
            double sharePercent,
            ReadIn readIn,
            List<WhyStep> why,
            Optional<Bore> bore) {}

    /**
     * Where a size was read.
     *
     * @param table the title of the table, its inlet pressure and its drop
     * @param held a sentence on the confidence of its cell
     */
    public record ReadIn(String table, TableRow row, String source, String held) {}

    /** A step of "where from?": a heading, its text, and the terms of a sum where there is one. */
    public record WhyStep(String title, String text, List<Term> sum) {}

    /**
     * A term of a sum, or the sum as the last.
     *
     * @param section the id of its section; empty where the part names it, or it belongs to the whole run
     * @param part what it is, in the words of the trade
     */
    public record Term(Optional<String> section, String part, Length length) {

        Term(String part, Length length) {
            this(Optional.empty(), part, length);
        }

        /** What it is, with its section. */
        public String what() {
            return section.map(s -> s + ", " + part).orElse(part);
        }
    }
}
