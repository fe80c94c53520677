package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.draft.sections.InletWords;
import longrun.draft.sections.PressureWords;
import longrun.draft.sections.RouteAnswer;
import longrun.drawing.plot.PressurePlot;
import longrun.origin.Origin;
import longrun.piping.Outlet;
import longrun.piping.Stage;
import longrun.pressure.OutletPressure;
import longrun.pressure.PressureOrigins;
import longrun.pressure.RegulatorOrigins;
import longrun.pressure.RegulatorPressure;
import longrun.pressure.SettingWindow;
import longrun.quantity.Pressure;
import longrun.review.Review;
import longrun.ui.frame.Dom;
import longrun.ui.house.figure.Drawing;
import longrun.ui.house.figure.FigureSlot;
import longrun.ui.house.figure.PlacePart;
import longrun.ui.place.HousePage;
import longrun.words.Names;

/**
 * The pressure that reaches the burners of the selected stage: along the longest run against the limits, at each inlet with
 * everything firing, what may be added there, and what the regulator must be set to.
 */
final class PressurePane {

    private final HousePage desk;
    private final Element heading = Dom.text("h3", "", "The pressure that reaches the burner");
    private final Drawing plot = new Drawing("Pressure along the longest run");
    private final TightSection tight = new TightSection();
    private final Element slots = Dom.el("dl", "slots");
    private final Element element;
    private String keys = "";
    private List<FigureSlot> figures = List.of();

    PressurePane(HousePage desk) {
        this.desk = desk;
        element = PlacePart.folded("pressure", heading, "", plot.element(), tight.element(), slots);
        Dom.setClass(element, "pressure", true);
    }

    Element element() {
        return element;
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
                .map(a -> Names.of(review, review.plan().appliances().get(a.item())))
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
        made.add(new FigureSlot(desk, "setting", "Set " + stage.id() + " to"));
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
        boolean both = window.lowest().isPresent() && window.highest().isPresent() && !window.isEmpty();
        slot.show(
                both ? range(window) : window.isEmpty() && window.complete() ? "no setting" : "not known",
                asks(review, window, from.value()) + entered(line, window) + " ",
                List.of(origins.setting(regulator), from));
    }

    private String range(SettingWindow window) {
        String low = pressure(window.lowest());
        String high = pressure(window.highest());
        String unit = high.substring(high.indexOf(' ') + 1);
        return (low.endsWith(unit)
                        ? low.substring(0, low.length() - unit.length()).strip()
                        : low) + " to " + high;
    }

    private String entered(RegulatorPressure line, SettingWindow window) {
        if (line.setting().isEmpty()) {
            return "";
        }
        if (window.lowest().isEmpty() && window.highest().isEmpty()) {
            return " Entered: " + pressure(line.setting()) + ".";
        }
        boolean within = window.admits(line.setting().get());
        return " Entered: " + pressure(line.setting()) + (within ? ", which is within." : ", which is not within.");
    }

    private static String asks(Review review, SettingWindow window, String bounds) {
        Optional<String> low = window.lowestFor().map(id -> Names.of(review, id));
        Optional<String> high = window.highestFor().map(id -> Names.of(review, id));
        if (low.isEmpty() && high.isEmpty()) {
            return "What to ask the supplier for is not known: no label behind it is entered.";
        }
        if (window.isEmpty() && low.equals(high)) {
            return "No setting suits " + low.orElseThrow() + ": it would take " + bounds + ", at once.";
        }
        if (window.isEmpty()) {
            return "No setting serves both " + low.orElseThrow() + " and " + high.orElseThrow() + ": it would take "
                    + bounds + ", at once.";
        }
        String who = low.map(w -> w + " asks for the least").orElse("")
                + (low.isPresent() && high.isPresent() ? ", " : "")
                + high.map(w -> w + " allows the most").orElse("");
        return "Ask the supplier to set it to " + bounds + ": " + who
                + (window.complete() ? "." : ", of the labels entered.");
    }

    private void inlet(Review review, int appliance, FigureSlot slot, PressureOrigins origins) {
        OutletPressure p = review.pressures().outlet(appliance);
        if (p.pressureAtInlet().isEmpty()) {
            slot.showUnknown(List.of());
            return;
        }
        InletWords words = new InletWords(review, appliance, desk.units());
        String note = words.losses() + " " + words.againstLabel() + " " + words.headroom() + words.rise() + " ";
        slot.show(
                pressure(p.pressureAtInlet()),
                note,
                List.of(
                        origins.pressureAtInlet(appliance),
                        origins.pressureDrooped(appliance),
                        origins.pressure(appliance),
                        origins.pressureIdle(appliance),
                        origins.staticTo(appliance),
                        origins.headroom(review.headroom(), appliance)));
    }

    private String pressure(Optional<Pressure> pressure) {
        return PressureWords.pressure(pressure, desk.units());
    }
}
