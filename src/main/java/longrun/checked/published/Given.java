package longrun.checked.published;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.origin.DataRow;
import longrun.origin.PlainNumber;

/** What a published case gives, by name: {@code feet=60; loads=35 75}. */
public final class Given {

    private final DataRow row;
    private final Map<String, String> values = new LinkedHashMap<>();

    Given(DataRow row) {
        this.row = row;
        for (String each : row.text("input").split(";")) {
            int equals = each.indexOf('=');
            if (equals < 0) {
                throw row.fault("input", "'" + each.strip() + "' gives nothing a name");
            }
            values.put(
                    each.substring(0, equals).strip(),
                    each.substring(equals + 1).strip());
        }
    }

    /** What is given under a name. */
    public String text(String name) {
        return find(name).orElseThrow(() -> fault("'" + name + "' is not given"));
    }

    public Optional<String> find(String name) {
        return Optional.ofNullable(values.get(name));
    }

    public List<String> words(String name) {
        return List.of(text(name).split(" +"));
    }

    public double number(String name) {
        return numbers(name).get(0);
    }

    public List<Double> numbers(String name) {
        List<Double> out = new ArrayList<>();
        for (String word : words(name)) {
            double value = PlainNumber.parse(word);
            if (Double.isNaN(value)) {
                throw fault("'" + word + "' is no number");
            }
            out.add(value);
        }
        return List.copyOf(out);
    }

    /** What is wrong with what is given, at its place. */
    public RuntimeException fault(String what) {
        return row.fault("input", what);
    }
}
