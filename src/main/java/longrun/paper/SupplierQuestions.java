package longrun.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import longrun.origin.Figure;
import longrun.plan.Plan;
import longrun.plan.Site;
import longrun.plan.Tank;
import longrun.pressure.RegulatorPressure;
import longrun.pressure.SettingWindow;
import longrun.quantity.Show;
import longrun.review.Review;
import longrun.tank.Demand;
import longrun.tank.TankReport;
import org.jsoup.nodes.Element;

/** Five questions to the supplier, numbered, each with blanks for the answer. */
final class SupplierQuestions {

    private SupplierQuestions() {}

    static Element of(Review review) {
        List<Element> rows = new ArrayList<>();
        rows.add(
                row(1, "Setting of the last regulator before the house.", setting(review), "set to", "inlet it needs"));
        rows.add(row(2, "Vapour on a cold morning.", vapour(review), "Btu/h you count on", "for how many hours"));
        rows.add(row(3, "Tank and its place.", tank(review), "tank, gal", "place, if another"));
        rows.add(row(4, "Delivery.", delivery(review.plan()), "lead, days", "weeks closed"));
        rows.add(row(5, "Leak check before the tank valve is opened.", "Who makes it, and when?", "who", "when"));
        return Html.el("table", "asks", rows.toArray(Element[]::new));
    }

    private static Element row(int number, String lead, String words, String... blanks) {
        Element tr = Html.el(
                "tr", "", Html.text("td", "n", String.valueOf(number)), Html.el("td", "", Html.led(lead, words)));
        for (String b : blanks) {
            tr.appendChild(Html.el("td", "b", Html.text("p", "", b)));
        }
        return tr;
    }

    private static String setting(Review review) {
        List<String> said = new ArrayList<>();
        for (int r = 0; r < review.pressures().regulators().size(); r++) {
            RegulatorPressure p = review.pressures().regulator(r);
            boolean last = review.piping().stages().get(r).outlets().stream()
                    .anyMatch(o -> o.kind() == longrun.piping.Outlet.Kind.APPLIANCE);
            if (!last) {
                continue;
            }
            SettingWindow window = review.pressures().window(r);
            said.add(SheetWords.regulator(p.regulator()) + ": " + window(window) + "; reckoned with "
                    + SheetWords.pressure(p.settingInWc()));
        }
        return said.isEmpty() ? "No regulator feeds an appliance yet." : String.join("; ", said);
    }

    private static String window(SettingWindow w) {
        if (w.lowestInWc().isEmpty() || w.highestInWc().isEmpty()) {
            return "what the rating plates ask for is not all known";
        }
        if (w.isEmpty()) {
            return "no setting serves " + w.lowestFor().orElse("one") + " and "
                    + w.highestFor().orElse("another") + " alike";
        }
        return "from " + at(w.lowestInWc()) + " to " + at(w.highestInWc()) + " serves every plate read"
                + (w.complete() ? "" : "; not all are read");
    }

    private static String at(OptionalDouble inWc) {
        return SheetWords.pressure(inWc);
    }

    private static String vapour(Review review) {
        Optional<TankReport> tank = review.tank();
        String asked = tank.flatMap(t -> t.demands().stream().findFirst())
                .map(Demand::btuh)
                .filter(Figure::isKnown)
                .map(Figure::text)
                .orElse(SheetWords.BLANK + " Btu/h");
        String air = review.plan()
                .site()
                .flatMap(s -> s.winterDesignTemp().findText())
                .map(t -> t.replace("degF", "\u00B0F").replace("degC", "\u00B0C"))
                .orElse("the winter design temperature, which is not entered");
        String gauge = review.plan().allTanks().stream()
                .flatMap(t -> t.refillAt().findText().stream())
                .findFirst()
                .orElse("the refill gauge, which is not entered");
        return "What does this tank give at " + air + " and " + gauge + "? Asked, all firing: " + asked + ".";
    }

    private static String tank(Review review) {
        List<Tank> tanks = review.plan().allTanks();
        String have = tanks.isEmpty()
                ? "No tank is planned yet"
                : tanks.get(0).waterCapacity().findText().orElse("size not entered")
                        + tanks.get(0)
                                .placement()
                                .findValue()
                                .map(p -> ", " + p.written().replace('-', ' '))
                                .orElse("")
                        + tanks.get(0)
                                .toBuilding()
                                .findText()
                                .map(d -> ", " + d + " from the house")
                                .orElse("");
        String would = review.tank().stream()
                .flatMap(t -> t.smallest().stream())
                .filter(c -> !c.underground())
                .findFirst()
                .flatMap(c -> c.size()
                        .map(s -> " By our reckoning " + Show.whole(s.waterGal())
                                + " gal above ground carries everything firing while it keeps its pressure."))
                .orElse("");
        return have + ": do you set it there?" + would;
    }

    private static String delivery(Plan plan) {
        Optional<Site> site = plan.site();
        String lead = site.flatMap(s -> s.leadDays().findValue())
                .map(d -> Show.plain(d) + " days from call to truck")
                .orElse("days from call to truck not entered");
        int closed = site.map(s -> s.unreachable().size()).orElse(0);
        return "Reckoned with " + lead + " and "
                + (closed == 0
                        ? "no spell without a truck"
                        : closed == 1 ? "one spell without a truck" : closed + " spells without a truck")
                + ".";
    }
}
