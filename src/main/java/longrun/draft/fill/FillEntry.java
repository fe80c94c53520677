package longrun.draft.fill;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Optional;
import longrun.quantity.Typed;
import longrun.words.UnitSystem;

/** The single entries of the page, and where each stands in a plan. */
public enum FillEntry {
    COUNT("how many tanks", "/tank/count", "", ""),
    GAUGE("the gauge", "/tank/gauge", "%", "%"),
    GAUGE_DATE("the day the gauge was read", "/tank/gaugeDate", "", ""),
    REFILL_AT("the refill gauge", "/tank/refillAt", "%", "%"),
    GROUND("the ground\u2019s winter temperature", "/site/groundTemp", "degF", "degC"),
    /** Mean of the coldest month: moves all twelve. */
    COLDEST("the coldest month", "/site/monthlyMeanTemp", "degF", "degC"),
    DESIGN("the winter design temperature", "/site/winterDesignTemp", "degF", "degC"),
    LEAD("the days from call to truck", "/site/leadDays", "", ""),
    PRICE("the price", "/use/pricePerGal", "", "");

    private final String words;
    private final String pointer;
    private final String customary;
    private final String metric;

    FillEntry(String words, String pointer, String customary, String metric) {
        this.words = words;
        this.pointer = pointer;
        this.customary = customary;
        this.metric = metric;
    }

    /** What it is, within a sentence. */
    public String words() {
        return words;
    }

    public String pointer() {
        return pointer;
    }

    /** The unit a bare number has; empty for counts, dates and money. */
    public String unit(UnitSystem units) {
        return units == UnitSystem.CUSTOMARY ? customary : metric;
    }

    /** The text of what the plan holds for what was typed. */
    public String stored(String typed, UnitSystem units) {
        return node(typed, units).asText();
    }

    /** What a plan holds for what was typed; what cannot be put so is kept as typed. */
    JsonNode node(String typed, UnitSystem units) {
        Optional<JsonNode> number = switch (this) {
            case COUNT, LEAD -> Typed.number(typed).map(DecimalNode::valueOf);
            case PRICE -> Typed.price(typed).map(DecimalNode::valueOf);
            default -> Optional.empty();
        };
        return number.orElseGet(() -> TextNode.valueOf(
                switch (this) {
                    case COUNT, LEAD, PRICE -> typed;
                    case GAUGE_DATE -> Typed.date(typed);
                    default -> Typed.quantity(typed, unit(units));
                }));
    }

    /** What stands in the field for what the plan holds. */
    public String inField(String stored, UnitSystem units) {
        return unit(units).isEmpty() ? stored : Typed.inField(stored, unit(units));
    }

    /** The entry at the place an error names; empty where no single entry stands there. */
    public static Optional<FillEntry> at(String pointer) {
        for (FillEntry each : values()) {
            if (pointer.equals(each.pointer)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }
}
