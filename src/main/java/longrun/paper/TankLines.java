package longrun.paper;

import java.util.ArrayList;
import java.util.List;
import longrun.origin.Figure;
import longrun.plan.Distance;
import longrun.plan.Fact;
import longrun.plan.Tank;
import longrun.review.Review;
import longrun.tank.TankReport;
import org.jsoup.nodes.Element;

/** The tank: its size, its place with the distances entered, and the two figures for its vapour. */
final class TankLines {

    private TankLines() {}

    static List<Element> elements(Review review) {
        List<Element> out = new ArrayList<>();
        List<List<String>> rows = new ArrayList<>();
        for (Tank t : review.plan().allTanks()) {
            rows.add(List.of(
                    t.waterCapacity()
                            .findText()
                            .or(() -> t.propaneWeight().findText())
                            .orElse(SheetWords.BLANK),
                    t.placement()
                                    .findValue()
                                    .map(p -> p.written().replace('-', ' '))
                                    .orElse(SheetWords.BLANK)
                            + t.orientation()
                                    .findValue()
                                    .map(o -> ", " + o.written())
                                    .orElse(""),
                    ft(t.toBuilding()),
                    ft(t.toPropertyLine()),
                    ft(t.toOpeningBelow()),
                    ft(t.toIntake()),
                    ft(t.toIgnition()),
                    t.gauge().findText().orElse(SheetWords.BLANK)
                            + t.gaugeDate()
                                    .findValue()
                                    .map(d -> " on " + SheetFile.day(d))
                                    .orElse("")));
        }
        if (rows.isEmpty()) {
            return out;
        }
        out.add(Html.heading("Tank and its place", "distances as entered"));
        out.add(Html.table(
                "Every tank with its place",
                List.of(
                        "Tank",
                        "Stands",
                        "To building",
                        "Property line",
                        "Opening below relief",
                        "Air intake",
                        "Ignition",
                        "Gauge"),
                List.of("z s", "", "r", "r", "r", "r", "r", ""),
                rows));
        review.tank().ifPresent(t -> out.add(vapour(t)));
        return out;
    }

    private static Element vapour(TankReport t) {
        return Html.led(
                "Vapour at the refill gauge and the design temperature:",
                btuh(t.plannedBtuh()) + " while it keeps " + text(t.keptPsig()) + "; " + btuh(t.capacityAtDesignBtuh())
                        + " at most, for a short time. "
                        + (t.supplier()
                                ? "It is your own figure."
                                : "Printed tables for one tank differ up to twofold, so the lower figure is planned"
                                        + " with and yours is asked for."));
    }

    private static String btuh(Figure f) {
        return (f.isKnown() ? SheetWords.roughly(f.number()) : SheetWords.BLANK) + " Btu/h";
    }

    private static String text(Figure f) {
        return f.isKnown() ? f.text() : SheetWords.BLANK;
    }

    private static String ft(Fact<Distance> d) {
        return d.findText().orElse(SheetWords.BLANK);
    }
}
