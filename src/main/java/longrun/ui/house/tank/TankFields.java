package longrun.ui.house.tank;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longrun.plan.choice.Orientation;
import longrun.plan.choice.TankKind;
import longrun.quantity.Show;
import longrun.tank.StandardTanks;
import longrun.ui.field.AnswerField;
import longrun.ui.field.DateField;
import longrun.ui.field.Field;
import longrun.ui.field.FieldList;
import longrun.ui.field.NumberField;
import longrun.ui.field.QuantityField;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.words.DisplayUnits;

/** What is asked of one tank entry: what it is, what its gauge says, and the few things only a supplier knows. */
final class TankFields {

    private final HousePage desk;
    private final FieldList fields;
    private final String at;
    private final Element sizes = Dom.el("div", "ans sizes-offered").setAttribute("role", "group");
    private final Element weight;
    private final Element depth;
    private final Element element;
    private String offered = "";

    TankFields(HousePage desk, FieldList fields, String at) {
        this.desk = desk;
        this.fields = fields;
        this.at = at;
        sizes.setAttribute("aria-label", "Standard sizes");
        weight = field(new QuantityField<>(
                desk,
                at + "/propaneWeight",
                "Propane when full",
                "On the cylinder\u2019s collar.",
                DisplayUnits.WEIGHT,
                true,
                ""));
        depth = field(new QuantityField<>(
                desk,
                at + "/axisDepth",
                "Depth of its axis",
                "From the ground down to the middle of the tank; where none is entered, one foot of cover is taken.",
                DisplayUnits.LENGTH,
                true,
                ""));
        Element capacity = field(new QuantityField<>(
                desk,
                at + "/waterCapacity",
                "Water capacity",
                "On the data plate, as water capacity; it is never filled with gas to more than about 80 %.",
                DisplayUnits.GALLONS,
                true,
                ""));
        capacity.appendChild(sizes);
        element = Dom.el(
                "div",
                "grid",
                field(AnswerField.of(desk, at + "/kind", "It is a", named("asme", "tank", "cylinder", "cylinder"))),
                capacity,
                weight,
                field(AnswerField.of(
                        desk,
                        at + "/orientation",
                        "Lying or upright",
                        named("horizontal", "lying", "vertical", "upright"))),
                field(AnswerField.of(
                        desk,
                        at + "/placement",
                        "Above ground or buried",
                        named("above-ground", "above ground", "underground", "buried"))),
                depth,
                field(new NumberField(desk, at + "/count", "How many alike", "One, where nothing is written.")),
                field(new QuantityField<>(
                        desk,
                        at + "/refillAt",
                        "Refill at",
                        "Gauge reading at which it is filled again; 20 to 30 % is common practice.",
                        DisplayUnits.SHARE,
                        true,
                        "")),
                field(new QuantityField<>(
                        desk,
                        at + "/gauge",
                        "Gauge shows",
                        "What it says today, in percent; a cylinder\u2019s, also the pounds left.",
                        DisplayUnits.SHARE,
                        true,
                        "")),
                field(new DateField(
                        desk,
                        at + "/gaugeDate",
                        "Gauge read on",
                        "Such as Oct 1 2026, or 2026-10-01; the dates count from it.")),
                measures());
    }

    /** For a tank that is of no standard size. */
    private Element measures() {
        return Dom.el(
                "details",
                "more",
                Dom.text("summary", "", "Its own measures"),
                Dom.el(
                        "div",
                        "grid",
                        field(new QuantityField<>(
                                desk,
                                at + "/diameter",
                                "Diameter",
                                "Outside; such as 37 in. The standard size\u2019s where none is entered.",
                                DisplayUnits.LENGTH,
                                true,
                                "")),
                        field(new QuantityField<>(
                                desk,
                                at + "/length",
                                "Length",
                                "Over the heads; such as 120 in.",
                                DisplayUnits.LENGTH,
                                true,
                                ""))));
    }

    /** What the supplier or the regulator's sheet knows. */
    Element supplier() {
        return Dom.el(
                "div",
                "grid",
                field(new QuantityField<>(
                        desk,
                        at + "/leastTankPressure",
                        "Least tank pressure",
                        "What it may be drawn down to for a short time; where none is entered 10.7 psi, the"
                                + " rule\u2019s own basis.",
                        DisplayUnits.TANK_PRESSURE,
                        true,
                        "")),
                field(new QuantityField<>(
                        desk,
                        at + "/vapourCapacity",
                        "The supplier\u2019s own figure",
                        "Vapour at the design temperature and the refill gauge, of all alike together; it overrules"
                                + " the figures here.",
                        DisplayUnits.HEAT,
                        true,
                        "")));
    }

    /** Whether an entry is one of the distances a code asks for. */
    static boolean isDistance(String pointer) {
        return pointer.matches("/tanks?(/[0-9]+)?/(to[A-Z][A-Za-z]*|betweenTanks)");
    }

    /** The distances a code asks for. */
    Element distances() {
        Element grid = Dom.el("div", "grid");
        grid.appendChild(
                distance("/toBuilding", "To the building", "From the shell to the nearest important building."),
                distance("/toPropertyLine", "To the property line", "To a line that may be built on."),
                distance(
                        "/toOpeningBelow",
                        "To an opening below",
                        "Nearest window, door or well whose lowest edge is below the relief valve."),
                distance("/toIntake", "To an air intake", "Of a sealed appliance or a ventilator."),
                distance("/toIgnition", "To what can light gas", "Switch, motor, air conditioner, flame."),
                distance("/betweenTanks", "Between tanks", "Shell to shell."));
        return grid;
    }

    private Element distance(String name, String label, String help) {
        return field(new QuantityField<>(
                desk,
                at + name,
                label,
                help + " More than so much is written as > 25 ft.",
                DisplayUnits.LENGTH,
                true,
                "there is none"));
    }

    private static Map<String, String> named(String... pairs) {
        Map<String, String> out = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            out.put(pairs[i], pairs[i + 1]);
        }
        return out;
    }

    private Element field(Field field) {
        return fields.add(field).element();
    }

    Element element() {
        return element;
    }

    /** Shows what depends on the other entries. */
    void show() {
        boolean cylinder = desk.session().text(at + "/kind").equals("cylinder");
        Dom.show(weight, cylinder);
        Dom.show(depth, desk.session().text(at + "/placement").equals("underground"));
        offer(cylinder);
    }

    /** The standard sizes of its kind and of the way it lies. */
    private void offer(boolean cylinder) {
        boolean upright = desk.session().text(at + "/orientation").equals("vertical");
        List<StandardTanks.Size> all = StandardTanks.all().stream()
                .filter(s -> cylinder ? s.kind() == TankKind.CYLINDER : s.kind() == TankKind.ASME)
                .filter(s -> cylinder || (s.orientation() == Orientation.VERTICAL) == upright)
                .toList();
        List<Double> gallons = all.stream()
                .map(StandardTanks.Size::waterGal)
                .distinct()
                .sorted()
                .toList();
        String stored = desk.session().text(at + "/waterCapacity");
        String now = gallons + stored;
        if (now.equals(offered)) {
            return;
        }
        offered = now;
        sizes.removeAllChildren();
        for (double g : gallons) {
            String text = (g == Math.rint(g) ? Show.whole(g) : Show.plain(g)) + " gal";
            Element button = Dom.button(stored.equals(text) ? "on" : "", text)
                    .setAttribute("aria-pressed", String.valueOf(stored.equals(text)));
            button.addEventListener("click", e -> desk.session().choose(at + "/waterCapacity", text));
            sizes.appendChild(button);
        }
    }
}
