package longrun.paper;

import java.util.ArrayList;
import java.util.List;
import longrun.paper.page.Html;
import longrun.paper.page.SheetWords;
import longrun.plan.Appliance;
import longrun.pressure.OutletPressure;
import longrun.quantity.Show;
import longrun.review.Review;
import longrun.words.Names;
import org.jsoup.nodes.Element;

/** The pressure at each appliance's inlet against its rating plate, beside a blank for the gauge. */
final class BurnerTable {

    private BurnerTable() {}

    static List<Element> elements(Review review) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < review.plan().appliances().size(); i++) {
            Appliance a = review.plan().appliances().get(i);
            OutletPressure p = review.pressures().outlet(i);
            rows.add(List.of(
                    Names.of(review, a),
                    a.minInlet().findValue().map(Show::pressure).orElse(SheetWords.BLANK),
                    SheetWords.pressure(p.pressureAtInlet()),
                    SheetWords.BLANK,
                    a.maxInlet().findValue().map(Show::pressure).orElse(SheetWords.BLANK),
                    SheetWords.pressure(p.pressureIdle()),
                    SheetWords.BLANK));
        }
        return rows.isEmpty()
                ? List.of()
                : List.of(
                        Html.heading("Pressure at each appliance", "against its rating plate"),
                        Html.table(
                                "The pressure at each appliance's inlet",
                                List.of(
                                        "Appliance",
                                        "Plate, least",
                                        "All firing",
                                        "measured",
                                        "Plate, greatest",
                                        "No flow",
                                        "measured"),
                                List.of("z s", "r", "r", "r", "r", "r", "r"),
                                rows));
    }
}
