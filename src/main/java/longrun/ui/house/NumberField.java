package longrun.ui.house;

import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.util.regex.Pattern;

/** A count, which is a bare number in the plan; what is no number is kept as typed and said to be none. */
public final class NumberField extends LineField {

    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,9}(\\.[0-9]{1,9})?");

    public NumberField(HouseDesk desk, String pointer, String label, String help) {
        super(desk, pointer, label, help);
        target().setAttribute("inputmode", "decimal");
    }

    @Override
    void typed(String text) {
        String number = text.strip();
        desk().session().type(pointer(), d -> {
            if (number.isEmpty()) {
                DraftTree.remove(d, pointer());
            } else {
                DraftTree.put(
                        d,
                        pointer(),
                        NUMBER.matcher(number).matches()
                                ? DecimalNode.valueOf(new BigDecimal(number))
                                : TextNode.valueOf(text));
            }
        });
    }

    @Override
    String wrong(String stored, String error) {
        return "\u201c" + stored + "\u201d is no number: write it in digits, such as 4";
    }
}
