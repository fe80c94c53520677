package longrun.ui.house.valve;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.draft.sections.PressureWords;
import longrun.origin.Origin;
import longrun.plan.Plan;
import longrun.plan.choice.ReadingKind;
import longrun.pressure.Droop;
import longrun.pressure.GaugeCheck;
import longrun.pressure.PressureOrigins;
import longrun.pressure.Pressures;
import longrun.pressure.RegulatorOrigins;
import longrun.pressure.RegulatorPressure;
import longrun.review.Review;
import longrun.ui.field.ChoiceField;
import longrun.ui.field.DateField;
import longrun.ui.field.FieldList;
import longrun.ui.field.NumberField;
import longrun.ui.field.QuantityField;
import longrun.ui.frame.Dom;
import longrun.ui.frame.WhereFrom;
import longrun.ui.house.figure.OriginSteps;
import longrun.ui.place.HousePage;
import longrun.words.DisplayUnits;

/** One reading: where, in which state, what the gauge showed, when; and what was predicted. */
final class ReadingBlock {

    private static final Map<String, String> KINDS = new LinkedHashMap<>();

    static {
        KINDS.put(ReadingKind.FLOWING_ALL.written(), "everything firing");
        KINDS.put(ReadingKind.FLOWING_ALONE.written(), "only the appliance there firing");
        KINDS.put(ReadingKind.LOCK_UP.written(), "just after the last burner is shut off (lock-up)");
        KINDS.put(ReadingKind.STATIC.written(), "gas on, nothing firing (static)");
        KINDS.put(ReadingKind.TEST.written(), "the pressure test of the pipe");
        KINDS.put(ReadingKind.LEAK_CHECK.written(), "the leak check");
    }

    private final HousePage desk;
    private final int index;
    private final Element verdict = Dom.text("span", "", "");
    private final WhereFrom from;
    private final Element element;
    private final Element tempField;
    private final Element minutesField;

    ReadingBlock(HousePage desk, FieldList fields, int index, Runnable removed) {
        this.desk = desk;
        this.index = index;
        String at = ReadingsPane.READINGS + "/" + index;
        from = new WhereFrom("from-reading-" + index);
        from.show(List.of());
        tempField = fields.add(new QuantityField<>(
                        desk,
                        at + "/temp",
                        "Pipe\u2019s temperature then",
                        "Of the air in the pipe, by a thermometer on it: the gauge falls as it cools.",
                        DisplayUnits.TEMPERATURE,
                        false,
                        ""))
                .element();
        minutesField = fields.add(new NumberField(
                        desk, at + "/minutes", "Minutes since the test began", "0 for the first reading."))
                .element();
        Element remove = Dom.button("ask", "Remove this reading");
        remove.addEventListener("click", e -> removed.run());
        element = Dom.el(
                "div",
                "block reading",
                Dom.el(
                        "div",
                        "grid",
                        fields.add(new ChoiceField(
                                        desk,
                                        at + "/at",
                                        "Read at",
                                        "where?",
                                        () -> PressureWords.points(
                                                desk.session().draft())))
                                .element(),
                        fields.add(new ChoiceField(desk, at + "/what", "With", "in which state?", () -> KINDS))
                                .element(),
                        fields.add(new QuantityField<>(
                                        desk,
                                        at + "/pressure",
                                        "The gauge showed",
                                        "With its unit where it is no water gauge: 10 psi.",
                                        DisplayUnits.APPLIANCE_PRESSURE,
                                        false,
                                        ""))
                                .element(),
                        tempField,
                        minutesField,
                        fields.add(new DateField(desk, at + "/date", "Read on", "Such as Sep 1 2026, or 2026-09-01."))
                                .element()),
                Dom.el("p", "verdict", verdict, Dom.words(" "), from.ask()).setAttribute("role", "status"),
                from.list(),
                remove);
    }

    Element element() {
        return element;
    }

    /** The weather and the clock count in a test alone. */
    void showOfTest() {
        String what = desk.session().text(ReadingsPane.READINGS + "/" + index + "/what");
        boolean test = what.equals(ReadingKind.TEST.written());
        Dom.show(tempField, test);
        Dom.show(minutesField, test || what.equals(ReadingKind.LEAK_CHECK.written()));
    }

    void judge(Optional<Review> review, Optional<GaugeCheck> check) {
        if (review.isEmpty()) {
            Dom.retext(verdict, "An entry waits to be corrected; the reading is judged once it is.");
            from.show(List.of());
            return;
        }
        Plan.Reading reading = review.get().plan().readings().get(index);
        boolean test = reading.what().is(ReadingKind.TEST) || reading.what().is(ReadingKind.LEAK_CHECK);
        if (check.isEmpty()) {
            Dom.retext(
                    verdict,
                    test
                            ? "A test is held against the test plan above, not against the pressures in use: enter its first and its"
                                    + " last reading, each with the temperature."
                            : "Enter where it was read, in which state, and what the gauge showed.");
            from.show(List.of());
            return;
        }
        GaugeCheck c = check.get();
        boolean differs = c.verdict() == GaugeCheck.Verdict.DIFFERS;
        String predicted = c.predicted().isPresent()
                ? "Predicted " + PressureWords.pressure(c.predicted(), desk.units()) + "; the gauge "
                : "Nothing is predicted; ";
        String words = c.predicted().isPresent() ? c.words() + "." : "an entry is missing.";
        Dom.retext(verdict, predicted + words + counted(review.get().pressures(), reading));
        Dom.setClass(verdict, "caut", differs);
        from.show(origin(review.get().pressures(), reading)
                .filter(o -> c.predicted().isPresent())
                .map(OriginSteps::of)
                .orElse(List.of()));
    }

    /** Whether it takes the place of the default fall of a regulator. */
    private static String counted(Pressures pressures, Plan.Reading reading) {
        int r = regulator(pressures, reading);
        if (r < 0 || !reading.what().is(ReadingKind.FLOWING_ALL)) {
            return "";
        }
        RegulatorPressure line = pressures.regulator(r);
        String id = line.regulator().id();
        return line.droop().filter(d -> d.source() == Droop.Source.MEASURED).isPresent()
                ? " From here on " + id + " is taken to fall as this gauge read, no more by the default."
                : " Its maker\u2019s own fall is entered for " + id + ", and is what counts.";
    }

    private static int regulator(Pressures pressures, Plan.Reading reading) {
        for (int r = 0; r < pressures.regulators().size(); r++) {
            if (reading.at().is(pressures.regulator(r).regulator().id())) {
                return r;
            }
        }
        return -1;
    }

    private static Optional<Origin> origin(Pressures pressures, Plan.Reading reading) {
        boolean idle = reading.what().is(ReadingKind.LOCK_UP) || reading.what().is(ReadingKind.STATIC);
        int r = regulator(pressures, reading);
        if (r >= 0) {
            RegulatorOrigins origins = new RegulatorOrigins(pressures);
            return Optional.of(idle ? origins.lockUp(r) : origins.predictedDroop(r));
        }
        PressureOrigins origins = new PressureOrigins(pressures);
        List<longrun.plan.Appliance> appliances =
                pressures.sizing().piping().plan().appliances();
        for (int a = 0; a < appliances.size(); a++) {
            if (reading.at().is(appliances.get(a).id())) {
                return Optional.of(
                        idle
                                ? origins.pressureIdle(a)
                                : reading.what().is(ReadingKind.FLOWING_ALL)
                                        ? origins.pressureAtInlet(a)
                                        : origins.pressureAlone(a));
            }
        }
        return Optional.empty();
    }
}
