package longrun.ui.house.home;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.draft.PressureReduction;
import longrun.draft.run.PressureStart;
import longrun.draft.run.PressureStartPictures;
import longrun.plan.choice.CodeProfile;
import longrun.ui.field.ChoiceField;
import longrun.ui.field.Field;
import longrun.ui.field.FieldList;
import longrun.ui.field.NumberField;
import longrun.ui.field.QuantityField;
import longrun.ui.field.WordsField;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Scale;
import longrun.ui.house.figure.PlacePart;
import longrun.ui.place.HousePage;
import longrun.ui.place.Place;
import longrun.words.DisplayUnits;
import longrun.words.Names;

/** The house itself: its name, how the pressure is reduced, where it stands, its rooms, the code that decides. */
public final class HousePlace implements Place {

    private final HousePage desk;
    private final FieldList fields = new FieldList();
    private final Scale<PressureReduction> cuts;
    private final Element cutNote = Dom.text("p", "lede start-note", "");
    private final RegulatorList regulators;
    private final RoomList rooms;
    private final AmendmentList amendments;
    private final CodeChange changed;
    private final Element element;

    public HousePlace(HousePage desk) {
        this.desk = desk;
        cuts = new Scale<>(
                "cut",
                "h-cut",
                List.of(PressureReduction.values()),
                c -> new Scale.Choice(c.title(), c.note(), Optional.of(PressureStartPictures.of(picture(c)))),
                c -> desk.session().change(c::into));
        regulators = new RegulatorList(desk, fields);
        rooms = new RoomList(desk, fields);
        amendments = new AmendmentList(desk, fields);
        changed = new CodeChange(desk);
        element = Dom.el(
                "div",
                "place-body",
                PlacePart.beside(
                        PlacePart.of(
                                "code",
                                "Its name, and the code that decides",
                                "",
                                code(),
                                amendments.element(),
                                changed.element()),
                        PlacePart.of("site", "Where it stands", "", site())),
                PlacePart.of(
                        "cut",
                        "How is the pressure reduced?",
                        "Choose the picture that looks like yours; it fills in the regulators and the pipe between"
                                + " them.",
                        cuts.getElement(),
                        cutNote,
                        regulators.element()),
                PlacePart.of("rooms", "Rooms that hold appliances", "", rooms.element()));
    }

    private Element field(Field field) {
        return fields.add(field).element();
    }

    private Element site() {
        return Dom.el(
                "div",
                "grid",
                field(new QuantityField<>(
                        desk,
                        "/site/elevation",
                        "Elevation",
                        "Height above the sea; appliances lose input with it.",
                        DisplayUnits.ELEVATION,
                        false,
                        "")),
                field(new QuantityField<>(
                        desk,
                        "/site/winterDesignTemp",
                        "Winter design temperature",
                        "Colder than this on one hour in a hundred; the building office has it.",
                        DisplayUnits.TEMPERATURE,
                        false,
                        "")),
                field(new QuantityField<>(
                        desk,
                        "/site/snowDepth",
                        "Snow depth",
                        "As deep as it lies in a hard winter.",
                        DisplayUnits.LENGTH,
                        true,
                        "no snow")),
                field(new NumberField(desk, "/site/people", "People in the house", "For hot water.")));
    }

    private Element code() {
        Map<String, String> profiles = new LinkedHashMap<>();
        for (CodeProfile each : CodeProfile.values()) {
            profiles.put(each.written(), Names.capital(each.label()));
        }
        return Dom.el(
                "div",
                "grid",
                field(new WordsField(desk, "/name", "Name of the house", "As it shall stand on the papers.")),
                field(new ChoiceField(
                        desk,
                        "/code/profile",
                        "Code",
                        "I don\u2019t know; the fuel gas code, 2018, is taken",
                        () -> profiles)),
                field(new WordsField(
                        desk, "/code/adopted", "As adopted where the house stands", "Such as: county building code.")));
    }

    @Override
    public Element element() {
        return element;
    }

    @Override
    public void show(boolean write) {
        showCut();
        boolean fresh = regulators.draw();
        fresh |= rooms.draw();
        fresh |= amendments.draw();
        fields.show(write || fresh);
        changed.show();
    }

    private void showCut() {
        Optional<PressureReduction> cut = PressureReduction.of(desk.session().draft());
        cut.ifPresentOrElse(cuts::setValue, cuts::clear);
        boolean can = PressureReduction.canChoose(desk.session().draft());
        Dom.show(cuts.getElement(), can);
        Dom.show(cutNote, !can || cut.isEmpty());
        Dom.retext(
                cutNote,
                can
                        ? "Not chosen yet. Whoever sells the gas knows which it is."
                        : "This house has regulators of its own arrangement, which no picture here shows.");
    }

    @Override
    public void focus(String pointer) {
        if (pointer.equals("/regulators") || desk.session().at("/regulators").isEmpty() && pointer.startsWith("/reg")) {
            FieldList.focus(cuts.getElement().getChild(0).getChild(0));
        } else {
            fields.focus(pointer);
        }
    }

    @Override
    public Map<String, String> heard() {
        return fields.heard();
    }

    /** A house is drawn as a run is that starts alike. */
    private static PressureStart picture(PressureReduction cut) {
        return switch (cut) {
            case WALL -> PressureStart.WALL;
            case TANK -> PressureStart.TANK;
            case TWO_PSI -> PressureStart.TWO_PSI;
        };
    }
}
