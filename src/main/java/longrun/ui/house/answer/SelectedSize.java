package longrun.ui.house.answer;

import com.vaadin.flow.dom.Element;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import longrun.draft.DefaultSection;
import longrun.draft.HouseState;
import longrun.plan.choice.Material;
import longrun.quantity.HeatRate;
import longrun.review.Review;
import longrun.sizing.SectionSize;
import longrun.ui.frame.AnswerHead;
import longrun.ui.frame.BigSize;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.words.IsolatedName;
import longrun.words.ProvisionalSize;

/** The size of the selected section, large. */
final class SelectedSize {

    private final HousePage desk;
    private final AnswerHead head;

    SelectedSize(HousePage desk, AnswerHead head) {
        this.desk = desk;
        this.head = head;
    }

    /** The selected size for the foot strip. */
    String sizeInShort(HouseState now) {
        Optional<Review> review = desk.session().review();
        OptionalInt index = review.map(this::inHand).orElse(OptionalInt.empty());
        return index.isPresent()
                ? review.get().sizing().section(index.getAsInt()).size().orElse(now.unsized())
                        + ProvisionalSize.suffix(review.get(), index.getAsInt())
                : now.unsized();
    }

    /** What the foot strip calls it. */
    String inShort() {
        Optional<Review> review = desk.session().review();
        OptionalInt index = review.map(this::inHand).orElse(OptionalInt.empty());
        return index.isPresent()
                ? "Section " + review.get().piping().section(index.getAsInt()).id()
                : "Size";
    }

    void show(Optional<Review> review, HouseState now, Map<String, String> spoken) {
        OptionalInt index = review.map(this::inHand).orElse(OptionalInt.empty());
        if (review.isEmpty() || index.isEmpty()) {
            head.title("No section yet");
            word(now.unsized());
            return;
        }
        Review r = review.get();
        var section = r.piping().section(index.getAsInt());
        SectionSize size = r.sizing().section(index.getAsInt());
        head.title("Section " + IsolatedName.of(section.id())
                + section.name().findText().map(n -> ", " + IsolatedName.of(n)).orElse(""));
        Optional<String> name = size.size();
        if (name.isEmpty()) {
            word(now.unsized());
            return;
        }
        String soFar = ProvisionalSize.suffix(r, index.getAsInt());
        String beside = besides(size, section.material().findValue().orElse(Material.STEEL))
                + (soFar.isEmpty() ? "" : "\nso far");
        String used = size.shareUsed().isPresent()
                ? Math.round(size.shareUsed().getAsDouble() * 100) + " % used\n"
                        + desk.units().heat(size.load().orElse(HeatRate.ZERO)) + " of\n"
                        + desk.units().heat(size.capacity().orElse(HeatRate.ZERO)) + " "
                        + desk.units().heatUnit().name()
                : "";
        head.selected(name.get() + beside + used, () -> {
            Element share = Dom.el("span", "s q share").setAttribute("data-fig", "");
            for (String line : used.split("\n", -1)) {
                share.appendChild(Dom.text("span", "", line));
            }
            return new Element[] {BigSize.of(name.get(), beside), share};
        });
        spoken.put("hand", "section " + section.id() + " " + name.get() + soFar);
    }

    private static String besides(SectionSize size, Material material) {
        return switch (material) {
            case STEEL -> "in. steel,\nSchedule 40";
            case COPPER ->
                "in. copper" + size.sizeOd().map(od -> "\n(" + od + " OD)").orElse("");
            case CSST -> "EHD\nCSST";
            case PE_PIPE -> "in. PE pipe";
            case PE_TUBING -> "in. PE tubing";
        };
    }

    private void word(String word) {
        head.selected(word, () -> new Element[] {BigSize.word(word)});
    }

    OptionalInt inHand(Review review) {
        Optional<OptionalInt> chosen = desk.lineInHand().map(review.piping()::findSection);
        if (chosen.isPresent() && chosen.get().isPresent()) {
            return chosen.get();
        }
        return DefaultSection.usual(review);
    }
}
