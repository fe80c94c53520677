package longrun.ui.house.hotwater;

import java.util.Locale;
import longrun.hotwater.Shower;
import longrun.hotwater.draw.DrawEvent;
import longrun.plan.choice.Arrangement;
import longrun.quantity.Flow;
import longrun.quantity.Temperature;
import longrun.words.DisplayUnits;
import longrun.words.Names;
import longrun.words.UnitSystem;

/** What an evening at the shower comes to, in a sentence or two. */
final class EveningWords {

    private EveningWords() {}

    static String of(DrawEvent event, Shower.Evening evening, UnitSystem units) {
        long all = Math.round(event.draw().minutes());
        long comfortable = (long) Math.floor(event.minutesComfortable() + 1e-6);
        StringBuilder out = new StringBuilder(name(event.arrangement()));
        String minutes = all == 1 ? " minute" : " minutes";
        out.append(": ")
                .append(
                        comfortable >= all
                                ? "comfortable for all " + all + minutes + ". "
                                : comfortable + " of " + all + minutes + " are comfortable. ");
        if (comfortable < all) {
            out.append("It falls to ")
                    .append(temperature(event.coldestF(), units))
                    .append(". ");
        }
        if (event.keepsGpm() < event.draw().gpm() - 1e-6) {
            out.append("To stay at ")
                    .append(temperature(evening.useF(), units))
                    .append(" the flow would have to fall to ")
                    .append(DisplayUnits.FLOW.words(units, Flow.ofGpm(event.keepsGpm())))
                    .append(". ");
        }
        if (event.hottestF() > evening.useF() + 1) {
            out.append("Where the burner comes on at its least fire it may rise to ")
                    .append(temperature(event.hottestF(), units))
                    .append(" for a while. ");
        }
        double most = event.inputBtuh().stream().mapToDouble(b -> b).max().orElse(0);
        if (event.arrangement() != Arrangement.STORAGE_ONLY) {
            out.append(
                    most > 0
                            ? String.format(
                                    Locale.ROOT,
                                    "The on-demand heater burns %,.0f Btu/h at most.",
                                    Math.rint(most / 1000) * 1000)
                            : "The on-demand heater does not fire.");
        }
        return out.toString().strip();
    }

    static String name(Arrangement a) {
        return Names.capital(a.label());
    }

    static String temperature(double degF, UnitSystem units) {
        return DisplayUnits.TEMPERATURE.words(units, Temperature.ofDegF(Math.round(degF)));
    }
}
