package longrun.ui.house.tank;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.drawing.TankYard;
import longrun.finding.Finding;
import longrun.plan.Plan;
import longrun.plan.Tank;
import longrun.review.Review;
import longrun.tank.TankFindings;
import longrun.tank.TankReport;
import longrun.tank.TankStudy;
import longrun.ui.frame.Dom;
import longrun.ui.house.Field;
import longrun.ui.house.FieldList;
import longrun.ui.house.HouseDesk;
import longrun.ui.house.HouseFinding;
import longrun.ui.house.Place;
import longrun.ui.house.QuantityField;
import longrun.ui.house.Shown;
import longrun.ui.house.figure.Afterwards;
import longrun.ui.house.figure.Bases;
import longrun.ui.house.figure.Drawing;
import longrun.ui.house.figure.Parts;

/** The place of the tank. Its figures are worked out a moment after a key, which only stores the entry. */
public final class TankView implements Place {

    private final HouseDesk desk;
    private final FieldList fields = new FieldList();
    private final TankPlay play;
    private final TankAnswers answers;
    private final Element tanks = Dom.el("div", "blocks");
    private final Element supplier = Dom.el("div", "");
    private final Element yard = Dom.el("div", "");
    private final Element findings = Dom.el("div", "finds");
    private final Element element;
    private final Afterwards afterwards;
    private final List<TankFields> shownTanks = new ArrayList<>();
    private final List<Drawing> yards = new ArrayList<>();
    private List<String> bases = List.of();
    private List<Finding> findingsShown = List.of();

    public TankView(HouseDesk desk) {
        this.desk = desk;
        play = new TankPlay(desk);
        answers = new TankAnswers(desk);
        Element cold = Dom.el(
                "div",
                "grid",
                field(new QuantityField<>(
                        desk,
                        "/site/winterDesignTemp",
                        "Coldest morning",
                        "Winter design temperature: colder on one hour in a hundred; the building office has it.",
                        Shown.TEMPERATURE,
                        true,
                        "")),
                field(new QuantityField<>(
                        desk,
                        "/site/groundTemp",
                        "Ground in winter",
                        "At the tank\u2019s depth; only a buried tank needs it.",
                        Shown.TEMPERATURE,
                        true,
                        "")));
        element = Dom.el(
                "div",
                "place-body",
                Parts.of("stands", "What stands there", "", tanks, cold),
                Parts.of(
                        "vapour",
                        "Vapour against the air\u2019s temperature",
                        "Play with the gauge and the air; what is entered stays until you keep a reading.",
                        play.element(),
                        findings),
                Parts.of(
                        "asked",
                        "What is asked of it",
                        "On the coldest morning, at the refill gauge.",
                        answers.demands()),
                Parts.of("holds", "What it holds", "", answers.volumes()),
                Parts.of(
                        "smallest",
                        "The smallest standard tank that would do",
                        "For everything firing at once, by the rule.",
                        answers.sizes()),
                Parts.of("off", "How far it stands off", "Shell to the thing, level with the ground.", yard),
                Parts.of("supplier", "What the supplier knows", "", supplier));
        afterwards = new Afterwards(element, this::work);
    }

    private Element field(Field field) {
        return fields.add(field).element();
    }

    @Override
    public Element element() {
        return element;
    }

    @Override
    public void show(boolean write) {
        boolean fresh = drawTanks();
        fields.show(write || fresh);
        shownTanks.forEach(TankFields::show);
        if (write) {
            afterwards.now();
        } else {
            afterwards.soon();
        }
    }

    /** Draws the entries anew where their number changed; true where it did. */
    private boolean drawTanks() {
        List<String> now = Bases.of(desk.session(), "/tank", "/tanks");
        if (now.equals(bases)) {
            return false;
        }
        bases.forEach(fields::removeBelow);
        bases = now;
        shownTanks.clear();
        yards.clear();
        tanks.removeAllChildren();
        supplier.removeAllChildren();
        yard.removeAllChildren();
        for (String base : bases) {
            TankFields one = new TankFields(desk, fields, base);
            Drawing drawing = new Drawing("What is measured about the tank");
            shownTanks.add(one);
            yards.add(drawing);
            tanks.appendChild(one.element());
            supplier.appendChild(one.supplier());
            yard.appendChild(drawing.element(), one.distances());
        }
        return true;
    }

    /** Works the figures out from the last plan that could be read. */
    void work() {
        Optional<Plan> plan = desk.session().review().map(Review::plan);
        if (plan.isEmpty()) {
            return;
        }
        TankReport report = TankStudy.of(plan.get());
        play.show(plan.get(), report, bases.get(0));
        answers.show(report);
        List<Tank> all = plan.get().allTanks();
        for (int i = 0; i < yards.size(); i++) {
            Drawing drawing = yards.get(i);
            Dom.show(drawing.element(), i < all.size());
            if (i < all.size()) {
                drawing.show(TankYard.svg(all.get(i)));
            }
        }
        showFindings(plan.get(), report);
    }

    private void showFindings(Plan plan, TankReport report) {
        List<Finding> now = new ArrayList<>(TankFindings.of(plan, report));
        desk.session().findings().stream()
                .filter(f -> f.field().startsWith("/tank") || f.at().equals("tank"))
                .filter(f -> now.stream().noneMatch(n -> n.rule().equals(f.rule()) && n.at().equals(f.at())))
                .forEach(now::add);
        if (now.equals(findingsShown)) {
            return;
        }
        findingsShown = List.copyOf(now);
        findings.removeAllChildren();
        now.forEach(f -> findings.appendChild(HouseFinding.of(f, desk)));
    }

    @Override
    public void focus(String pointer) {
        fields.focus(pointer);
    }

    @Override
    public Map<String, String> heard() {
        return fields.heard();
    }

    FieldList fields() {
        return fields;
    }

    TankPlay play() {
        return play;
    }

    TankAnswers answers() {
        return answers;
    }

    List<Finding> findingsShown() {
        return findingsShown;
    }
}
