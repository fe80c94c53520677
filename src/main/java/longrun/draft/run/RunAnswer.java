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
 * What the page shows of a review: no more than the screen needs, in quantities, not in text.
 *
 * @param lines by letter
 * @param findings what must be mended or wants care, and the questions its sizes rest on
 * @param alsoAsked what is asked besides, of appliances, regulators and their places
 */
public record RunAnswer(Map<String, LineAnswer> lines, List<Finding> findings, List<Finding> alsoAsked) {

    public RunAnswer {
        lines = Map.copyOf(lines);
        findings = List.copyOf(findings);
        alsoAsked = List.copyOf(alsoAsked);
    }

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
     * @param stage the run it belongs to; empty while that is unknown
     * @param cell the row and cell its size was read in
     * @param soFar whether a load of its stage is still to come, so that the size may yet grow
     */
    public record LineAnswer(
            Status status, Optional<HeatRate> load, Optional<StageRun> stage, Optional<Sized> cell, boolean soFar) {}

    /**
     * The longest run of a stage, which decides the row for all its lines.
     *
     * @param measured sum of the measured lengths
     * @param withFittings with what the fitting switch adds
     * @param bare without the parts at its ends that are counted though nobody has entered them; empty where there are
     *     none
     * @param to letter of the line it ends with, or the name of what it ends at
     * @param regulator id of the regulator it lies behind
     * @param sum its lengths one by one; the last is the sum
     */
    public record StageRun(
            Length measured,
            Length withFittings,
            Length added,
            Optional<Bare> bare,
            Optional<Length> row,
            String to,
            String regulator,
            List<Term> sum) {

        /** The same sum with like parts of several lines taken together, as paper has room for it. */
        public List<Term> gathered() {
            Map<String, Length> parts = new LinkedHashMap<>();
            sum.forEach(t -> parts.merge(t.part(), t.length(), Length::plus));
            return parts.entrySet().stream()
                    .map(e -> new Term(Optional.empty(), e.getKey(), e.getValue()))
                    .toList();
        }
    }

    /** The longest run and the line's size if there were no parts but those entered. */
    public record Bare(Length run, Optional<String> size) {}

    /**
     * A size read in a table.
     *
     * @param od outside diameter by which the same copper tube is sold
     * @param share of the capacity used, percent
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
     * @param table what the table is called, and from what pressure to what drop it holds
     * @param held how its cell is held
     */
    public record ReadIn(String table, TableRow row, String source, String held) {}

    /** One answer of where from: a heading, its text, and a sum where there is one. */
    public record WhyStep(String title, String text, List<Term> sum) {}

    /**
     * A term of a sum; the last is the sum.
     *
     * @param section id of the section it stands in; empty where that is said in the part, or it is of the whole run
     * @param part in trade words
     */
    public record Term(Optional<String> section, String part, Length length) {

        Term(String part, Length length) {
            this(Optional.empty(), part, length);
        }

        /** What it is, with the section it stands in. */
        public String what() {
            return section.map(s -> s + ", " + part).orElse(part);
        }
    }
}
