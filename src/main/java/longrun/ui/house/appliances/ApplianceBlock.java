package longrun.ui.house.appliances;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import longrun.draft.HouseSession;
import longrun.draft.PlaceKind;
import longrun.draft.entry.Entered;
import longrun.draft.entry.NamedBy;
import longrun.plan.choice.ApplianceKind;
import longrun.plan.choice.Named;
import longrun.ui.field.AnswerField;
import longrun.ui.field.ChoiceField;
import longrun.ui.field.FieldList;
import longrun.ui.field.QuantityField;
import longrun.ui.field.WordsField;
import longrun.ui.frame.Dom;
import longrun.ui.house.findings.FindingLines;
import longrun.ui.place.HousePage;
import longrun.ui.place.RemovalAsk;
import longrun.words.IsolatedName;
import longrun.words.Names;
import longrun.words.Shown;
import org.jspecify.annotations.Nullable;

/** One appliance: what it is, its rating plate, the room it stands in, and what is still asked about it. */
public final class ApplianceBlock {

    private static final Map<String, String> GASES = new LinkedHashMap<>();
    private static final Map<String, String> VENTS = new LinkedHashMap<>();

    static {
        GASES.put("propane", "propane");
        GASES.put("converted", "converted to propane");
        GASES.put("natural", "natural gas");
        VENTS.put("direct", "sealed, air from outdoors");
        VENTS.put("fan", "by a fan");
        VENTS.put("draft", "by a chimney\u2019s draft");
        VENTS.put("none", "there is none");
    }

    private final HousePage desk;
    private final TerminalPicture terminal = new TerminalPicture();
    private final String at;
    private final Element title = Dom.text("h3", "", "");
    private final FindingLines findings;
    private final Standing standing;
    private final Element asking = Dom.el("div", "");
    private final Element vent;
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
        goes = remove;
        findings = new FindingLines(desk, f -> f.field().startsWith(at + "/") && PlaceKind.APPLIANCES.holds(f.field()));
        Map<String, String> kinds = new LinkedHashMap<>();
        for (ApplianceKind each : ApplianceKind.values()) {
            kinds.put(each.written(), Names.capital(each.label()));
        }
        Element gone = Dom.button("ask", "Remove this appliance");
        gone.addEventListener("click", e -> remove());
        Element plate = Dom.el(
                "div",
                "plate",
                Dom.text("p", "plate-head", "Rating plate").setAttribute("aria-hidden", "true"),
                fields.add(new QuantityField<>(
                                desk,
                                at + "/input",
                                "INPUT, propane line",
                                "Not the output. Where two gases stand, the propane line.",
                                Shown.HEAT,
                                true,
                                ""))
                        .element(),
                fields.add(new QuantityField<>(
                                desk,
                                at + "/minInlet",
                                "Least inlet pressure",
                                "The plate may call it: inlet pressure, min.",
                                Shown.APPLIANCE_PRESSURE,
                                true,
                                "there is none on the plate"))
                        .element(),
                fields.add(new QuantityField<>(
                                desk,
                                at + "/maxInlet",
                                "Greatest inlet pressure",
                                "The plate may call it: inlet pressure, max.",
                                Shown.APPLIANCE_PRESSURE,
                                true,
                                "there is none on the plate"))
                        .element(),
                fields.add(AnswerField.of(desk, at + "/gas", "Set up for", GASES))
                        .element(),
                more);
        more.appendChild(
                Dom.text("summary", "", "More, seldom asked of its kind"),
                fields.add(new QuantityField<>(
                                desk,
                                at + "/altitudeLabel",
                                "Altitude it is made for",
                                "Up to which height its label or its altitude kit goes.",
                                Shown.ELEVATION,
                                true,
                                "there is none on the plate"))
                        .element());
        vent = fields.add(AnswerField.of(desk, at + "/vent", "What it burns leaves", VENTS))
                .element();
        standing = new Standing(desk, fields, at);
        Element about = Dom.el(
                "div",
                "grid",
                fields.add(new ChoiceField(desk, at + "/kind", "It is a", "I don\u2019t know", () -> kinds))
                        .element(),
                fields.add(new WordsField(desk, at + "/name", "Name", "Where there are two of a kind: which one."))
                        .element(),
                fields.add(new ChoiceField(desk, at + "/fedBy", "Fed by section", "not entered yet", this::lines))
                        .element(),
                fields.add(new ChoiceField(desk, at + "/room", "Room", "not entered yet", this::rooms))
                        .element());
        element = Dom.el(
                "section",
                "appliance",
                title,
                Dom.el("div", "two", beforeVent.appendChild(about, vent), plate),
                Dom.el("div", "asked", terminal.element(), Dom.el("div", "", findings.element(), standing.element())),
                gone,
                asking);
    }

    Element element() {
        return element;
    }

    /** Takes the appliance away; where it is named elsewhere, asks first what goes along. */
    public void remove() {
        HouseSession session = desk.session();
        List<NamedBy.Mention> mentions = NamedBy.appliance(session.draft(), at);
        if (mentions.isEmpty()) {
            goes.run();
            return;
        }
        asked = session.text(at + "/id");
        RemovalAsk now = new RemovalAsk(name("the ", UnaryOperator.identity()), mentions, this::removeWith, this::keep);
        asking.removeAllChildren();
        asking.appendChild(now.element());
        now.focus();
        ask = now;
    }

    private void removeWith(Set<String> staying) {
        // All in one step, so that one undo brings all of it back.
        desk.session().change(d -> {
            List<NamedBy.Mention> mentions = NamedBy.appliance(d.whole(), at);
            NamedBy.take(d, mentions, staying);
            d.remove(at);
        });
    }

    private void keep() {
        ask = null;
        asking.removeAllChildren();
    }

    /** Its name as typed, else its kind. */
    private String name(String article, UnaryOperator<String> letters) {
        Entered appliance = desk.session().at(at);
        String kind = appliance.textOf("kind", "appliance").replace('-', ' ');
        return IsolatedName.of(appliance.textOf("name", letters.apply(article + kind)));
    }

    /** What is asked about it, below its fields. */
    void show() {
        Dom.retext(title, name("", Names::capital));
        if (ask != null && !asked.equals(desk.session().text(at + "/id"))) {
            keep();
        }
        standing.show();
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
        Element wanted =
                usual || isAsked("vent") || !anew && beforeVent.equals(vent.getParent()) || isEntered("vent") && anew
                        ? beforeVent
                        : more;
        if (!wanted.equals(vent.getParent())) {
            wanted.appendChild(vent);
        }
        if (isAsked("altitudeLabel") || isEntered("altitudeLabel") && anew) {
            more.setAttribute("open", true);
        }
    }

    private boolean isEntered(String entry) {
        return !desk.session().text(at + "/" + entry).isEmpty();
    }

    private boolean isAsked(String entry) {
        return findings.shown().stream().anyMatch(f -> f.field().equals(at + "/" + entry));
    }

    private Map<String, String> lines() {
        Map<String, String> out = new LinkedHashMap<>();
        for (Entered s : desk.session().at("/sections")) {
            String id = s.textOf("id");
            String name = s.textOf("name");
            if (!id.isEmpty()) {
                out.put(id, name.isEmpty() ? id : IsolatedName.of(id) + ", " + IsolatedName.of(name));
            }
        }
        return out;
    }

    private Map<String, String> rooms() {
        Map<String, String> out = new LinkedHashMap<>();
        out.put("none", "it stands outdoors");
        for (Entered r : desk.session().at("/rooms")) {
            String id = r.textOf("id");
            String name = r.textOf("name");
            if (!id.isEmpty()) {
                out.put(id, name.isBlank() ? id : name);
            }
        }
        return out;
    }
}
