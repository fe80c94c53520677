package longrun.ui.lines;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import longrun.draft.sections.Allowance;
import longrun.draft.sections.AllowanceEffect;
import longrun.ui.frame.Scale;
import longrun.words.UnitSystem;

/** The one switch for fittings, each position with what it adds to the longest run and the row it leads to. */
public final class FittingScale {

    private final Scale<Allowance> positions;

    /** @param labelledBy id of the heading it stands under */
    public FittingScale(String group, String labelledBy, Consumer<Allowance> chosen) {
        positions = new Scale<>(
                group, labelledBy, List.of(Allowance.values()), a -> Scale.Choice.of(a.title(), ""), chosen);
    }

    public Scale<Allowance> scale() {
        return positions;
    }

    /** Shows what each position does to the selected line, where that is known. */
    public void show(Function<Allowance, Optional<AllowanceEffect>> effects, UnitSystem units) {
        for (Allowance each : Allowance.values()) {
            positions.note(each, effects.apply(each).map(e -> words(e, units)).orElse(""));
        }
    }

    private static String words(AllowanceEffect effect, UnitSystem units) {
        return (effect.added().feet() > 0 ? "+" : "") + units.length(effect.added()) + " "
                + units.lengthUnit().name()
                + effect.row().map(r -> ", row " + units.row(r)).orElse("");
    }
}
