package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.Optional;
import java.util.function.Consumer;
import longrun.draft.sections.Allowance;
import longrun.draft.sections.AllowanceComparison;
import longrun.draft.sections.RouteAnswer;
import longrun.quantity.Length;
import longrun.sizing.StageSize;
import longrun.ui.frame.Dom;
import longrun.ui.lines.FittingScale;
import longrun.words.UnitSystem;

/** The one switch for fittings, beside it how long the longest run is as measured. */
final class FittingSwitch {

    private final Element heading = Dom.el("h3", "").setAttribute("id", "route-fit");
    private final Element measured = Dom.text("span", "q light", "");
    private final FittingScale positions;
    private final Element element;
    private final AllowanceComparison ways = new AllowanceComparison();

    FittingSwitch(Consumer<Allowance> chosen) {
        positions = new FittingScale("route-fittings", "route-fit", chosen);
        heading.appendChild(Dom.words("Fittings "), measured);
        element = Dom.el("section", "part fit", heading, scaleElement());
    }

    Element element() {
        return element;
    }

    Element scaleElement() {
        return positions.scale().getElement();
    }

    void show(String written, Optional<RouteAnswer> inHand, UnitSystem units) {
        Allowance.find(written).ifPresent(positions.scale()::setValue);
        Optional<RouteAnswer> known = inHand.filter(a -> a.stage().isPresent());
        positions.show(allowance -> known.flatMap(a -> ways.effect(a.review(), a.section(), allowance)), units);
        Dom.retext(measured, known.map(a -> measured(a, units)).orElse(""));
    }

    private static String measured(RouteAnswer inHand, UnitSystem units) {
        StageSize now = inHand.review().sizing().stage(inHand.stage().orElseThrow());
        return "for the longest run, "
                + units.length(now.measured().orElse(Length.ZERO)) + " "
                + units.lengthUnit().name() + " measured";
    }
}
