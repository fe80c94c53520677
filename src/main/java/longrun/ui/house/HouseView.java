package longrun.ui.house;

import com.vaadin.flow.component.DetachEvent;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.dom.Element;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.Route;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import longrun.draft.EntryAddress;
import longrun.draft.HouseSession;
import longrun.draft.HouseState;
import longrun.draft.PlaceKind;
import longrun.draft.SaveState;
import longrun.draft.entry.DraftValue;
import longrun.review.Reviewer;
import longrun.store.DraftStore;
import longrun.ui.frame.Dom;
import longrun.ui.frame.DraftKeeper;
import longrun.ui.frame.Frame;
import longrun.ui.house.answer.HouseAnswer;
import longrun.ui.place.HousePage;
import longrun.ui.place.Place;
import longrun.words.CodeNames;
import longrun.words.IsolatedName;
import longrun.words.UnitSystem;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataAccessException;
import org.springframework.transaction.TransactionException;

/** One whole house: the thread of places at the left, one place at a time, the answer so far beside it. */
@Route("house/:id/:place?")
@StyleSheet("context://frontend/run.css")
@StyleSheet("context://frontend/field.css")
@StyleSheet("context://frontend/house.css")
@StyleSheet("context://frontend/place.css")
@StyleSheet("context://frontend/route.css")
@JsModule("context://frontend/lines.js")
@JsModule("context://frontend/pan.js")
@StyleSheet("context://frontend/connections.css")
@StyleSheet("context://frontend/papers.css")
@StyleSheet("context://frontend/print.css")
public final class HouseView extends Frame
        implements BeforeEnterObserver, HasDynamicTitle, HousePage, DraftKeeper.Listener {

    private static final String NAMELESS = "House without a name";

    private final transient DraftStore store;
    private final transient Reviewer reviewer;
    private final transient Map<PlaceKind, Place> made = new EnumMap<>(PlaceKind.class);
    private final transient PlaceThread thread = new PlaceThread();
    private final transient PlaceHead head = new PlaceHead();
    private final transient PlaceNotice told = new PlaceNotice();
    private final Element placeHolder = Dom.el("div", "place-holder");
    private @Nullable transient HouseSession session;
    private @Nullable transient HouseAnswer panel;
    private @Nullable transient HouseNotice notice;
    final transient StepNotice step = new StepNotice(this::goTo);
    private @Nullable DraftKeeper keeper;
    private transient Runnable stopListening = () -> {};
    private UnitSystem units = UnitSystem.CUSTOMARY;
    private @Nullable String lineInHand;
    private PlaceKind here = PlaceKind.HOUSE;
    private boolean begun;

    public HouseView(DraftStore store) {
        super("", "");
        this.store = store;
        this.reviewer = Reviewer.standard();
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        Optional<PlaceKind> place =
                event.getRouteParameters().get("place").map(PlaceKind::findSlug).orElse(Optional.of(PlaceKind.HOUSE));
        String written = event.getRouteParameters().get("id").orElse("");
        if (!written.matches("[0-9]{1,18}") || place.isEmpty()) {
            event.rerouteToError(NotFoundException.class);
            return;
        }
        long id = Long.parseLong(written);
        if (session == null || session.id() != id) {
            Optional<HouseSession> opened;
            try {
                opened = HouseSession.open(store, reviewer, id);
            } catch (DataAccessException | TransactionException e) {
                event.forwardTo("houses"); // where it is said why
                return;
            }
            if (opened.isEmpty()) {
                event.forwardTo("houses");
                return;
            }
            open(opened.get());
        }
        show(place.get());
        if (event.getLocation().getQueryParameters().getParameters().containsKey("by")) {
            placeShown().takenAlong();
        }
    }

    /** Goes to a place. */
    void show(PlaceKind place) {
        PlaceKind before = here;
        here = place;
        step.clear();
        placeHolder.removeAllChildren();
        placeHolder.appendChild(placeShown().element());
        if (here != before) {
            // on a phone the cautions fill the first screen, and whoever goes on has passed them
            getElement()
                    .executeJs("const places = innerWidth < 900 && document.querySelector('.thread-nav');"
                            + " scrollTo(0, places ? places.getBoundingClientRect().top + scrollY : 0)");
        }
        show(true);
    }

    /** Begins with a house, in place of the one before. */
    void open(HouseSession opened) {
        stopListening.run();
        session = opened;
        made.clear();
        work().removeAllChildren();
        answer().removeAllChildren();
        notice = new HouseNotice(opened, this::toHouse, this::forgetUnsent);
        panel = new HouseAnswer(this, answer());
        foot().onNext(panel::goNext);
        keeper = new DraftKeeper("longrun-house-" + opened.id(), this);
        begun = false;
        work().appendChild(
                        notice.element(),
                        step.element(),
                        head.element(),
                        placeHolder,
                        told.element(),
                        Dom.el(
                                "p",
                                "acts screen-only",
                                Dom.button("ask", "Print this place").setAttribute("data-do", "print")),
                        keeper.getElement());
        if (thread.element().getParent() == null) {
            thread(Dom.el("div", "thread-side", thread.element(), head.walk().element()));
            onUndo(
                    () -> step.tell("Taken back", session().undo(), here),
                    () -> step.tell("Done again", session().redo(), here));
            onUnits(this::setUnits);
        }
        stopListening = opened.listen(change -> {
            step.hear(change);
            show(change == HouseSession.Change.CHANGED);
        });
    }

    @Override
    protected void onDetach(DetachEvent event) {
        stopListening.run();
    }

    @Override
    public HouseSession session() {
        if (session == null) {
            throw new IllegalStateException("no house is open yet");
        }
        return session;
    }

    @Override
    public UnitSystem units() {
        return units;
    }

    @Override
    public Optional<String> lineInHand() {
        return Optional.ofNullable(lineInHand);
    }

    @Override
    public void takeInHand(String sectionId) {
        lineInHand = sectionId;
        show(false);
    }

    @Override
    public void goTo(String pointer) {
        PlaceKind.find(pointer).ifPresent(there -> {
            if (there != here) {
                UI.getCurrent().navigate("house/" + session().id() + "/" + there.slug());
            }
            placeShown().focus(pointer);
        });
    }

    private void toHouse(long id) {
        UI.getCurrent().navigate("house/" + id + "/" + here.slug());
    }

    // What the keeper brings.

    @Override
    public void kept(String text, Map<String, String> unsent, Optional<UnitSystem> keptUnits) {
        keptUnits.ifPresent(u -> units = u);
        begun = true;
        unsent.forEach((at, typed) ->
                EntryAddress.of(at).filter(a -> session().holds(a.pointer())).ifPresent(a -> a.type(session(), typed)));
        unsent.forEach((at, typed) -> {
            if (!at.startsWith("/")) {
                placeShown().typedBefore(at, typed);
            }
        });
        show(true);
    }

    @Override
    public void keptAside(String draft) {
        session().saveChoices().restoreUnsaved(DraftValue.parse(draft));
    }

    private void forgetUnsent() {
        if (keeper != null) {
            keeper.forgetUnsent();
        }
    }

    @Override
    public void keptElsewhere(String version) {
        session().saveChoices().checkForOtherChanges();
    }

    /** A house is opened from the list of houses. */
    @Override
    public void opened(String name, String text, boolean tooLong) {}

    private void setUnits(UnitSystem system) {
        units = system;
        show(true);
    }

    public Place placeShown() {
        return made.computeIfAbsent(here, k -> PlaceMaker.make(k, this));
    }

    HouseAnswer panel() {
        if (panel == null) {
            throw new IllegalStateException("no house is open yet");
        }
        return panel;
    }

    private void show(boolean write) {
        HouseSession s = session();
        title(name());
        code(CodeNames.of(s.text("/code/profile")));
        showUnits(units);
        placeShown().show(write);
        told.show(s, here);
        head.show(s, here);
        thread.show(s, here);
        HouseState state = HouseState.of(s);
        panel().show(state);
        foot().show(panel().handInShort(), panel().sizeInShort(state), state.mustFix(), state.questions());
        foot().next(panel().nextWords());
        speak(new HashMap<>(panel().spoken()));
        canUndo(s.canUndo(), s.canRedo());
        if (notice != null) {
            notice.show();
        }
        if (!begun || keeper == null) {
            return;
        }
        if (s.saveState() instanceof SaveState.Saved) {
            keeper.keep(String.valueOf(s.version()), placeShown().heard());
        } else {
            keeper.notSaved();
            if (s.saveState() instanceof SaveState.ChangedElsewhere) {
                keeper.aside(s.draft().toString());
            }
        }
    }

    @Override
    public String getPageTitle() {
        return here.title() + " \u00b7 " + name() + " \u00b7 Longrun";
    }

    private String name() {
        String name = session == null ? "" : session.text("/name");
        return name.isBlank() ? NAMELESS : IsolatedName.of(name);
    }
}
