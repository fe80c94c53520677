package longrun.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import longrun.pressure.Droop;
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
                    SheetWords.pressure(p.settingInWc()),
                    p.regulator().fedBy().is("tank") ? "tank" : SheetWords.pressure(p.inletInWc()),
                    SheetWords.pressure(firing(p)),
                    SheetWords.BLANK,
                    SheetWords.pressure(p.lockUpInWc()),
                    SheetWords.BLANK,
                    SheetWords.whole(p.capacityBtuh()),
                    p.load().complete() ? Show.whole(p.load().knownBtuh()) : SheetWords.BLANK));
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

    /** As the supplier orders and sets them. */
    static List<Element> forSupplier(Review review) {
        List<RegulatorPressure> all = review.pressures().regulators();
        if (all.isEmpty()) {
            return List.of();
        }
        List<List<String>> rows = new ArrayList<>();
        for (RegulatorPressure p : all) {
            OptionalDouble spare = p.spareBtuh();
            rows.add(List.of(
                    SheetWords.regulator(p.regulator()),
                    p.regulator().setting().findValue().map(s -> s.written()).orElse(SheetWords.BLANK),
                    SheetWords.pressure(p.settingInWc()),
                    p.regulator().fedBy().is("tank") ? "tank" : SheetWords.pressure(p.inletInWc()),
                    SheetWords.pressure(firing(p)),
                    SheetWords.pressure(p.lockUpInWc()),
                    p.load().complete() ? Show.whole(p.load().knownBtuh()) : SheetWords.BLANK,
                    SheetWords.whole(p.capacityBtuh()),
                    spare.isPresent() ? Show.whole(spare.getAsDouble()) : SheetWords.BLANK));
        }
        return List.of(
                Html.heading("Regulators", "as set and as they will be asked"),
                Html.table(
                        "The regulators with their settings and loads",
                        List.of(
                                "Regulator",
                                "Stands",
                                "Set to",
                                "Inlet, all firing",
                                "Outlet, all firing",
                                "No flow, at most",
                                "Must pass, Btu/h",
                                "Rated, Btu/h",
                                "To spare, Btu/h"),
                        List.of("z s", "", "rz", "r", "r", "r", "r", "r", "r"),
                        rows));
    }

    /** At its outlet with everything firing. */
    static OptionalDouble firing(RegulatorPressure p) {
        OptionalDouble fall = p.droop().map(Droop::atLoadInWc).orElse(OptionalDouble.empty());
        return p.settingInWc().isPresent() && fall.isPresent()
                ? OptionalDouble.of(p.settingInWc().getAsDouble() - fall.getAsDouble())
                : OptionalDouble.empty();
    }
}
