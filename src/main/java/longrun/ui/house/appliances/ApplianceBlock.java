package longrun.ui.house.appliances;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Set;
import longrun.draft.HouseSession;
import longrun.draft.PlaceKind;
import longrun.draft.entry.ApplianceEntry;
import longrun.draft.entry.ApplianceEntry.Group;
import longrun.draft.entry.DraftAppliances;
import longrun.draft.entry.EntryReferences;
import longrun.plan.PlanPath;
import longrun.plan.choice.ApplianceKind;
import longrun.plan.choice.Named;
import longrun.ui.field.FieldList;
import longrun.ui.frame.Dom;
import longrun.ui.house.findings.FindingLines;
import longrun.ui.place.HousePage;
import longrun.ui.place.RemovalAsk;
import longrun.words.IsolatedName;
import org.jspecify.annotations.Nullable;

/** One appliance: what it is, its rating plate, the room it stands in, and what is still asked about it. */
public final class ApplianceBlock {

    private final HousePage desk;
    private final TerminalPicture terminal = new TerminalPicture();
    private final String at;
    private final int index;
    private final Element title = Dom.text("h3", "", "");
    private final FindingLines findings;
    private final LocationFields location;
    private final Element asking = Dom.el("div", "");
    private final Element[] vented;
    private final Element beforeVent = Dom.el("div", "");
    private final Element more = Dom.el("details", "more");
    private final Runnable goes;
    private @Nullable RemovalAsk ask;
    private String asked = "";
    private String foldedFor = "?";
    private final Element element;

    ApplianceBlock(HousePage desk, FieldList fields, String at, Runnable remove) {
        this.desk = desk;
        this.at = at;
        this.index = PlanPath.of(at).findIndex().orElseThrow();
        goes = remove;
        findings = new FindingLines(desk, f -> f.field().startsWith(at + "/") && PlaceKind.APPLIANCES.holds(f.field()));
        ApplianceFields all = new ApplianceFields(desk, fields, at);
        Element gone = Dom.button("ask", "Remove this appliance");
        gone.addEventListener("click", e -> remove());
        Element plate = Dom.el(
                "div", "plate", Dom.text("p", "plate-head", "Rating plate").setAttribute("aria-hidden", "true"));
        plate.appendChild(all.listAll(Group.PLATE));
        plate.appendChild(more.appendChild(Dom.text("summary", "", "More, seldom asked of its kind")));
        more.appendChild(all.listAll(Group.SELDOM));
        vented = all.listAll(Group.VENTED);
        location = new LocationFields(desk, all, at);
        Element about = Dom.el("div", "grid", all.listAll(Group.ABOUT));
        element = Dom.el(
                "section",
                "appliance",
                title,
                Dom.el("div", "two", beforeVent.appendChild(about).appendChild(vented), plate),
                Dom.el("div", "asked", terminal.element(), Dom.el("div", "", findings.element(), location.element())),
                gone,
                asking);
    }

    Element element() {
        return element;
    }

    /** Takes the appliance away; where it is named elsewhere, asks first what goes along. */
    public void remove() {
        HouseSession session = desk.session();
        List<EntryReferences.Reference> mentions = EntryReferences.appliance(session.draft(), at);
        if (mentions.isEmpty()) {
            goes.run();
            return;
        }
        asked = session.text(at + "/id");
        DraftAppliances names = DraftAppliances.of(session.draft());
        String name = IsolatedName.of(names.name(index));
        RemovalAsk now =
                new RemovalAsk(names.isNamed(index) ? name : "the " + name, mentions, this::removeWith, this::keep);
        asking.removeAllChildren();
        asking.appendChild(now.element());
        now.focus();
        ask = now;
    }

    private void removeWith(Set<String> staying) {
        // All in one step, so that one undo brings all of it back.
        desk.session().change(d -> {
            List<EntryReferences.Reference> mentions = EntryReferences.appliance(d.whole(), at);
            EntryReferences.take(d, mentions, staying);
            d.remove(at);
        });
    }

    private void keep() {
        ask = null;
        asking.removeAllChildren();
    }

    /** What is asked about it, below its fields. */
    void show(DraftAppliances names) {
        Dom.retext(title, IsolatedName.of(names.title(index)));
        if (ask != null && !asked.equals(desk.session().text(at + "/id"))) {
            keep();
        }
        location.show();
        findings.show();
        fold();
        terminal.show(desk.session().review(), desk.session().text(at + "/id"));
    }

    /** What the kind makes pointless is folded, unless it is entered or asked; what is folded and asked is opened. */
    private void fold() {
        String kind = desk.session().text(at + "/kind");
        boolean anew = !kind.equals(foldedFor); // what is answered in the fold stays there, under the hand that answers
        foldedFor = kind;
        boolean usual = Named.find(ApplianceKind.class, kind)
                .map(ApplianceKind::isUsuallyVented)
                .orElse(true);
        for (Element field : vented) {
            boolean before = usual
                    || isAsked(Group.VENTED)
                    || !anew && beforeVent.equals(field.getParent())
                    || isEntered(Group.VENTED) && anew;
            Element wanted = before ? beforeVent : more;
            if (!wanted.equals(field.getParent())) {
                wanted.appendChild(field);
            }
        }
        if (isAsked(Group.SELDOM) || isEntered(Group.SELDOM) && anew) {
            more.setAttribute("open", true);
        }
    }

    private boolean isEntered(Group group) {
        return ApplianceEntry.listAll(group).stream()
                .anyMatch(e -> !desk.session().text(at + "/" + e.entry()).isEmpty());
    }

    private boolean isAsked(Group group) {
        return ApplianceEntry.listAll(group).stream()
                .map(e -> at + "/" + e.entry())
                .anyMatch(p -> findings.shown().stream().anyMatch(f -> f.field().equals(p)));
    }
}
