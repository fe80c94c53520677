package longrun.checked.published;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.origin.DataRow;
import longrun.origin.PlainNumber;

/** The input of a published case, values by name, such as {@code feet=60; loads=35 75}. */
public final class CaseInput {

    private final DataRow row;
    private final Map<String, String> values = new LinkedHashMap<>();

    CaseInput(DataRow row) {
        this.row = row;
        for (String each : row.text("input").split(";")) {
            int equals = each.indexOf('=');
            if (equals < 0) {
                throw row.fault("input", "'" + each.strip() + "' is not name=value");
            }
            values.put(
                    each.substring(0, equals).strip(),
                    each.substring(equals + 1).strip());
        }
    }

    /**
     * The value with a name, as text.
     *
     * @throws RuntimeException a {@link #fault} where it is not given
     */
    public String text(String name) {
        return find(name).orElseThrow(() -> fault("'" + name + "' is not given"));
    }

    /** The value with a name; empty where it is not given. */
    public Optional<String> find(String name) {
        return Optional.ofNullable(values.get(name));
    }

    /** The value with a name, split at its spaces. */
    public List<String> words(String name) {
        return List.of(text(name).split(" +"));
    }

    /** The first number of the value with a name. */
    public double number(String name) {
        return numbers(name).get(0);
    }

    /** The numbers of the value with a name. */
    public List<Double> numbers(String name) {
        List<Double> out = new ArrayList<>();
        for (String word : words(name)) {
            double value = PlainNumber.parse(word);
            if (Double.isNaN(value)) {
                throw fault("'" + word + "' is not a number");
            }
            out.add(value);
        }
        return List.copyOf(out);
    }

    /** An error in the input, naming its file, line and column. */
    public RuntimeException fault(String what) {
        return row.fault("input", what);
    }
}
