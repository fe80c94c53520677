package longrun.ui.house.route;

import com.vaadin.flow.dom.Element;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import longrun.capacity.CapacityTables;
import longrun.draft.sections.RouteAnswer;
import longrun.plan.FittingAllowance;
import longrun.quantity.Length;
import longrun.quantity.Ratio;
import longrun.review.Review;
import longrun.sizing.Sizing;
import longrun.sizing.StageSize;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Scale;
import longrun.words.UnitSystem;
import org.jspecify.annotations.Nullable;

/** The one switch for fittings, each choice with what it adds to the longest run in feet and the row it leads to. */
final class FittingSwitch {

    /** The three ways fittings may be allowed for. */
    enum Way {
        ALONE("none", "Measured length alone"),
        FIFTH("20 %", "A fifth more"),
        COUNTED("counted", "Counted");

        private final String written;
        private final String title;

        Way(String written, String title) {
            this.written = written;
            this.title = title;
        }

        String written() {
            return written;
        }

        static Optional<Way> of(String written) {
            for (Way w : values()) {
                if (w.written.equals(written.strip())) {
                    return Optional.of(w);
                }
            }
            return written.isBlank() ? Optional.of(COUNTED) : Optional.empty();
        }
    }

    private final Element heading = Dom.el("h3", "").setAttribute("id", "route-fit");
    private final Element measured = Dom.text("span", "q light", "");
    private final Scale<Way> scale;
    private final Element element;
    private final Map<Way, Sizing> sized = new EnumMap<>(Way.class);
    private @Nullable Review sizedOf;

    FittingSwitch(Consumer<Way> chosen) {
        scale = new Scale<>(
                "route-fittings", "route-fit", List.of(Way.values()), w -> Scale.Choice.of(w.title, ""), chosen);
        heading.appendChild(Dom.words("Fittings "), measured);
        element = Dom.el("section", "part fit", heading, scale.getElement());
    }

    Element element() {
        return element;
    }

    String measuredShown() {
        return measured.getText();
    }

    Element scaleElement() {
        return scale.getElement();
    }

    void show(String written, Optional<RouteAnswer> inHand, UnitSystem units) {
        Way.of(written).ifPresent(scale::setValue);
        Optional<RouteAnswer> known = inHand.filter(a -> a.stage().isPresent());
        if (known.isEmpty()) {
            Dom.retext(measured, "");
            for (Way w : Way.values()) {
                scale.note(w, "");
            }
            return;
        }
        Review review = known.get().review();
        int stage = known.get().stage().orElseThrow();
        StageSize now = review.sizing().stage(stage);
        String unit = units.lengthUnit().name();
        Dom.retext(
                measured,
                "for the longest run, "
                        + units.length(Length.ofFeet(now.measuredFt().orElse(0))) + " " + unit + " measured");
        for (Way w : Way.values()) {
            scale.note(w, effect(review, stage, known.get().section(), w, units));
        }
    }

    /** The house sized another way; once for each review, since a large one takes its time. */
    private Sizing sized(Review review, Way way) {
        if (review != sizedOf) {
            sizedOf = review;
            sized.clear();
        }
        return sized.computeIfAbsent(way, w -> Sizing.of(review.piping(), CapacityTables.standard(), allowance(w)));
    }

    private String effect(Review review, int stage, int section, Way way, UnitSystem units) {
        Sizing other = sized(review, way);
        StageSize size = other.stage(stage);
        if (size.longestRunFt().isEmpty()) {
            return "";
        }
        double added = size.allowanceFt().orElse(0);
        String row = other.section(section).rowFt().isPresent()
                ? ", row "
                        + units.row(Length.ofFeet(other.section(section).rowFt().getAsDouble()))
                : "";
        return (added > 0 ? "+" : "") + units.length(Length.ofFeet(added)) + " "
                + units.lengthUnit().name() + row;
    }

    private static FittingAllowance allowance(Way way) {
        return switch (way) {
            case ALONE -> new FittingAllowance.None();
            case FIFTH -> new FittingAllowance.Share(Ratio.ofPercent(20));
            case COUNTED -> new FittingAllowance.Counted();
        };
    }
}
