package longrun.ui.frame;

import com.vaadin.flow.dom.Element;
import java.util.Map;
import java.util.Optional;
import longrun.draft.History;
import longrun.draft.NotAPlan;
import longrun.draft.run.HouseMaker;
import longrun.words.UnitSystem;

/**
 * A page of its own: what is typed is kept in this browser, undone and redone as whole drafts, shown in either units, and
 * opened and saved as a plan file.
 *
 * @param <D> what is typed, never changed once made
 */
public abstract class KeptPage<D> extends Frame implements Keeper.Hears {

    private final transient PageActs.Sheet<D> sheet;
    private final transient History<D> history;
    private final transient OtherWindow otherWindow;
    private final transient PageActs<D> acts;
    private final Keeper keeper;
    private UnitSystem units = UnitSystem.CUSTOMARY;
    private boolean begun;

    /** @param key by which the browser keeps what is typed */
    protected KeptPage(String title, String code, String key, PageActs.Sheet<D> sheet, HouseMaker houses) {
        super(title, code);
        this.sheet = sheet;
        history = new History<>(sheet.empty());
        otherWindow = new OtherWindow(sheet.called());
        keeper = new Keeper(key, this);
        acts = new PageActs<>(sheet, this::draft, this::replace, houses, keeper);
    }

    /** Once the page is made: it hears undo and units, and shows what stands there. */
    protected final void begin() {
        work().insertChild(0, otherWindow.element());
        work().appendChild(keeper.getElement());
        onUndo(
                () -> history.undo().ifPresent(d -> refresh()),
                () -> history.redo().ifPresent(d -> refresh()));
        onUnits(this::show);
        refresh();
    }

    private void show(UnitSystem system) {
        units = system;
        refresh();
    }

    /** Writes and shows everything anew. */
    protected abstract void refresh();

    /** Takes another draft in place of the one shown; undo brings that back. */
    protected abstract void replace(D next);

    /** An entry typed while the program did not answer. */
    protected abstract void typedBefore(String place, String text);

    public final D draft() {
        return history.now();
    }

    public final UnitSystem units() {
        return units;
    }

    public final PageActs<D> acts() {
        return acts;
    }

    /** A change that is a step of its own. */
    public final void change(D next) {
        history.take(next, "");
        refresh();
    }

    /** A key in a place; those that follow in the same are one step. What is shown of it is the page's own. */
    protected final void takeKey(D next, String place) {
        history.take(next, place);
    }

    /** The next key begins a step of its own. */
    protected final void endStep() {
        history.endStep();
    }

    /** The draft before the last step. */
    protected final Optional<D> before() {
        return history.before();
    }

    /** A place to begin from while nothing is typed. */
    protected final Element offer(String classes) {
        return Dom.el(
                "div", "acts screen-only " + classes, Dom.text("span", "q", "Nothing is typed yet."), acts.demo("ask"));
    }

    /**
     * Keeps what stands here, and shows what can be undone.
     *
     * @param heard what stands in each entry as far as the page has heard
     */
    protected final void keep(Map<String, String> heard) {
        showUnits(units);
        canUndo(history.canUndo(), history.canRedo());
        if (begun) {
            keeper.keep(sheet.kept(draft()), heard);
        }
    }

    // What the keeper brings.

    @Override
    public final void kept(String text, Map<String, String> unsent, Optional<UnitSystem> keptUnits) {
        keptUnits.ifPresent(u -> units = u);
        if (!begun && !text.isEmpty()) {
            try {
                history.take(sheet.read(text), "");
            } catch (NotAPlan e) {
                acts.say("What this browser had kept could not be opened: " + e.getMessage() + ".");
            }
        }
        if (!unsent.isEmpty()) {
            refresh(); // so that each has its field
            unsent.forEach(this::typedBefore);
        }
        begun = true;
        refresh();
    }

    @Override
    public final void keptElsewhere(String text) {
        otherWindow.ask(
                () -> acts.opened("the other window", text, false), () -> keeper.keepAgain(sheet.kept(draft())));
    }

    @Override
    public final void opened(String name, String text, boolean tooLong) {
        acts.opened(name, text, tooLong);
    }
}
