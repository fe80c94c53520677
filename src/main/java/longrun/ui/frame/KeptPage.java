package longrun.ui.frame;

import com.vaadin.flow.dom.Element;
import java.util.Map;
import java.util.Optional;
import longrun.draft.History;
import longrun.draft.NotAPlan;
import longrun.draft.run.HouseMaker;
import longrun.words.UnitSystem;

/**
 * A page whose draft is kept in the browser and not among the houses: with undo and redo, a choice of units, and plan files
 * that are opened and saved.
 *
 * @param <D> the draft, immutable
 */
public abstract class KeptPage<D> extends Frame implements DraftKeeper.Listener {

    private final transient PageActions.Content<D> sheet;
    private final transient History<D> history;
    private final transient OtherWindow otherWindow;
    private final transient PageActions<D> acts;
    private final DraftKeeper keeper;
    private UnitSystem units = UnitSystem.CUSTOMARY;
    private boolean begun;

    /** @param key the name under which the browser keeps the draft */
    protected KeptPage(String title, String code, String key, PageActions.Content<D> sheet, HouseMaker houses) {
        super(title, code);
        this.sheet = sheet;
        history = new History<>(sheet.empty());
        otherWindow = new OtherWindow(sheet.noun());
        keeper = new DraftKeeper(key, this);
        acts = new PageActions<>(sheet, this::draft, this::replace, houses, keeper);
    }

    /** Connects undo and units and shows the page; called once its parts are made. */
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

    /** Writes all fields and shows everything again. */
    protected abstract void refresh();

    /** Replaces the draft; undo brings the old one back. */
    protected abstract void replace(D next);

    /** Takes an entry that was typed while the program did not answer. */
    protected abstract void typedBefore(String place, String text);

    /** The draft shown. */
    public final D draft() {
        return history.now();
    }

    /** The units chosen. */
    public final UnitSystem units() {
        return units;
    }

    /** The actions of the page as a whole. */
    public final PageActions<D> acts() {
        return acts;
    }

    /** Makes a change that is one step of undo. */
    public final void change(D next) {
        history.take(next, "");
        refresh();
    }

    /** Takes a change by a key in an entry; changes in the same entry are one step of undo. The page shows it itself. */
    protected final void takeKey(D next, String place) {
        history.take(next, place);
    }

    /** Lets the next key begin a new step of undo. */
    protected final void endStep() {
        history.endStep();
    }

    /** The draft before the last step. */
    protected final Optional<D> before() {
        return history.before();
    }

    /** The offer of the demo while nothing is typed. */
    protected final Element offer(String classes) {
        return Dom.el(
                "div", "acts screen-only " + classes, Dom.text("span", "q", "Nothing is typed yet."), acts.demo("ask"));
    }

    /**
     * Keeps the draft in the browser, and shows whether undo and redo are possible.
     *
     * @param heard the text of each entry as last received from the browser, by its address
     */
    protected final void keep(Map<String, String> heard) {
        showUnits(units);
        canUndo(history.canUndo(), history.canRedo());
        if (begun) {
            keeper.keep(sheet.kept(draft()), heard);
        }
    }

    // DraftKeeper.Listener

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
            refresh(); // so that each entry has its field
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
