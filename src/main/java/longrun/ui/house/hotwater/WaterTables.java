package longrun.ui.house.hotwater;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import longrun.draft.Climate;
import longrun.fuel.StorageSaving;
import longrun.hotwater.ArrangementYear;
import longrun.hotwater.HotWaterStudy;
import longrun.hotwater.Shower;
import longrun.origin.Figure;
import longrun.plan.choice.Arrangement;
import longrun.quantity.Flow;
import longrun.ui.place.HousePage;
import longrun.words.DisplayUnits;
import longrun.words.FigureText;

/** Three tables: the arrangements side by side, the largest flow by month, what the storage heater saves. */
final class WaterTables {

    private static final double SHOWER_GPM = Shower.TWO_FOR_AN_HOUR.gpm() / 2;

    private final HousePage desk;
    private final PlainTable arrangements = new PlainTable("The three arrangements side by side");
    private final PlainTable months = PlainTable.ofMonths("Largest flow by month");
    private final PlainTable savings = new PlainTable("What each arrangement uses and saves in a year");

    WaterTables(HousePage desk) {
        this.desk = desk;
    }

    Element arrangements() {
        return arrangements.element();
    }

    Element months() {
        return months.element();
    }

    Element savings() {
        return savings.element();
    }

    void show(HotWaterStudy study, List<StorageSaving> all) {
        showArrangements(study);
        showMonths(study);
        showSavings(study, all);
    }

    private void showArrangements(HotWaterStudy study) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "Arrangement",
                "Set storage to",
                "Set on-demand to",
                "Shower of an hour, comfortable",
                "Comfortable minutes of a year",
                "Coldest at a tap",
                "Hottest at a tap"));
        for (Arrangement a : Arrangement.values()) {
            ArrangementYear y = study.year(a);
            OptionalDouble shower = study.evening().flatMap(e -> e.find(a)).stream()
                    .mapToDouble(e -> Math.floor(e.minutesComfortable() + 1e-6))
                    .findFirst();
            rows.add(List.of(
                    EveningWords.name(a),
                    degrees(y.setPoints().storageF(), "out"),
                    degrees(y.setPoints().onDemandF(), "out"),
                    shower.isPresent() ? whole(shower) + " of 60 min" : "not known",
                    y.comfortMinutes().isPresent()
                            ? share(
                                    y.comfortMinutes().getAsDouble(),
                                    y.drawMinutes().orElse(0))
                            : "not known",
                    degrees(y.coldestF(), "not known"),
                    degrees(y.hottestF(), "not known")));
        }
        arrangements.show(rows, study.chosen().map(EveningWords::name).orElse(""));
    }

    private static String share(double part, double all) {
        return all <= 0 ? "none drawn" : String.format(Locale.ROOT, "%,.0f of %,.0f", Math.rint(part), Math.rint(all));
    }

    private String degrees(OptionalDouble degF, String none) {
        return degF.isPresent() ? EveningWords.temperature(degF.getAsDouble(), desk.units()) : none;
    }

    private static String whole(OptionalDouble value) {
        return String.format(Locale.ROOT, "%,.0f", value.orElse(0));
    }

    private void showMonths(HotWaterStudy study) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "Month",
                "Showers at once, " + DisplayUnits.FLOW.words(desk.units(), Flow.ofGpm(SHOWER_GPM)),
                "At the use temperature",
                "Through the heater, at its set point",
                "Cold water"));
        boolean known = study.maxFixtureGpm().isKnown();
        for (int m = 0; m < 12; m++) {
            rows.add(List.of(
                    Climate.MONTHS.get(m),
                    known ? halves(study.maxFixtureGpm().get(m) / SHOWER_GPM) : "not known",
                    known ? flow(study.maxFixtureGpm().get(m)) : "not known",
                    study.maxFlowGpm().isKnown() ? flow(study.maxFlowGpm().get(m)) : "not known",
                    study.cold().isKnown()
                            ? EveningWords.temperature(study.cold().get(m), desk.units())
                            : "not known"));
        }
        months.show(rows, Climate.MONTHS.get(0));
    }

    /** Whole showers and a half, never more than there is. */
    static String halves(double showers) {
        double half = Math.floor(2 * showers) / 2;
        long whole = (long) half;
        String rest = half > whole ? "\u00bd" : "";
        return whole == 0 && !rest.isEmpty() ? rest : whole + rest;
    }

    private String flow(double gpm) {
        return DisplayUnits.FLOW.words(desk.units(), Flow.ofGpm(Math.floor(gpm * 10) / 10));
    }

    private void showSavings(HotWaterStudy study, List<StorageSaving> all) {
        String gal = FigureText.unit("gal", desk.units());
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "Arrangement",
                "Propane, " + gal,
                "Current, kWh",
                "Cost",
                "Saved before the room\u2019s heat, " + gal,
                "in money",
                "The room takes back, " + gal,
                "Saved after it, " + gal,
                "in money",
                "CO\u2082 saved, " + FigureText.unit("lb", desk.units())));
        for (StorageSaving s : all) {
            rows.add(List.of(
                    EveningWords.name(s.arrangement()),
                    number(s.gal()),
                    number(s.kwh()),
                    number(s.cost()),
                    number(s.savedGal()),
                    number(s.savedMoney()),
                    number(s.roomGal()),
                    number(s.savedGalAfter()),
                    number(s.savedMoneyAfter()),
                    number(s.savedCo2LbAfter())));
        }
        savings.show(rows, study.chosen().map(EveningWords::name).orElse(""));
    }

    private String number(Figure f) {
        if (!f.isKnown()) {
            return "not known";
        }
        double shown = Double.parseDouble(
                FigureText.number(f.number(), f.unit(), desk.units()).replace(",", ""));
        String text = String.format(Locale.ROOT, "%,.0f", Math.rint(Math.abs(shown)) + 0.0);
        return shown < 0 && !text.equals("0") ? "\u2212" + text : text;
    }
}
