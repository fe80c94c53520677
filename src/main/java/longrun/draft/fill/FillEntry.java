package longrun.draft.fill;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Optional;
import longrun.quantity.Typed;
import longrun.words.UnitSystem;

/** The single entries of How long does a fill last, with the pointer of each in a plan. */
public enum FillEntry {
    COUNT("how many tanks", "/tank/count", "", ""),
    GAUGE("the gauge", "/tank/gauge", "%", "%"),
    GAUGE_DATE("the day the gauge was read", "/tank/gaugeDate", "", ""),
    REFILL_AT("the refill gauge", "/tank/refillAt", "%", "%"),
    GROUND("the ground\u2019s winter temperature", "/site/groundTemp", "degF", "degC"),
    /** Mean temperature of the coldest month; a change moves all twelve months. */
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

    /** Its name within a sentence. */
    public String words() {
        return words;
    }

    /** Its pointer in a plan. */
    public String pointer() {
        return pointer;
    }

    /** The unit of a bare number; blank for counts, dates and prices. */
    public String unit(UnitSystem units) {
        return units == UnitSystem.CUSTOMARY ? customary : metric;
    }

    /** The text stored for what was typed. */
    public String stored(String typed, UnitSystem units) {
        return node(typed, units).asText();
    }

    /** The value stored for what was typed; text that is not understood is kept as typed. */
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

    /** The text of the field for what is stored. */
    public String inField(String stored, UnitSystem units) {
        return unit(units).isEmpty() ? stored : Typed.inField(stored, unit(units));
    }

    /** The entry with a pointer; empty where no single entry has it. */
    public static Optional<FillEntry> at(String pointer) {
        for (FillEntry each : values()) {
            if (pointer.equals(each.pointer)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }
}
