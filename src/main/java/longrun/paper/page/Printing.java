package longrun.paper.page;

import java.time.LocalDate;
import longrun.review.Review;

/**
 * What every sheet of one printing shares.
 *
 * @param review what came of the plan
 * @param planJson the plan as a file, which goes into the PDF so that whoever gets it can open the house from it
 * @param date the day that stands on each page
 * @param size the paper
 */
public record Printing(Review review, String planJson, LocalDate date, PaperSize size) {

    /** The house as it is called, or that it has no name. */
    public String house() {
        return review.plan()
                .name()
                .findValue()
                .map(String::strip)
                .filter(n -> !n.isEmpty())
                .orElse("House without a name");
    }
}
