package longrun.paper;

import java.util.ArrayList;
import java.util.List;
import longrun.plan.Appliance;
import longrun.quantity.Show;
import longrun.review.Review;
import longrun.tank.Demand;
import longrun.words.Names;
import org.jsoup.nodes.Element;

/** The loads, by appliance and by occasion, with what the tank makes of each. */
final class LoadTables {

    private LoadTables() {}

    static List<Element> elements(Review review) {
        List<Element> appliances = appliances(review);
        List<Element> occasions = occasions(review);
        if (appliances.isEmpty() || occasions.isEmpty()) {
            return appliances.isEmpty() ? occasions : appliances;
        }
        return List.of(Html.besideEachOther(appliances, occasions));
    }

    private static List<Element> appliances(Review review) {
        List<List<String>> rows = new ArrayList<>();
        for (Appliance a : review.plan().appliances()) {
            rows.add(List.of(
                    Names.of(a),
                    a.input().findValue().map(h -> Show.whole(h.btuh())).orElse(SheetWords.BLANK)));
        }
        return rows.isEmpty()
                ? List.of()
                : List.of(
                        Html.heading("Load by appliance", "inputs of the rating plates"),
                        Html.table(
                                "Inputs of the appliances",
                                List.of("Appliance", "Input, Btu/h"),
                                List.of("z s", "r"),
                                rows));
    }

    private static List<Element> occasions(Review review) {
        List<List<String>> rows = new ArrayList<>();
        review.tank()
                .ifPresent(t -> t.demands()
                        .forEach(d -> rows.add(List.of(
                                Names.capital(d.name()),
                                d.btuh().isKnown() ? SheetWords.roughly(d.btuh().number()) : SheetWords.BLANK,
                                status(d),
                                d.withoutEnd()
                                        ? "to the last of the liquid"
                                        : d.lasts().orElse(SheetWords.BLANK)))));
        return rows.isEmpty()
                ? List.of()
                : List.of(
                        Html.heading("Load by occasion", "cold as designed, at the refill gauge"),
                        Html.table(
                                "What is asked of the tank, and whether it gives it",
                                List.of("Occasion", "Btu/h", "This tank", "Held for"),
                                List.of("z s", "r", "", ""),
                                rows));
    }

    private static String status(Demand d) {
        return switch (d.status()) {
            case CARRIES -> "carries it";
            case DOUBTFUL -> "in doubt, question 2";
            case SHORT -> "gives less";
            case UNKNOWN -> "not known";
        };
    }
}
