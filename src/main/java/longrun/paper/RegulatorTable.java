package longrun.paper;

import java.util.ArrayList;
import java.util.List;
import longrun.paper.page.Html;
import longrun.paper.page.SheetWords;
import longrun.pressure.RegulatorPressure;
import longrun.quantity.Show;
import longrun.review.Review;
import org.jsoup.nodes.Element;

/** The regulators: what each is set to, what it will see and give, and blanks for what the gauge shows. */
final class RegulatorTable {

    private RegulatorTable() {}

    static List<Element> forFitter(Review review) {
        List<RegulatorPressure> all = review.pressures().regulators();
        if (all.isEmpty()) {
            return List.of();
        }
        List<List<String>> rows = new ArrayList<>();
        for (RegulatorPressure p : all) {
            rows.add(List.of(
                    SheetWords.regulator(p.regulator()),
                    SheetWords.pressure(p.setting()),
                    p.regulator().fedBy().is("tank") ? "tank" : SheetWords.pressure(p.inlet()),
                    SheetWords.pressure(p.drooped()),
                    SheetWords.BLANK,
                    SheetWords.pressure(p.lockUp()),
                    SheetWords.BLANK,
                    SheetWords.heat(p.capacity()),
                    SheetWords.heat(p.load().whole())));
        }
        return List.of(
                Html.heading("Regulators", "predicted beside blanks for what the gauge shows"),
                Html.table(
                        "The regulators with predicted and measured pressures",
                        List.of(
                                "Regulator",
                                "Set to",
                                "Inlet, all firing",
                                "Outlet, all firing",
                                "measured",
                                "Outlet, no flow",
                                "measured",
                                "Rated, Btu/h",
                                "Must pass, Btu/h"),
                        List.of("z s", "r", "r", "r", "r", "r", "r", "r", "r"),
                        rows));
    }

    /**
     * As the supplier orders and sets them.
     *
     * @param most rows; those that feed the house come last and are never left out before one between
     */
    static List<Element> forSupplier(Review review, int most) {
        List<RegulatorPressure> all = review.pressures().regulators();
        List<RegulatorPressure> shown = all.size() > most ? all.subList(0, most - 1) : all;
        List<List<String>> rows = new ArrayList<>();
        for (RegulatorPressure p : shown) {
            rows.add(List.of(
                    SheetWords.shortened(SheetWords.regulator(p.regulator()), 26),
                    stands(p),
                    SheetWords.set(p.setting()),
                    p.regulator().fedBy().is("tank") ? "tank" : SheetWords.pressure(p.inlet()),
                    SheetWords.pressure(p.drooped()),
                    SheetWords.pressure(p.lockUp()),
                    SheetWords.heat(p.load().whole()),
                    SheetWords.heat(p.capacity()),
                    used(p)));
        }
        if (rows.isEmpty()) {
            rows.add(List.of("none entered yet", "", SheetWords.BLANK, "", "", "", SheetWords.BLANK, "", ""));
        }
        return List.of(
                Html.heading(
                        "Regulators",
                        shown.size() < all.size()
                                ? "the first of " + all.size() + "; the rest on the sizing sheet"
                                : "as set and as they will be asked, heat in Btu/h"),
                Html.table(
                                "The regulators with their settings and loads",
                                List.of(
                                        "Regulator",
                                        "Stands",
                                        "Set to",
                                        "Inlet, all firing",
                                        "Outlet, all firing",
                                        "All shut, at most",
                                        "Must pass",
                                        "Rated",
                                        "Used, %"),
                                List.of("s", "", "r i", "r", "r", "r", "r", "r", "r"),
                                rows)
                        .addClass("regs"));
    }

    private static String stands(RegulatorPressure p) {
        String where = p.regulator().setting().findValue().map(s -> s.written()).orElse(SheetWords.BLANK);
        return p.regulator().underEaves().is(true) ? where + ", under eaves" : where;
    }

    private static String used(RegulatorPressure p) {
        return p.load().complete() && p.capacity().filter(c -> c.btuh() > 0).isPresent()
                ? Show.whole(100 * p.load().known().btuh() / p.capacity().get().btuh())
                : SheetWords.BLANK;
    }
}
