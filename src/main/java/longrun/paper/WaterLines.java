package longrun.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import longrun.drawing.tank.WaterValves;
import longrun.fuel.StorageSaving;
import longrun.hotwater.HotWaterStudy;
import longrun.hotwater.SetPoints;
import longrun.origin.Figure;
import longrun.paper.page.Html;
import longrun.paper.page.SheetWords;
import longrun.plan.Use;
import longrun.plan.choice.Arrangement;
import longrun.review.Review;
import longrun.words.Names;
import org.jsoup.nodes.Element;

/** Hot water on paper: how the valves stand and what to turn to in each arrangement the house's heaters allow. */
final class WaterLines {

    private WaterLines() {}

    static List<Element> elements(Review review) {
        Optional<HotWaterStudy> study = review.hotWater();
        Optional<Use.HotWater> entry = review.plan().use().flatMap(Use::hotWater);
        if (study.isEmpty()
                || entry.flatMap(Use.HotWater::storage).isEmpty()
                || entry.flatMap(Use.HotWater::onDemand).isEmpty()) {
            return List.of();
        }
        List<List<String>> rows = new ArrayList<>();
        for (StorageSaving s : StorageSaving.of(review.plan(), study.get())) {
            rows.add(row(study.get(), s));
        }
        return List.of(
                Html.heading("Hot water", "how the valves stand in each arrangement"),
                Html.table(
                        "The arrangements of the water heaters",
                        List.of(
                                "Arrangement",
                                "Valves",
                                "Storage to",
                                "On-demand to",
                                "Two showers, of 60 min comfortable",
                                "Gas a year",
                                "Current a year"),
                        List.of("z s", "", "r", "r", "r", "r", "r"),
                        rows),
                Html.text(
                        "p",
                        "",
                        "Valves 1 and 2 stand before and behind the storage heater, 3 round it; 4 and 5 before and behind the"
                                + " on-demand heater, 6 round it; 7 lets cold water to the mixing valve, last before the"
                                + " house. Never closed in any position: 7, and each heater's relief valve. Storage taken"
                                + " out: its breaker off first; before it is used again drained, or run up to 140 \u00b0F."
                                + " On-demand taken out: its gas closed first."));
    }

    private static List<String> row(HotWaterStudy study, StorageSaving s) {
        Arrangement a = s.arrangement();
        SetPoints to = study.year(a).setPoints();
        String shower = study.evening()
                .flatMap(e -> e.find(a))
                .map(e -> String.valueOf((long) Math.floor(e.minutesComfortable() + 1e-6)))
                .orElse(SheetWords.BLANK);
        return List.of(
                Names.capital(a.label()),
                WaterValves.words(a),
                degrees(to.storageF()),
                degrees(to.onDemandF()),
                shower,
                known(s.gal(), "gal"),
                known(s.kwh(), "kWh"));
    }

    private static String degrees(OptionalDouble degF) {
        return degF.isPresent() ? String.format(Locale.ROOT, "%.0f \u00b0F", degF.getAsDouble()) : "out";
    }

    private static String known(Figure f, String unit) {
        return f.isKnown() ? Figure.text(Math.rint(f.number()), unit) : SheetWords.BLANK;
    }
}
