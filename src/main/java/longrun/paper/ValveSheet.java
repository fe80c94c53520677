package longrun.paper;

import java.util.ArrayList;
import java.util.List;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.holdpoint.HoldPoints;
import longrun.holdpoint.PredictedPressure;
import longrun.paper.page.Html;
import longrun.paper.page.OpenOnPaper;
import longrun.paper.page.Printing;
import longrun.paper.page.Sheet;
import longrun.paper.page.SheetWords;
import longrun.plan.choice.ReadingKind;
import longrun.quantity.Show;
import longrun.review.Review;
import longrun.words.CautionWords;
import longrun.words.Names;
import longrun.words.Notice;
import longrun.words.Sentence;
import org.jsoup.nodes.Element;

/** The last sheet: every point at which work stops before the tank valve is opened, and room to write who passed it. */
final class ValveSheet implements Sheet {

    /** So many pressures stay on one page. */
    private static final int TOGETHER = 20;

    @Override
    public String slug() {
        return "valve";
    }

    @Override
    public String title() {
        return "Before the valve is opened";
    }

    @Override
    public String under() {
        return "for whoever tests, fills and lights. It says what was recorded, by whom, and what is open; no more.";
    }

    @Override
    public String purpose() {
        return "For the day gas comes: the pressure test of each side, the hold points in order, what to"
                + " measure, who signs.";
    }

    @Override
    public List<String> stillOpen(Review review) {
        HoldPoints all = HoldPoints.of(review);
        List<String> open = new ArrayList<>(OpenOnPaper.findings(review));
        long left = all.points().size() - all.done();
        if (left > 0) {
            open.add(OpenOnPaper.count(left, "point not recorded as done", "points not recorded as done"));
        }
        return open;
    }

    @Override
    public List<Element> body(Printing printing) {
        Review review = printing.review();
        HoldPoints all = HoldPoints.of(review);
        List<Element> out = new ArrayList<>(TestLines.elements(all.tests()));
        out.add(Html.heading("Hold points", "in this order; none is passed while a must-fix finding is open"));
        int number = 1;
        for (HoldPoints.State s : all.points()) {
            out.add(point(number++, s, review));
        }
        out.addAll(pressures(all.pressures()));
        out.add(Html.led("To know.", CautionWords.ALARMS));
        Notice.of(review.plan()).forEach(n -> out.add(Html.text("p", "", n.text())));
        return out;
    }

    private static Element point(int number, HoldPoints.State s, Review review) {
        Element block = Html.el(
                "div",
                "point",
                Html.text("h3", "", number + "  " + s.point().title()),
                Html.text("p", "", s.point().look() + " Checked by " + s.point().who() + "."));
        s.open().stream().filter(f -> f.severity() != Severity.NOTE).forEach(f -> block.appendChild(open(f, review)));
        long questions =
                s.open().stream().filter(f -> f.severity() == Severity.NOTE).count();
        if (questions > 0) {
            block.appendChild(Html.text(
                    "p",
                    "f",
                    "\u25CB " + OpenOnPaper.count(questions, "question is open", "questions are open")
                            + " for it; they stand on the sizing sheet."));
        }
        block.appendChild(Html.text("p", "", s.recorded()));
        if (!s.measured().isBlank()) {
            block.appendChild(Html.text("p", "", "Found or measured: " + s.measured()));
        }
        block.appendChild(Html.text(
                "p", "blank", "Done by ______________________  Date ____________  Found ____________________"));
        return block;
    }

    private static Element open(Finding f, Review review) {
        boolean must = f.severity() == Severity.MUST_FIX;
        Element p = Html.el("p", must ? "f must" : "f");
        p.appendChild(Html.text("b", "", must ? "\u25A0 Must fix. " : "\u25B2 Caution. "));
        p.appendText(Html.printable(Sentence.of(Names.of(review, f.at()) + ": " + f.found())));
        return p;
    }

    private static List<Element> pressures(List<PredictedPressure> pressures) {
        List<List<String>> rows = new ArrayList<>();
        for (PredictedPressure p : pressures) {
            rows.add(List.of(
                    SheetWords.shortened(Names.capital(p.called()), 40),
                    p.kind() == ReadingKind.LOCK_UP ? "nothing firing" : "everything firing",
                    p.predicted().map(Show::pressure).orElse("not known"),
                    p.measured().map(Show::pressure).orElse(SheetWords.BLANK)));
        }
        return rows.isEmpty()
                ? List.of()
                : List.of(Html.el(
                        "div",
                        rows.size() > TOGETHER ? "" : "part",
                        Html.heading("Pressures to measure", "a gauge on the test tap, beside what the plan predicts"),
                        Html.table(
                                "Pressures predicted and measured",
                                List.of("At", "With", "Predicted", "Measured"),
                                List.of("s", "s", "r", "r"),
                                rows)));
    }
}
