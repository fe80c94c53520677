package longrun.paper;

import java.util.Optional;
import longrun.fuel.FuelReport;
import longrun.origin.Figure;
import longrun.paper.page.Html;
import longrun.paper.page.SheetFile;
import longrun.paper.page.SheetWords;
import longrun.plan.Tank;
import longrun.pressure.RegulatorPressure;
import longrun.pressure.SettingWindow;
import longrun.review.Review;
import org.jsoup.nodes.Element;

/** The four answers a salesperson looks for first: which tank, what setting, how often to come, when to call. */
final class SupplierAnswers {

    private final Review review;

    private SupplierAnswers(Review review) {
        this.review = review;
    }

    static Element of(Review review) {
        SupplierAnswers it = new SupplierAnswers(review);
        return Html.el("table", "strip", Html.el("tr", "", it.tank(), it.setting(), it.fill(), it.call()));
    }

    private static Element cell(String label, String answer, String under) {
        return Html.el("td", "", Html.text("p", "l", label), Html.text("p", "big", answer), Html.text("p", "k", under));
    }

    private Element tank() {
        Optional<Tank> tank = review.plan().allTanks().stream().findFirst();
        return cell(
                "Tank planned",
                TankLines.size(review.plan()),
                tank.map(TankLines::stands).orElse("not planned yet"));
    }

    private Element setting() {
        Optional<RegulatorPressure> last =
                SupplierQuestions.lastRegulators(review).stream().findFirst();
        String label = "Setting wanted"
                + last.map(p -> ", " + SheetWords.shortened(p.regulator().id(), 10))
                        .orElse("") + ", in. w.c.";
        if (last.isEmpty()) {
            return cell(label, SheetWords.BLANK, "no regulator feeds an appliance yet");
        }
        int index = review.pressures().regulators().indexOf(last.get());
        SettingWindow window = review.pressures().window(index);
        String basis = last.get().setting().isPresent()
                ? "worked out with " + SheetWords.set(last.get().setting())
                : "its setting is not entered";
        if (window.lowest().isEmpty() || window.highest().isEmpty()) {
            return cell(label, SheetWords.BLANK, basis + "; plates open");
        }
        return cell(
                label,
                window.isEmpty()
                        ? "none serves all"
                        : SheetWords.inWc(window.lowest()) + " to " + SheetWords.inWc(window.highest()),
                basis + (window.complete() ? "" : "; plates open"));
    }

    private Element fill() {
        Optional<FuelReport> fuel = review.fuel();
        return cell(
                "A fill lasts, coldest month",
                fuel.map(f -> YearLines.days(f.daysPerFill().coldestMonth())).orElse(SheetWords.BLANK),
                fuel.map(f -> f.daysPerFill().mean())
                        .filter(Figure::isKnown)
                        .map(m -> YearLines.days(m) + " on the mean")
                        .orElse("the year is not known yet"));
    }

    private Element call() {
        Optional<FuelReport> fuel = review.fuel();
        return cell(
                "Call by",
                fuel.flatMap(FuelReport::callBy).map(SheetFile::day).orElse(SheetWords.BLANK),
                fuel.flatMap(FuelReport::nextRefill)
                        .map(d -> "gauge there on " + SheetFile.day(d))
                        .orElse("the refill day is not known yet"));
    }
}
