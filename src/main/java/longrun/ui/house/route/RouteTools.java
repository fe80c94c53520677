package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import longrun.draft.HouseSession;
import longrun.draft.sections.RouteDraft;
import longrun.draft.sections.RouteLine;
import longrun.draft.sections.TubingDraft;
import longrun.plan.SizeNames;
import longrun.plan.choice.Material;
import longrun.plan.choice.Named;
import longrun.plan.choice.Setting;
import longrun.plan.choice.Under;
import longrun.plan.json.PlanError;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;
import longrun.quantity.Typed;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Entry;
import longrun.ui.frame.NotSeenLine;

/** What else is entered of the selected line: material, place, rough, sizes, the reserve of a capped end. */
final class RouteTools {

    private final Element box = Dom.el("div", "tools");
    private final Choice material;
    private final Choice setting;
    private final Choice under;
    private final Element underBox;
    private final Choice ends;
    private final Element endsBox;
    private final Choice chosen;
    private final Choice installed;
    private final Choice table;
    private final Element tableBox;
    private final Element rough;
    private boolean ticked;
    private final Entry reserve;
    private final NotSeenLine notSeen;
    private final Element remove = Dom.button("ask", "Remove this section");
    private final RouteRow.Hand hand;

    RouteTools(int index, RouteRow.Hand hand) {
        this.hand = hand;
        material = new Choice("material-" + index, "Material", v -> hand.put(index, "material", v));
        setting = new Choice("setting-" + index, "Place", v -> hand.put(index, "setting", v));
        under = new Choice("under-" + index, "Passes under", v -> hand.put(index, "under", v));
        underBox = label("Passes under", under).setAttribute("class", "if-buried");
        ends = new Choice("ends-" + index, "Its ends", v -> hand.put(index, "ends", v));
        endsBox = label("Its ends", ends).setAttribute("class", "if-buried if-pe");
        chosen = new Choice("chosen-" + index, "Raise the size", v -> hand.put(index, "chosenSize", v));
        installed = new Choice("installed-" + index, "Size in place", v -> hand.put(index, "installedSize", v));
        table = new Choice("table-" + index, "Sized by", v -> hand.put(index, "table", v));
        tableBox = label("Sized by", table).setAttribute("class", "own-table");
        rough = Dom.el("input", "").setAttribute("type", "checkbox").setAttribute("id", "rough-" + index);
        rough.addAttachListener(e -> rough.executeJs("this.checked = $0", ticked));
        rough.addEventListener("change", e -> hand.rough(index, e.getEventData().getBoolean("element.checked")))
                .addEventData("element.checked");
        reserve = new Entry(
                "reserve-" + index,
                "Load kept for a later appliance",
                "in r",
                typed -> hand.put(index, "reserve", stored(typed)));
        material.element().setAttribute("data-of", "material");
        setting.element().setAttribute("data-of", "setting");
        remove.addEventListener("click", e -> hand.removed(index));
        notSeen = new NotSeenLine("Seen: as entered", "", () -> hand.put(index, "assumed", ""));
        box.appendChild(
                notSeen.element(),
                label("Material", material),
                label("Place", setting),
                underBox,
                endsBox,
                tableBox,
                label("Raise to", chosen),
                label("In place already", installed),
                Dom.el("label", "check", rough, Dom.words("Rough length, not measured")),
                Dom.el("label", "reserve", Dom.words("Keeps, Btu/h"), reserve.getElement()),
                remove,
                reserve.said());
    }

    private static Element label(String words, Choice choice) {
        return Dom.el("label", "", Dom.words(words), choice.element());
    }

    private String stored(String typed) {
        return Typed.quantity(typed, hand.units().heatUnit().name());
    }

    Element element() {
        return box;
    }

    Choice material() {
        return material;
    }

    NotSeenLine notSeen() {
        return notSeen;
    }

    Choice setting() {
        return setting;
    }

    Choice under() {
        return under;
    }

    Choice ends() {
        return ends;
    }

    Choice chosen() {
        return chosen;
    }

    Choice installed() {
        return installed;
    }

    Choice table() {
        return table;
    }

    Entry reserve() {
        return reserve;
    }

    /** The line, or what the next will be while it is not begun; which of them are in sight the page decides by itself. */
    void show(HouseSession session, RouteLine l, boolean write) {
        notSeen.show(
                l.assumed() ? "Section " + l.id() + " is assumed, not seen: sizes that rest on it are so far." : "");
        material.show(materials(), l.material());
        setting.show(settings(), l.setting());
        Dom.setClass(underBox, "named", !l.under().isEmpty());
        under.show(unders(), l.under());
        Dom.setClass(endsBox, "named", !l.ends().isEmpty());
        ends.show(risers(), l.ends());
        chosen.show(sizes(session, l, "as the table says"), l.chosenSize());
        installed.show(sizes(session, l, "none yet"), l.installedSize());
        showTable(session, l);
        if (l.rough() != ticked) {
            ticked = l.rough();
            rough.executeJs("this.checked = $0", ticked);
        }
        Dom.retext(remove, "Remove section " + l.id());
        if (write) {
            String typed = reserve.text();
            if (typed.isBlank() || !stored(typed).equals(l.reserve())) {
                reserve.write(Typed.inField(l.reserve(), hand.units().heatUnit().name()));
            }
        }
        showReserve(session, l);
    }

    /** A maker's table is offered for tubing where the house has one, and wherever the line names one. */
    private void showTable(HouseSession session, RouteLine l) {
        Map<String, String> tables = new LinkedHashMap<>();
        tables.put("", "the code\u2019s table");
        tables.putAll(TubingDraft.names(session.draft()));
        Dom.setClass(tableBox, "offered", tables.size() > 1);
        Dom.setClass(tableBox, "named", !l.table().isEmpty());
        table.show(tables, l.table());
    }

    private void showReserve(HouseSession session, RouteLine l) {
        Optional<PlanError> error = session.error(l.pointer("reserve"));
        if (!l.feeds().equals(RouteDraft.CAP)) {
            reserve.understood("");
        } else if (error.isPresent()) {
            reserve.wrong(error.get().message());
        } else if (l.reserve().isBlank()) {
            reserve.understood("What a later appliance will burn, or none.");
        } else {
            try {
                reserve.understood("Keeps " + hand.units().heat(Measure.HEAT_RATE.read(l.reserve())) + " "
                        + hand.units().heatUnit().name());
            } catch (NotAQuantity e) {
                reserve.understood(l.reserve());
            }
        }
    }

    static Map<String, String> materials() {
        Map<String, String> out = new LinkedHashMap<>();
        out.put("", "not said");
        for (Material m : Material.values()) {
            out.put(m.written(), m == Material.STEEL ? "steel, Schedule 40" : m.label());
        }
        return out;
    }

    static Map<String, String> settings() {
        Map<String, String> out = new LinkedHashMap<>();
        out.put("", "not said");
        for (Setting s : Setting.values()) {
            out.put(s.written(), s == Setting.UNDERGROUND ? "buried" : s.written());
        }
        return out;
    }

    private static Map<String, String> unders() {
        Map<String, String> out = new LinkedHashMap<>();
        out.put("", "not said");
        out.put("none", "nothing");
        for (Under u : Under.values()) {
            out.put(u.written(), u == Under.DRIVE ? "a drive" : "a " + u.written());
        }
        return out;
    }

    private static Map<String, String> risers() {
        Map<String, String> out = new LinkedHashMap<>();
        out.put("", "not said");
        out.put("anodeless-riser", "a riser outdoors at both");
        out.put("transition-fitting", "changed to metal below ground at both");
        out.put("anodeless-riser, transition-fitting", "a riser at one, metal below ground at the other");
        out.put("wall-head-adapter", "a wall-head adapter at both");
        out.put("none", "no riser");
        return out;
    }

    private static Map<String, String> sizes(HouseSession session, RouteLine line, String none) {
        Map<String, String> out = new LinkedHashMap<>();
        out.put("", none);
        String material = line.material();
        List<String> makers = TubingDraft.sizes(session.draft(), line.table());
        if (!makers.isEmpty()) {
            makers.forEach(size -> out.put(size, SizeNames.shown(Material.CSST, size)));
            return out;
        }
        Named.find(Material.class, material).ifPresent(m -> {
            for (String size : SizeNames.standard(m)) {
                String stored = m == Material.COPPER ? size + " nominal" : size;
                out.put(stored, SizeNames.shown(m, size));
            }
        });
        return out;
    }

    /** Words for a material as a plan writes it. */
    static String materialWords(String written) {
        return materials().getOrDefault(written.toLowerCase(Locale.ROOT), written);
    }
}
