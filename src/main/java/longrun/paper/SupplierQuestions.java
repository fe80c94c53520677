package longrun.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.origin.Figure;
import longrun.paper.page.Html;
import longrun.paper.page.SheetWords;
import longrun.piping.Outlet;
import longrun.plan.Plan;
import longrun.plan.Site;
import longrun.plan.Tank;
import longrun.pressure.RegulatorPressure;
import longrun.pressure.SettingWindow;
import longrun.quantity.Show;
import longrun.review.Review;
import longrun.tank.Demand;
import org.jsoup.nodes.Element;

/** Five questions to the supplier, numbered, each with blanks for the answer; each in two lines at most. */
final class SupplierQuestions {

    /** Regulators before appliances that are asked for by name; the rest stands in the schedule. */
    private static final int NAMED = 1;

    private SupplierQuestions() {}

    static Element of(Review review) {
        List<Element> rows = new ArrayList<>();
        rows.add(row(1, "Setting.", setting(review), "set to", "inlet it needs", "then passes"));
        rows.add(row(2, "Vapour you count on", vapour(review), "Btu/h", "hours held", "refill at, %"));
        rows.add(row(3, "Tank and place.", tank(review), "tank, gal", "place, if another", "ignition at, ft"));
        rows.add(row(4, "Delivery.", delivery(review.plan()), "lead, days", "weeks closed", "price a gallon"));
        rows.add(row(5, "Leak check", "before the tank valve is opened.", "who", "when", "found"));
        return Html.el("table", "asks", rows.toArray(Element[]::new));
    }

    private static Element row(int number, String lead, String words, String... blanks) {
        Element tr = Html.el(
                "tr", "", Html.text("td", "n", String.valueOf(number)), Html.el("td", "w", Html.led(lead, words)));
        for (String b : blanks) {
            tr.appendChild(Html.el("td", "b", Html.text("p", "", b)));
        }
        return tr;
    }

    /** The regulators that feed appliances, in the plan's order. */
    static List<RegulatorPressure> lastRegulators(Review review) {
        List<RegulatorPressure> out = new ArrayList<>();
        for (int r = 0; r < review.pressures().regulators().size(); r++) {
            if (review.piping().stages().get(r).outlets().stream().anyMatch(o -> o.kind() == Outlet.Kind.APPLIANCE)) {
                out.add(review.pressures().regulator(r));
            }
        }
        return out;
    }

    private static String setting(Review review) {
        List<RegulatorPressure> last = lastRegulators(review);
        if (last.isEmpty()) {
            return "No regulator feeds an appliance yet.";
        }
        List<String> said = new ArrayList<>();
        for (RegulatorPressure p : last.subList(0, Math.min(NAMED, last.size()))) {
            SettingWindow window =
                    review.pressures().window(review.pressures().regulators().indexOf(p));
            said.add(SheetWords.shortened(SheetWords.regulator(p.regulator()), 24) + ": " + window(window)
                    + "; worked out with " + SheetWords.set(p.setting()));
        }
        int more = last.size() - said.size();
        return String.join("; ", said) + (more > 0 ? "; " + more + " more below" : "");
    }

    private static String window(SettingWindow w) {
        if (w.lowest().isEmpty() || w.highest().isEmpty()) {
            return "what the rating plates ask for is not all known";
        }
        if (w.isEmpty()) {
            String one = SheetWords.shortened(w.lowestFor().orElse("one"), 12);
            String other = SheetWords.shortened(w.highestFor().orElse("another"), 12);
            return one.equals(other)
                    ? "no setting serves " + one
                    : "no setting serves " + one + " and " + other + " alike";
        }
        return "from " + SheetWords.span(w.lowest(), w.highest())
                + (w.complete() ? " serves all" : " serves the plates read");
    }

    private static String vapour(Review review) {
        String asked = review.tank()
                .flatMap(t -> t.demands().stream().findFirst())
                .map(Demand::btuh)
                .filter(Figure::isKnown)
                .map(Figure::text)
                .orElse(SheetWords.BLANK + " Btu/h");
        return "from this tank at " + air(review.plan()).orElse("the coldest morning") + " and "
                + refill(review.plan()).map(g -> "the refill gauge, " + g).orElse("the refill gauge")
                + ". Asked, all firing: " + asked + ".";
    }

    /** The winter design temperature, as on a thermometer. */
    static Optional<String> air(Plan plan) {
        return plan.site()
                .flatMap(s -> s.winterDesignTemp().findText())
                .map(SheetWords::degrees)
                .map(t -> SheetWords.shortened(t, 12));
    }

    /** The gauge at which the truck is to come. */
    static Optional<String> refill(Plan plan) {
        return plan.allTanks().stream()
                .flatMap(t -> t.refillAt().findText().stream())
                .findFirst()
                .map(t -> SheetWords.shortened(t, 12));
    }

    private static String tank(Review review) {
        List<Tank> tanks = review.plan().allTanks();
        String have = tanks.isEmpty()
                ? "No tank is planned yet"
                : TankLines.size(review.plan()) + ", " + TankLines.placement(tanks.get(0))
                        + tanks.get(0)
                                .toBuilding()
                                .findText()
                                .map(d -> ", " + SheetWords.shortened(d, 14) + " from the house")
                                .orElse("");
        String would = review.tank().stream()
                .flatMap(t -> t.smallest().stream())
                .filter(c -> !c.underground())
                .findFirst()
                .flatMap(c -> c.size())
                .map(s -> " " + Show.whole(s.waterGal()) + " gal would carry all firing.")
                .orElse("");
        return have + ": do you set it there?" + would;
    }

    private static String delivery(Plan plan) {
        Optional<Site> site = plan.site();
        String lead = site.flatMap(s -> s.leadDays().findValue())
                .map(d -> Show.plain(d) + " days from call to truck")
                .orElse("days from call to truck not entered");
        int closed = site.map(s -> s.unreachable().size()).orElse(0);
        return "Worked out with " + lead + " and "
                + (closed == 0
                        ? "no spell without a truck"
                        : closed == 1 ? "one spell without a truck" : closed + " spells without a truck")
                + ".";
    }
}
