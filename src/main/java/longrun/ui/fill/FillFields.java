package longrun.ui.fill;

import com.vaadin.flow.dom.Element;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import longrun.draft.fill.FillDraft;
import longrun.draft.fill.FillEntry;
import longrun.draft.fill.TankChoice;
import longrun.drawing.plot.GaugePicture;
import longrun.quantity.Measure;
import longrun.quantity.NotAQuantity;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Entry;
import longrun.words.UnitSystem;

/** The single entries of the page, and where each value is from. */
final class FillFields {

    private final Map<FillEntry, FactField> all = new EnumMap<>(FillEntry.class);
    private final TankPicker picker;
    private final ClimateField climate;
    private final Element dial = Dom.el("div", "dial");
    private String dialShown = "";

    FillFields(FillActions hand) {
        picker = new TankPicker(hand);
        climate = new ClimateField(hand);
        add(FillEntry.COUNT, "How many alike", hand);
        add(FillEntry.GAUGE, "It reads", hand);
        add(FillEntry.GAUGE_DATE, "Read on", hand);
        add(FillEntry.REFILL_AT, "Refill at", hand);
        add(FillEntry.COLDEST, "Coldest month, mean", hand);
        add(FillEntry.DESIGN, "Winter design temperature", hand);
        add(FillEntry.GROUND, "Ground in winter", hand);
        add(FillEntry.LEAD, "From call to truck", hand);
        add(FillEntry.PRICE, "Price", hand);
    }

    private void add(FillEntry which, String label, FillActions hand) {
        all.put(which, new FactField(which, label, hand));
    }

    FactField field(FillEntry which) {
        FactField field = all.get(which);
        if (field == null) {
            throw new IllegalArgumentException(which.name());
        }
        return field;
    }

    Entry month(int month) {
        return climate.month(month);
    }

    private Element row(FillEntry which) {
        return field(which).element();
    }

    Element tank() {
        return Dom.el("div", "facts", picker.pictures(), row(FillEntry.COUNT), picker.lies(), row(FillEntry.GROUND));
    }

    Element gauge() {
        Element facts =
                Dom.el("div", "facts", row(FillEntry.GAUGE), row(FillEntry.GAUGE_DATE), row(FillEntry.REFILL_AT));
        return Dom.el("div", "gauge", facts, dial);
    }

    Element place() {
        return Dom.el(
                "div",
                "facts",
                climate.element(),
                row(FillEntry.COLDEST),
                row(FillEntry.DESIGN),
                climate.twelveMonths());
    }

    Element truck() {
        return Dom.el("div", "facts", row(FillEntry.LEAD), row(FillEntry.PRICE));
    }

    void show(FillDraft draft, UnitSystem units, Map<String, String> wrong, String typing) {
        picker.show(draft);
        climate.show(draft, units, typing);
        all.forEach((which, field) -> field.show(
                draft,
                units,
                origin(which, draft),
                Optional.ofNullable(wrong.get(which.name())),
                !typing.equals(which.name())));
        Dom.show(row(FillEntry.GROUND), draft.isBuried());
        String gauge = draft.text(FillEntry.GAUGE);
        Dom.show(dial, gauge.isBlank() || gauge.endsWith("%")); // a cylinder on a scale has no dial
        String svg = new GaugePicture(percent(draft, FillEntry.GAUGE), percent(draft, FillEntry.REFILL_AT)).svg();
        if (!svg.equals(dialShown)) {
            dialShown = svg;
            dial.setProperty("innerHTML", svg);
        }
    }

    private static double percent(FillDraft draft, FillEntry which) {
        try {
            double percent = Measure.RATIO.read(draft.text(which)).percent();
            return percent <= 100 ? percent : -1;
        } catch (NotAQuantity e) {
            return -1;
        }
    }

    /** Where the value of an entry is from. */
    private static String origin(FillEntry which, FillDraft draft) {
        boolean starting = draft.isStartingValue(which.name());
        boolean cylinder = draft.tank().map(TankChoice::isCylinder).orElse(false);
        return switch (which) {
            case COUNT -> starting ? "starting value" : "";
            case GAUGE -> cylinder ? "give or take 5 in 100; weighed is surer: 60 lb" : "give or take 5 in 100";
            case GAUGE_DATE -> starting ? "the day it was typed" : "";
            case REFILL_AT -> starting ? "starting value; 20 to 30 is common practice" : "";
            case COLDEST ->
                draft.coldestMonth()
                        .map(m -> FillSlots.month(m)
                                + (draft.climate().isPresent() ? ", from the climate" : "; all twelve move with it"))
                        .orElse("");
            case DESIGN ->
                starting ? "from the climate; the coldest morning to plan for" : "the coldest morning to plan for";
            case GROUND -> "at the tank\u2019s depth; without it a buried tank\u2019s vapour is not known";
            case LEAD -> starting ? "starting value: a week" : "the longest so far is the safest";
            case PRICE -> draft.text(which).isBlank() ? "from the last ticket" : "";
        };
    }

    Map<String, String> heard() {
        Map<String, String> heard = new LinkedHashMap<>(climate.heard());
        all.forEach((which, field) -> heard.put(which.name(), field.entry().text()));
        return heard;
    }
}
