package longrun.ui.field;

import com.vaadin.flow.dom.Element;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Supplier;
import longrun.draft.entry.DraftEdit;
import longrun.draft.entry.NewItem;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;

/** The items of a list in the draft, each a block of fields with a button that removes it, and a button that adds an item. */
public final class BlockList {

    private final HousePage page;
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
     * A list whose new items are empty.
     *
     * @param list the pointer of the list
     * @param adds the label of the button that adds an item
     * @param removes the label of the button that removes an item
     * @param block makes the fields of the item at a pointer
     */
    public BlockList(
            HousePage page,
            FieldList fields,
            String list,
            String adds,
            String removes,
            Function<String, Element[]> block) {
        this(page, fields, list, adds, removes, block, () -> NewItem.EMPTY, DraftEdit::remove);
    }

    /**
     * A list whose items begin and are removed in a way of their own.
     *
     * @param begin what a new item begins with
     * @param removed removes the item at a pointer from the draft
     */
    public BlockList(
            HousePage page,
            FieldList fields,
            String list,
            String adds,
            String removes,
            Function<String, Element[]> block,
            Supplier<NewItem> begin,
            BiConsumer<DraftEdit, String> removed) {
        this.page = page;
        this.fields = fields;
        this.list = list;
        this.removeWords = removes;
        this.block = block;
        this.removed = removed;
        this.begin = begin;
        add = Dom.button("act", adds);
        add.addEventListener("click", e -> add());
    }

    /** Shows each item in one row, with the labels of its fields only above the first; for items with few, short fields. */
    public BlockList inRows() {
        Dom.setClass(blocks, "rows", true);
        return this;
    }

    /** The element that holds the blocks. */
    public Element blocks() {
        return blocks;
    }

    /** The button that adds an item. */
    public Element adds() {
        return Dom.el("p", "acts", add);
    }

    /** Adds an item and moves the focus to its first field. */
    public void add() {
        int index = page.session().add(list, begin.get());
        fields.focus(list + "/" + index);
    }

    /** Removes an item. */
    public void remove(int index) {
        shown = -1;
        page.session().change(d -> removed.accept(d, list + "/" + index));
    }

    /** Draws the blocks again where their number has changed; returns whether it has. */
    public boolean draw() {
        int now = page.session().at(list).size();
        if (now == shown) {
            return false;
        }
        if (shown < 0 || now < shown) {
            shown = 0;
            blocks.removeAllChildren();
            fields.removeBelow(list);
        }
        // Existing blocks are kept: a person may be typing in one.
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
