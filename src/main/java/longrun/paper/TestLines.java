package longrun.paper;

import java.util.ArrayList;
import java.util.List;
import longrun.paper.page.Html;
import longrun.paper.page.SheetWords;
import longrun.pressuretest.Purge;
import longrun.pressuretest.SideTest;
import longrun.pressuretest.TestWords;
import longrun.quantity.Show;
import org.jsoup.nodes.Element;

/** The test of each side as it stands on paper, with blanks for what the gauge shows. */
final class TestLines {

    private TestLines() {}

    static List<Element> elements(List<SideTest> tests) {
        List<Element> out = new ArrayList<>();
        out.add(Html.heading("Pressure test", "before gas is let in"));
        if (tests.isEmpty()) {
            out.add(Html.text("p", "", "No pipe is entered yet, so there is no test to plan."));
            return out;
        }
        out.add(Html.led("When.", TestWords.WHEN));
        out.add(Html.led("With what.", TestWords.MEDIUM));
        out.add(Html.led("Locally.", TestWords.LOCAL));
        tests.forEach(t -> side(t, out));
        out.add(Html.led("A leak.", TestWords.LEAKS));
        out.add(Html.led("Gas on.", TestWords.TURN_ON));
        out.add(Html.led("Check with gas.", Purge.check()));
        return out;
    }

    private static void side(SideTest t, List<Element> out) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Sections", SheetWords.shortened(String.join(", ", t.sections()), 120), ""));
        rows.add(List.of("Holds", volume(t), "bore and length of each section"));
        rows.add(List.of(
                "Stands at most at",
                t.working().map(w -> psi(w.psi())).orElse("not known"),
                t.workingAt().map(at -> "lock-up of " + at).orElse("")));
        rows.add(
                List.of("Test at least at", t.pressure().map(p -> psi(p.psi())).orElse("not known"), t.pressureFrom()));
        rows.add(List.of("Hold it", t.minutes() + " minutes at least", t.minutesFrom()));
        rows.add(List.of(
                "Gauge ends at most at", t.gaugeTop().map(p -> psi(p.psi())).orElse("not known"), "and shows 0.1 psi"));
        rows.add(List.of("At the start", "____ psi, ____ \u00b0F", "time ________"));
        rows.add(List.of("At the end", "____ psi, ____ \u00b0F", "time ________"));
        out.add(Html.text("h3", "", t.title()));
        out.add(Html.table("The test of the " + t.title(), List.of("", "", "From"), List.of("", "s", "q"), rows));
        t.readings().stream()
                .map(r -> r.words(t.minutes(), t.pressure()))
                .forEach(w -> out.add(Html.text("p", "f", "Read: " + w)));
        Element before = Html.el("ul", "");
        t.isolate().forEach(i -> before.appendChild(Html.text("li", "", i)));
        out.add(Html.text("p", "", "Before the test:"));
        out.add(before);
        out.add(Html.led(
                "Purge.",
                String.join(" ", Purge.of(t).steps()) + " ("
                        + String.join("; ", Purge.of(t).from()) + ")"));
    }

    /** The volume, or which sections keep it from being known. */
    static String volume(SideTest t) {
        return t.volumeCuFt()
                .map(v -> Show.decimals(v, 2) + " cu ft")
                .orElseGet(() -> "not known: no bore or length of "
                        + SheetWords.shortened(String.join(", ", t.withoutVolume()), 60));
    }

    private static String psi(double psi) {
        return Show.decimals(psi, 1) + " psi";
    }
}
