package longrun.ui.field;

import com.vaadin.flow.dom.Element;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Supplier;
import longrun.draft.entry.DraftEdit;
import longrun.draft.entry.NewItem;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;

/** The items of a list in the draft, a block of fields each, with a button that adds one and one in each that takes it away. */
public final class BlockList {

    private final HousePage desk;
    private final FieldList fields;
    private final String list;
    private final String removeWords;
    private final Function<String, Element[]> block;
    private final Supplier<NewItem> begin;
    private final BiConsumer<DraftEdit, String> removed;
    private final Element blocks = Dom.el("div", "blocks");
    private final Element add;
    private int shown = -1;

    /**
     * @param list pointer of the list
     * @param adds words of the button that adds one
     * @param removes words of the button that takes one away
     * @param block the fields of the item at a pointer
     */
    public BlockList(
            HousePage desk,
            FieldList fields,
            String list,
            String adds,
            String removes,
            Function<String, Element[]> block) {
        this(desk, fields, list, adds, removes, block, () -> NewItem.EMPTY, DraftEdit::remove);
    }

    /**
     * @param begin what a new item begins with
     * @param removed how the item at a pointer is taken out of the draft
     */
    public BlockList(
            HousePage desk,
            FieldList fields,
            String list,
            String adds,
            String removes,
            Function<String, Element[]> block,
            Supplier<NewItem> begin,
            BiConsumer<DraftEdit, String> removed) {
        this.desk = desk;
        this.fields = fields;
        this.list = list;
        this.removeWords = removes;
        this.block = block;
        this.removed = removed;
        this.begin = begin;
        add = Dom.button("act", adds);
        add.addEventListener("click", e -> add());
    }

    /** Each item in one row, the names of its fields over the first alone; for items of few and short fields. */
    public BlockList inRows() {
        Dom.setClass(blocks, "rows", true);
        return this;
    }

    public Element blocks() {
        return blocks;
    }

    /** The button that adds one. */
    public Element adds() {
        return Dom.el("p", "acts", add);
    }

    /** Adds an item and puts the cursor in its first field. */
    public void add() {
        int index = desk.session().add(list, begin.get());
        fields.focus(list + "/" + index);
    }

    public void remove(int index) {
        shown = -1;
        desk.session().change(d -> removed.accept(d, list + "/" + index));
    }

    /** Draws the blocks anew where their number changed; true where it did. */
    public boolean draw() {
        int now = desk.session().at(list).size();
        if (now == shown) {
            return false;
        }
        if (shown < 0 || now < shown) {
            shown = 0;
            blocks.removeAllChildren();
            fields.removeBelow(list);
        }
        // What is there already stays: a person may be typing in it.
        for (int i = shown; i < now; i++) {
            int index = i;
            Element remove = Dom.button("ask", removeWords);
            remove.addEventListener("click", e -> remove(index));
            blocks.appendChild(Dom.el("div", "block", Dom.el("div", "grid", block.apply(list + "/" + i)), remove));
        }
        shown = now;
        return true;
    }
}
