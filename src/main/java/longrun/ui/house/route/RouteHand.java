package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Set;
import longrun.draft.DefaultSection;
import longrun.draft.entry.DraftEdit;
import longrun.draft.entry.DraftValue;
import longrun.draft.entry.EntryReferences;
import longrun.draft.sections.PastedSection;
import longrun.draft.sections.RouteDraft;
import longrun.draft.sections.RouteLine;
import longrun.draft.sections.RouteLines;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.ui.place.RemovalAsk;
import longrun.words.UnitSystem;
import org.jspecify.annotations.Nullable;

/** What a person does to the sections, and which of them is selected. */
public final class RouteHand implements RouteRow.Hand {

    private final HousePage desk;
    private final Runnable shows;
    private final Element asking = Dom.el("div", "");
    private @Nullable RemovalAsk removal;
    private String asked = "";
    private boolean typing;
    private int inHand;
    private boolean opened;
    private String followed = "";
    private int feeding = -1;
    private DraftValue beforeFed = DraftValue.NOTHING;
    private DraftValue fed = beforeFed;

    /** @param shows shows the place anew where nothing in the house has changed */
    RouteHand(HousePage desk, Runnable shows) {
        this.desk = desk;
        this.shows = shows;
    }

    /** Asks before a section goes that is named elsewhere. */
    Element asking() {
        return asking;
    }

    /** Index of the selected section. */
    int index() {
        return inHand;
    }

    /** Whether legs are being typed just now. */
    boolean isTyping() {
        return typing;
    }

    /** Takes up what was chosen elsewhere, and lets go of a question about a section that is gone. */
    void follow(RouteLines lines) {
        followed(lines);
        inHand = Math.min(inHand, lines.count());
        if (removal != null && lines.find(asked).isEmpty()) {
            forgetRemoval();
        }
    }

    /** The selected section may have been chosen elsewhere, in the answer say. */
    private void followed(RouteLines lines) {
        String wanted = desk.lineInHand().orElse("");
        if (!opened && wanted.isEmpty()) {
            desk.session()
                    .review()
                    .ifPresent(r -> DefaultSection.usual(r)
                            .ifPresent(i ->
                                    inHand = lines.find(r.piping().section(i).id())
                                            .map(RouteLine::index)
                                            .orElse(0)));
        }
        opened = true;
        if (wanted.equals(followed)) {
            return;
        }
        followed = wanted;
        lines.find(wanted).ifPresent(l -> inHand = l.index());
    }

    @Override
    public void inHand(int index) {
        if (index == inHand && followed.equals(idAt(index))) {
            return;
        }
        inHand = index;
        desk.session().endStep();
        String id = idAt(index);
        if (id.isEmpty()) {
            shows.run();
        } else {
            followed = id;
            desk.takeInHand(id);
        }
    }

    private String idAt(int index) {
        return desk.session().text("/sections/" + index + "/id");
    }

    @Override
    public void legs(int index, String typed) {
        begun(index);
        typing = true;
        desk.session().type("/sections/" + index + "/legs", d -> RouteDraft.legs(d, index, typed, desk.units()));
        typing = false;
        tellInHand(index);
    }

    @Override
    public void put(int index, String entry, String value) {
        begun(index);
        if (entry.equals("reserve")) {
            desk.session().type("/sections/" + index + "/reserve", d -> RouteDraft.put(d, index, entry, value));
        } else {
            change(d -> RouteDraft.put(d, index, entry, value));
            tellInHand(index);
        }
    }

    @Override
    public void rough(int index, boolean rough) {
        change(d -> RouteDraft.rough(d, index, rough));
    }

    @Override
    public void feeds(int index, String feeds) {
        begun(index);
        // Whoever types or steps through the list passes others on the way; those stay where they hang.
        boolean onTheWay = feeding == index && desk.session().draft().equals(fed);
        DraftValue before = onTheWay ? beforeFed : desk.session().draft();
        change(d -> {
            d.become(before);
            RouteDraft.feed(d, index, feeds);
        });
        feeding = index;
        beforeFed = before;
        fed = desk.session().draft();
        tellInHand(index);
    }

    /** A choice in a line, while another field of it may hold what is being typed: the fields are left as they are. */
    private void change(java.util.function.Consumer<DraftEdit> change) {
        desk.session().endStep();
        desk.session().type("choice", change);
        desk.session().endStep();
    }

    private void begun(int index) {
        inHand = index;
    }

    /** A section begun by what is typed in it is selected in the answer too. */
    private void tellInHand(int index) {
        String id = idAt(index);
        if (!id.isEmpty() && !id.equals(desk.lineInHand().orElse(""))) {
            followed = id;
            desk.takeInHand(id);
        }
    }

    @Override
    public void removed(int index) {
        String id = idAt(index);
        List<EntryReferences.Reference> mentions =
                EntryReferences.anything(desk.session().draft(), id);
        if (mentions.isEmpty()) {
            remove(index, Set.of());
            return;
        }
        RemovalAsk ask =
                new RemovalAsk("section " + id, mentions, staying -> remove(index, staying), this::forgetRemoval);
        forgetRemoval();
        asking.appendChild(ask.element());
        ask.focus();
        removal = ask;
        asked = id;
    }

    /** The pipe beyond it leaves what it left; what was read or answered at it goes too, all in one step. */
    private void remove(int index, Set<String> staying) {
        inHand = Math.max(0, index - 1);
        desk.session().change(d -> {
            EntryReferences.take(d, EntryReferences.anything(d.whole(), idAt(index)), staying);
            RouteDraft.remove(d, index);
        });
    }

    private void forgetRemoval() {
        removal = null;
        asking.removeAllChildren();
    }

    @Override
    public UnitSystem units() {
        return desk.units();
    }

    /** Takes a pasted route, each section under a name of its own. */
    void takePasted(List<PastedSection> pasted) {
        desk.session().change(d -> RouteDraft.add(d, pasted));
    }
}
