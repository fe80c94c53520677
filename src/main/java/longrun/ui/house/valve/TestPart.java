package longrun.ui.house.valve;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Optional;
import longrun.pressuretest.Purge;
import longrun.pressuretest.SideTest;
import longrun.pressuretest.TestWords;
import longrun.quantity.Pressure;
import longrun.quantity.Volume;
import longrun.ui.frame.Dom;
import longrun.words.DisplayUnits;
import longrun.words.UnitSystem;

/** The test of each side of the pipe: how high, how long, with what, and what comes off before. */
final class TestPart {

    private final Element sides = Dom.el("div", "two-up");
    private final Element element = Dom.el(
            "section",
            "part",
            Dom.text("h3", "", "The pressure test"),
            Dom.text("p", "lede", TestWords.WHEN),
            sides,
            Dom.el(
                    "div",
                    "test-words",
                    Dom.text("p", "", TestWords.MEDIUM + " " + TestWords.LEAKS + " " + TestWords.LOCAL),
                    Dom.text("p", "", TestWords.TURN_ON + " " + Purge.check())));
    private List<SideTest> shown = List.of();
    private Optional<UnitSystem> shownIn = Optional.empty();

    Element element() {
        return element;
    }

    void show(List<SideTest> tests, UnitSystem units) {
        if (tests.equals(shown) && shownIn.equals(Optional.of(units))) {
            return;
        }
        shown = tests;
        shownIn = Optional.of(units);
        sides.removeAllChildren();
        if (tests.isEmpty()) {
            sides.appendChild(Dom.text("p", "q", "No pipe is entered yet, so there is no test to plan."));
        }
        tests.forEach(t -> sides.appendChild(side(t, units)));
    }

    private static Element side(SideTest t, UnitSystem units) {
        Element rows = Dom.el("tbody", "");
        row(rows, "Sections", String.join(", ", t.sections()), "");
        row(
                rows,
                "It holds",
                t.volumeCuFt()
                        .map(v -> DisplayUnits.PIPE_VOLUME.words(units, Volume.ofCubicFeet(v)))
                        .orElse("not known"),
                t.withoutVolume().isEmpty()
                        ? "bore and length of each section"
                        : "no bore or length of " + String.join(", ", t.withoutVolume()));
        row(
                rows,
                "Stands at most at",
                words(t.working(), units),
                t.workingAt().map(at -> "lock-up of " + at).orElse(""));
        row(rows, "Test at least at", words(t.pressure(), units), t.pressureFrom());
        row(rows, "Hold it", t.minutes() + " minutes at least", t.minutesFrom());
        row(rows, "Gauge up to", words(t.gaugeTop(), units) + " at most", "and shows 0.1 psi");
        Element before = Dom.el("ul", "");
        t.isolate().forEach(i -> before.appendChild(Dom.text("li", "", i)));
        Purge purge = Purge.of(t);
        Element side = Dom.el(
                "div",
                "tested",
                Dom.text("h4", "", t.title()),
                Dom.el("div", "row-box", Dom.el("table", "plain test", rows))
                        .setAttribute("tabindex", "0")
                        .setAttribute("role", "group")
                        .setAttribute("aria-label", "The test: " + t.title()),
                Dom.el("details", "", Dom.text("summary", "", "What comes off or is closed before"), before),
                Dom.el(
                        "details",
                        "",
                        Dom.text("summary", "", "The purge"),
                        Dom.text("p", "", String.join(" ", purge.steps())),
                        Dom.text("p", "s q", String.join("; ", purge.from()))));
        t.readings().stream()
                .map(r -> Dom.text("p", "verdict", r.words(t.minutes(), t.pressure())))
                .forEach(side::appendChild);
        return side;
    }

    private static void row(Element rows, String what, String figure, String from) {
        rows.appendChild(Dom.el(
                "tr",
                "",
                Dom.text("th", "", what).setAttribute("scope", "row"),
                Dom.el("td", "", Dom.text("b", "", figure), Dom.words(from.isEmpty() ? "" : " " + from))));
    }

    private static String words(Optional<Pressure> pressure, UnitSystem units) {
        return pressure.map(p -> DisplayUnits.LINE_PRESSURE.words(units, p)).orElse("not known");
    }
}
