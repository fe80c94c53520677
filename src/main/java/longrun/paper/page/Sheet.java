package longrun.paper.page;

import java.util.List;
import longrun.review.Review;
import longrun.words.Names;
import org.jsoup.nodes.Element;

/** One kind of sheet: what it is called, for whom it is, and what stands on it. */
public interface Sheet {

    /** Its name in an address, such as {@code supplier}. */
    String slug();

    /** What stands large at its head. */
    String title();

    /** Whom it is for, and what it is not. */
    String under();

    /** What it is for and for whom, in a sentence for whoever chooses among the sheets. */
    default String purpose() {
        return Names.capital(under());
    }

    /** What is still open in it, in a few words each; empty where nothing is. */
    default List<String> stillOpen(Review review) {
        return OpenOnPaper.findings(review);
    }

    /** Whether the facts of the house stand under the head: by which code it was sized, by which method. */
    default boolean opensWithFacts() {
        return true;
    }

    /** The sheets that come when this one alone is asked for, in order. */
    default List<Sheet> printedWith(Printing printing) {
        return List.of(this);
    }

    /**
     * What stands on its pages.
     *
     * @param broad whether they lie broadside
     */
    record Pages(boolean broad, List<Element> body) {}

    /** Its pages, asked for once a printing. */
    default Pages pages(Printing printing) {
        return new Pages(false, body(printing));
    }

    /** What stands under the head and the facts, in order; never empty. */
    List<Element> body(Printing printing);
}
