package longrun.ui.house.hotwater;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import longrun.fuel.StorageSaving;
import longrun.origin.Missing;
import longrun.plan.choice.Arrangement;
import longrun.words.FigureText;
import longrun.words.UnitSystem;

/** What the storage heater truly saves, and whether it pays. */
final class SavingWords {

    private SavingWords() {}

    static String of(List<StorageSaving> all, Optional<Arrangement> chosen, UnitSystem units) {
        Arrangement own = chosen.filter(a -> a != Arrangement.ON_DEMAND_ONLY).orElse(Arrangement.SERIES);
        StorageSaving s =
                all.stream().filter(x -> x.arrangement() == own).findFirst().orElseThrow();
        if (!s.savedGalAfter().isKnown()) {
            return "What the storage heater saves is not known; needs "
                    + s.savedGalAfter().missing().stream()
                            .map(Missing::words)
                            .limit(2)
                            .reduce((a, b) -> a + "; " + b)
                            .orElse("")
                    + ".";
        }
        double saved = s.savedGalAfter().number();
        String gallons = FigureText.words(Math.abs(saved), "gal", units);
        String text = EveningWords.name(own)
                + (saved > 0.5
                        ? " it saves " + gallons + " of propane a year"
                        : saved < -0.5 ? " it costs " + gallons + " of propane a year more" : " it saves no propane");
        if (s.roomGal().number() > 0.5) {
            text += ", " + FigureText.words(s.savedGal(), units) + " less the "
                    + FigureText.words(s.roomGal(), units)
                    + " that heating makes up for the warmth it draws out of the room";
        }
        return text + ". " + money(s) + carbon(s, units);
    }

    private static String carbon(StorageSaving s, UnitSystem units) {
        if (!s.savedCo2LbAfter().isKnown()) {
            return "";
        }
        double lb = s.savedCo2LbAfter().number();
        return " Carbon dioxide: " + FigureText.words(Math.abs(lb), "lb", units) + " a year "
                + (lb < 0 ? "more" : "less")
                + ", with current as the country\u2019s power plants make it on the mean (held from memory).";
    }

    private static String money(StorageSaving s) {
        if (s.pays().isEmpty()) {
            return "Whether it pays is not known; needs "
                    + s.savedMoneyAfter().missing().stream()
                            .map(Missing::words)
                            .findFirst()
                            .orElse("both prices")
                    + ".";
        }
        double money = s.savedMoneyAfter().number();
        String sum = String.format(Locale.ROOT, "%,.0f", Math.abs(money));
        if (money <= 0.5) {
            return "In money it does not pay: the current costs " + sum + " a year more than the propane it saves.";
        }
        return "In money that is " + sum + " a year"
                + (money < 0.1 * Math.max(1, s.cost().number()) ? ": it hardly pays." : ".");
    }
}
