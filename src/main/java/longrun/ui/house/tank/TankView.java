package longrun.ui.house.tank;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.draft.PlaceKind;
import longrun.draft.PlaceStatus;
import longrun.draft.entry.SingleOrList;
import longrun.drawing.tank.TankYard;
import longrun.plan.Plan;
import longrun.plan.Tank;
import longrun.review.Review;
import longrun.tank.TankReport;
import longrun.ui.field.Field;
import longrun.ui.field.QuantityField;
import longrun.ui.frame.Dom;
import longrun.ui.house.figure.Drawing;
import longrun.ui.house.figure.FiguresPlace;
import longrun.ui.house.figure.PlacePart;
import longrun.ui.house.findings.FindingLines;
import longrun.ui.place.HousePage;
import longrun.words.DisplayUnits;

/** The place of the tank. Its figures are worked out a moment after a key, which only stores the entry. */
public final class TankView extends FiguresPlace {

    private final HousePage desk;
    private final TankPlay play;
    private final TankAnswers answers;
    private final Element tanks = Dom.el("div", "blocks");
    private final Element supplier = Dom.el("div", "");
    private final Element yard = Dom.el("div", "");
    private final FindingLines findings;
    private final FindingLines off;
    private final List<Element> figures;
    private final List<TankFields> shownTanks = new ArrayList<>();
    private final List<Drawing> yards = new ArrayList<>();
    private List<String> bases = List.of();

    public TankView(HousePage desk) {
        this.desk = desk;
        play = new TankPlay(desk);
        findings = new FindingLines(
                desk,
                f -> !TankFields.isDistance(f.field()) && (PlaceKind.TANK.holds(f.field()) || f.at().equals("tank")));
        off = new FindingLines(desk, f -> TankFields.isDistance(f.field()));
        answers = new TankAnswers(desk);
        Element another = Dom.button("act", "Add a tank that differs");
        another.addEventListener("click", e -> addTank());
        Element cold = Dom.el(
                "div",
                "grid",
                field(new QuantityField<>(
                        desk,
                        "/site/winterDesignTemp",
                        "Winter design temperature",
                        "The building office has it.",
                        DisplayUnits.TEMPERATURE,
                        true,
                        "")),
                field(new QuantityField<>(
                        desk,
                        "/site/groundTemp",
                        "Ground in winter",
                        "At the tank\u2019s depth; only a buried tank needs it.",
                        DisplayUnits.TEMPERATURE,
                        true,
                        "")));
        Element vapour = PlacePart.of(
                "vapour",
                "Vapour against the air\u2019s temperature",
                "Play with the gauge and the air; what is entered stays until you keep a reading.",
                play.element(),
                findings.element());
        Element asked = PlacePart.of(
                "asked",
                "What is asked of it",
                "At the winter design temperature; for how long, from the refill gauge on.",
                answers.demands());
        Element holds = PlacePart.of("holds", "What it holds", "", answers.volumes());
        Element smallest = PlacePart.of(
                "smallest",
                "The smallest standard tank that would do",
                "For everything firing at once, its pressure kept, even where the gauge stands 5 % too high.",
                answers.sizes());
        figures = List.of(vapour, asked, holds, smallest);
        Element stands = PlacePart.beside(
                PlacePart.of("stands", "What stands there", "", tanks, Dom.el("p", "acts", another)), holds);
        // what draws nothing yet stands behind the entries that it needs
        boolean begun = PlaceStatus.isStarted(desk.session(), PlaceKind.TANK);
        holds(begun ? vapour : stands, begun ? stands : vapour);
        holds(
                asked,
                PlacePart.of(
                        "off",
                        "How far it stands off",
                        "Shell to the thing, level with the ground; more than so much is written as > 25 ft.",
                        yard,
                        off.element()),
                PlacePart.beside(
                        PlacePart.of("supplier", "What the supplier and the weather office know", "", supplier, cold),
                        smallest));
    }

    private Element field(Field field) {
        return fields().add(field).element();
    }

    @Override
    protected void showEntries(boolean write) {
        shownTanks.forEach(TankFields::show);
    }

    /** Draws the tanks anew where their number changed. */
    @Override
    protected boolean drawEntries() {
        List<String> now = SingleOrList.of(desk.session().draft(), "/tank", "/tanks");
        if (now.equals(bases)) {
            return false;
        }
        bases.forEach(fields()::removeBelow);
        bases = now;
        shownTanks.clear();
        yards.clear();
        tanks.removeAllChildren();
        supplier.removeAllChildren();
        yard.removeAllChildren();
        for (int i = 0; i < bases.size(); i++) {
            String base = bases.get(i);
            TankFields one = new TankFields(desk, fields(), base);
            Drawing drawing = new Drawing("What is measured about the tank");
            shownTanks.add(one);
            yards.add(drawing);
            if (bases.size() > 1) {
                String name = "Tank " + (i + 1);
                tanks.appendChild(Dom.text("h4", "", name), one.element(), removal(i));
                supplier.appendChild(Dom.text("h4", "", name));
                yard.appendChild(Dom.text("h4", "", name));
            } else {
                tanks.appendChild(one.element());
            }
            supplier.appendChild(one.supplier());
            yard.appendChild(drawing.element(), one.distances());
        }
        return true;
    }

    /** Adds a tank unlike those entered; what stood alone becomes the first of a list. */
    void addTank() {
        int index = bases.size();
        desk.session().change(d -> SingleOrList.addTank(d, index));
        fields().focus(bases.get(bases.size() - 1) + "/kind");
    }

    private Element removal(int index) {
        Element remove = Dom.button("ask", "Remove tank " + (index + 1));
        remove.addEventListener("click", e -> removeTank(index));
        return remove;
    }

    void removeTank(int index) {
        String base = bases.get(index);
        bases.forEach(fields()::removeBelow);
        bases = List.of();
        desk.session().remove(base);
    }

    @Override
    protected void work() {
        Optional<Review> review = desk.session().review();
        boolean known = review.isPresent() && PlaceStatus.isStarted(desk.session(), PlaceKind.TANK);
        figures.forEach(f -> Dom.show(f, known));
        if (review.isEmpty()) {
            yards.forEach(y -> Dom.show(y.element(), false));
            return;
        }
        Plan plan = review.get().plan();
        TankReport report = review.get().tank().orElseThrow();
        play.show(plan, report, bases.get(0));
        answers.show(report);
        List<Tank> all = plan.allTanks();
        for (int i = 0; i < yards.size(); i++) {
            Drawing drawing = yards.get(i);
            Dom.show(drawing.element(), i < all.size());
            if (i < all.size()) {
                drawing.show(TankYard.svg(all.get(i)));
            }
        }
        findings.show();
        off.show();
    }
}
