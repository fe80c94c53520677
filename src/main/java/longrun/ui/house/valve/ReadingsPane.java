package longrun.ui.house.valve;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.draft.entry.NewItem;
import longrun.plan.choice.ReadingKind;
import longrun.pressure.GaugeCheck;
import longrun.review.Review;
import longrun.ui.field.FieldList;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;

/** What a gauge has read, each reading beside what was predicted. */
public final class ReadingsPane {

    public static final String READINGS = "/readings";

    private final HousePage desk;
    private final FieldList fields = new FieldList();
    private final Element blocks = Dom.el("div", "blocks");
    private final Element add = Dom.button("act", "Add a reading");
    private final Element element;
    private List<ReadingBlock> shown = List.of();

    public ReadingsPane(HousePage desk) {
        this.desk = desk;
        add.addEventListener("click", e -> add());
        element = Dom.el(
                "section",
                "part gauge",
                Dom.text("h3", "", "Readings of the gauge"),
                Dom.text(
                        "p",
                        "lede",
                        "Whoever does the work reads these with a gauge on the test tap; they show whether the house does as"
                                + " predicted."),
                blocks,
                Dom.el("div", "acts", add));
    }

    public Element element() {
        return element;
    }

    public void add() {
        int index = desk.session().add(READINGS, NewItem.EMPTY);
        fields.focus(READINGS + "/" + index + "/at");
    }

    /** Begins a reading of one kind at one place. */
    void add(String at, ReadingKind kind) {
        int index = desk.session().add(READINGS, NewItem.of("at", at).and("what", kind.written()));
        fields.focus(READINGS + "/" + index + "/pressure");
    }

    public void remove(int index) {
        desk.session().remove(READINGS + "/" + index);
    }

    public void show(boolean write) {
        int now = desk.session().at(READINGS).size();
        boolean fresh = now != shown.size();
        if (fresh) {
            fields.clear();
            blocks.removeAllChildren();
            List<ReadingBlock> made = new ArrayList<>();
            for (int i = 0; i < now; i++) {
                int index = i;
                ReadingBlock block = new ReadingBlock(desk, fields, i, () -> remove(index));
                made.add(block);
                blocks.appendChild(block.element());
            }
            shown = List.copyOf(made);
        }
        fields.show(write || fresh);
        Optional<Review> review = desk.session().isCurrent() ? desk.session().review() : Optional.empty();
        List<GaugeCheck> checks = review.map(r -> GaugeCheck.of(r.pressures())).orElse(List.of());
        for (int i = 0; i < shown.size(); i++) {
            int index = i;
            shown.get(i).showOfTest();
            shown.get(i)
                    .judge(
                            review,
                            checks.stream().filter(c -> c.reading() == index).findFirst());
        }
    }

    void focus(String pointer) {
        if (shown.isEmpty()) {
            FieldList.focus(add);
        } else {
            fields.focus(pointer);
        }
    }

    Map<String, String> heard() {
        return fields.heard();
    }
}
