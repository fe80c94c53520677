package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import longrun.drawing.PressurePlot;
import longrun.origin.Origin;
import longrun.piping.Outlet;
import longrun.piping.Stage;
import longrun.plan.Appliance;
import longrun.plan.Fact;
import longrun.pressure.OutletPressure;
import longrun.pressure.PressureOrigins;
import longrun.pressure.RegulatorOrigins;
import longrun.pressure.RegulatorPressure;
import longrun.pressure.SettingWindow;
import longrun.quantity.Pressure;
import longrun.review.Review;
import longrun.ui.frame.Dom;
import longrun.ui.house.HouseDesk;
import longrun.ui.house.figure.Drawing;
import longrun.ui.house.figure.FigureSlot;

/**
 * The pressure that reaches the burners of the stage in hand: along the longest run against the limits, at each inlet with
 * everything firing, what may be added there, and what the regulator must be set to.
 */
final class PressurePane {

    private final HouseDesk desk;
    private final Element heading = Dom.text("h3", "", "The pressure that reaches the burner");
    private final Drawing plot = new Drawing("Pressure along the longest run");
    private final Element room = Dom.text("p", "q s", "");
    private final TightSection tight = new TightSection();
    private final Element slots = Dom.el("dl", "slots");
    private final Element element;
    private String keys = "";
    private List<FigureSlot> figures = List.of();

    PressurePane(HouseDesk desk) {
        this.desk = desk;
        element = Dom.el("section", "part pressure", heading, plot.element(), room, tight.element(), slots);
    }

    Element element() {
        return element;
    }

    String plotShown() {
        return plot.shown();
    }

    List<String> figuresShown() {
        return figures.stream().map(FigureSlot::shown).toList();
    }

    void show(Optional<RouteAnswer> answer) {
        Optional<Integer> index = answer.filter(a -> a.stage().isPresent())
                .map(a -> a.stage().getAsInt())
                .filter(s -> answer.get().review().sizing().stage(s).known());
        Dom.show(element, index.isPresent());
        if (index.isEmpty()) {
            return;
        }
        Review review = answer.get().review();
        Stage stage = review.piping().stages().get(index.get());
        Dom.retext(heading, "The pressure that reaches the burner, after " + stage.id());
        plot.show(PressurePlot.svg(review.pressures(), index.get()));
        Dom.retext(room, ended("Room on the longest run: " + review.headroom().stageWords(index.get())));
        List<Outlet> appliances = stage.outlets().stream()
                .filter(o -> o.kind() == Outlet.Kind.APPLIANCE)
                .toList();
        tight.show(review, index.get(), desk.units());
        lay(review, stage, appliances);
        setting(review, index.get(), figures.get(0));
        PressureOrigins origins = new PressureOrigins(review.pressures());
        for (int k = 0; k < appliances.size(); k++) {
            inlet(review, appliances.get(k).item(), figures.get(k + 1), origins);
        }
    }

    /** One slot for the regulator and one an appliance; made anew only where the stage ends elsewhere. */
    private void lay(Review review, Stage stage, List<Outlet> appliances) {
        List<String> names = appliances.stream()
                .map(a -> PressureWords.name(review.plan().appliances().get(a.item())))
                .toList();
        StringBuilder now = new StringBuilder(stage.id());
        for (int k = 0; k < names.size(); k++) {
            now.append('\n').append(appliances.get(k).id()).append(' ').append(names.get(k));
        }
        if (now.toString().equals(keys)) {
            return;
        }
        keys = now.toString();
        slots.removeAllChildren();
        List<FigureSlot> made = new ArrayList<>();
        made.add(new FigureSlot(desk, "setting", "Setting of " + stage.id()));
        for (int k = 0; k < appliances.size(); k++) {
            made.add(new FigureSlot(desk, "inlet-" + k, names.get(k) + ", at its inlet"));
        }
        made.forEach(f -> slots.appendChild(f.element()));
        figures = made;
    }

    private void setting(Review review, int regulator, FigureSlot slot) {
        RegulatorPressure line = review.pressures().regulator(regulator);
        SettingWindow window = review.pressures().window(regulator);
        RegulatorOrigins origins = new RegulatorOrigins(review.pressures());
        Origin from = origins.window(regulator);
        String asks = window.lowestInWc().isPresent() || window.highestInWc().isPresent()
                ? "Ask the supplier to set it to " + from.value()
                        + (window.complete() ? "." : ", as far as the labels are entered.")
                : "No label of an appliance behind it is entered.";
        slot.show(pressure(line.settingInWc()), asks + " ", List.of(origins.setting(regulator), from));
    }

    private void inlet(Review review, int appliance, FigureSlot slot, PressureOrigins origins) {
        OutletPressure p = review.pressures().outlet(appliance);
        if (p.pressureAtInletInWc().isEmpty()) {
            slot.showUnknown(List.of());
            return;
        }
        Appliance entered = review.plan().appliances().get(appliance);
        String note = "Left with everything firing: the regulator has fallen, pipe and connector have taken theirs; "
                + pressure(p.pressureInWc()) + " at the pipe\u2019s end from the setting. "
                + against(p, entered.minInlet(), entered.maxInlet()) + " Room for more here: " + room(review, appliance)
                + rise(p) + " ";
        slot.show(
                pressure(p.pressureAtInletInWc()),
                note,
                List.of(
                        origins.pressureAtInlet(appliance),
                        origins.pressureDrooped(appliance),
                        origins.pressure(appliance),
                        origins.pressureIdle(appliance),
                        origins.staticTo(appliance),
                        origins.headroom(review.headroom(), appliance)));
    }

    /** Propane is heavier than air: what rising costs stands apart. */
    private String rise(OutletPressure p) {
        if (p.staticInWc().isEmpty() || Math.abs(p.staticInWc().getAsDouble()) < 0.005) {
            return "";
        }
        double lost = p.staticInWc().getAsDouble();
        return " The pipe " + (lost > 0 ? "rises, which costs " : "falls, which gives ")
                + pressure(OptionalDouble.of(Math.abs(lost))) + " apart from these.";
    }

    /** The headroom in words, without the name its slot already has. */
    private static String room(Review review, int appliance) {
        String id = review.plan().appliances().get(appliance).id();
        return ended(review.headroom().outletWords(appliance).replaceFirst("^" + Pattern.quote(id) + ": ", ""));
    }

    private static String ended(String sentence) {
        return sentence.endsWith(".") ? sentence : sentence + ".";
    }

    private static String against(OutletPressure p, Fact<Pressure> least, Fact<Pressure> greatest) {
        return switch (p.status()) {
            case ENOUGH ->
                "Between the label\u2019s " + least.findText().orElse("") + " and "
                        + greatest.findText().orElse("") + ".";
            case LOW -> "Below the label\u2019s least, " + least.findText().orElse("not entered") + ".";
            case HIGH ->
                "With nothing firing it is above the label\u2019s greatest, "
                        + greatest.findText().orElse("not entered") + ".";
            case UNKNOWN -> "The label\u2019s least and greatest are not both entered.";
        };
    }

    private String pressure(OptionalDouble inWc) {
        return PressureWords.pressure(inWc, desk.units());
    }
}
