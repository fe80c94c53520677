package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import longrun.draft.sections.LegsText;
import longrun.draft.sections.RouteAnswer;
import longrun.draft.sections.RouteLine;
import longrun.quantity.Length;
import longrun.ui.frame.Dom;
import longrun.ui.lines.SizeCell;
import longrun.ui.lines.UsedCell;
import longrun.words.UnitSystem;

/**
 * A line of the route as text: what stands in it and what came of it, without fields. It stands for a line out of sight;
 * whoever comes to it by key or mouse selects it, and then it has fields.
 */
final class RouteText {

    private final Element row = Dom.el("tr", "main text")
            .setAttribute("tabindex", "0")
            .setAttribute("title", "Click, or press a key, to change");
    private String shown = "";

    Element element() {
        return row;
    }

    /** Shows a line; the browser hears of it only where something of it changed. */
    void show(
            RouteLine line,
            String feeds,
            String flags,
            Optional<RouteAnswer> answer,
            String none,
            boolean wrong,
            UnitSystem units) {
        OptionalDouble sum = LegsText.feet(line.legs());
        String flag = wrong ? "not understood" : flags;
        String legs = LegsText.inField(line.legs(), units);
        String feet = sum.isPresent() ? units.row(Length.ofFeet(Math.rint(sum.getAsDouble() * 100) / 100)) : "";
        String load = answer.flatMap(RouteAnswer::load).map(units::heat).orElse("");
        OptionalInt percent = answer.map(RouteAnswer::share).orElse(OptionalInt.empty());
        String size = answer.map(RouteAnswer::sizeWords).orElse(none);
        String note = answer.map(RouteAnswer::sizeNote).orElse("");
        String key = String.join(
                "\n", line.id(), line.from(), feeds, flag, legs, feet, load, percent + "", size, note, "" + units);
        if (key.equals(shown)) {
            return;
        }
        shown = key;
        UsedCell used = new UsedCell();
        used.show(percent.isPresent() ? OptionalLong.of(percent.getAsInt()) : OptionalLong.empty());
        SizeCell sized = new SizeCell();
        sized.show(size, answer.flatMap(a -> a.size().size()).isPresent(), note);
        Dom.fill(
                row,
                Dom.text("th", "id", line.id()).setAttribute("scope", "row"),
                Dom.text("td", "leaves tl", line.from()).setAttribute("data-l", "Leaves "),
                Dom.el("td", "nm tl", Dom.words(feeds), Dom.text("span", "q s flag", flag)),
                Dom.text("td", "legs tl", legs),
                Dom.text("td", "feet", feet),
                Dom.text("td", "load", load)
                        .setAttribute("data-l", "Load ")
                        .setAttribute("data-u", units.heatUnit().name()),
                used.element(),
                sized.element());
    }
}
