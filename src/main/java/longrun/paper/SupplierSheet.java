package longrun.paper;

import java.util.ArrayList;
import java.util.List;
import longrun.review.Review;
import org.jsoup.nodes.Element;

/** For whoever sells and brings the gas: what is asked of him first, then what it rests on. */
final class SupplierSheet implements Sheet {

    @Override
    public String slug() {
        return "supplier";
    }

    @Override
    public String title() {
        return "Propane supply: supplier sheet";
    }

    @Override
    public String under() {
        return "for the gas supplier. Not an order and not an approval.";
    }

    @Override
    public List<Element> body(Printing printing) {
        Review review = printing.review();
        List<Element> out = new ArrayList<>();
        out.add(SupplierQuestions.of(review));
        out.addAll(LoadTables.elements(review));
        out.addAll(RegulatorTable.forSupplier(review));
        out.addAll(TankLines.elements(review));
        out.addAll(YearLines.elements(review));
        out.addAll(notKnown(review));
        return out;
    }

    /** What the figures lack, each once. */
    private static List<Element> notKnown(Review review) {
        List<String> lacking = new ArrayList<>();
        review.tank().ifPresent(t -> t.missing().forEach(m -> lacking.add(m.words())));
        review.fuel().ifPresent(f -> f.missing().forEach(m -> lacking.add(m.words())));
        List<String> once =
                lacking.stream().filter(w -> !w.isBlank()).distinct().toList();
        if (once.isEmpty()) {
            return List.of();
        }
        return List.of(
                Html.heading("Not known yet", "a figure that rests on it is a blank above"),
                Html.text("p", "", "\u25CB " + String.join("  \u25CB ", once)));
    }
}
