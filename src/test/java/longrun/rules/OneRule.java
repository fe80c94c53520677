package longrun.rules;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longrun.Samples;
import longrun.rules.shape.House;
import longrun.rules.shape.Verdict;

/** One rule by itself at one place, and tables with a rule in the first column. */
final class OneRule {

    private OneRule() {}

    /** What a rule says at a place, by rules made anew, so that what they are made of counts. */
    static Stream<Verdict> judge(House house, String rule, String place) {
        return Rules.make().stream()
                .filter(r -> r.name().equals(rule))
                .flatMap(r -> r.judge(house).stream())
                .filter(v -> v.state().pointer().equals(place));
    }

    /** The rows of a table of the rules' folder, parted by bars. */
    static List<String[]> listRows(String file) {
        return Samples.text("rules/" + file)
                .lines()
                .skip(1)
                .map(line -> line.split("\\|", -1))
                .toList();
    }

    /** The rows of such a table by the rule they are about. */
    static Map<String, List<String[]>> rows(String file) {
        return listRows(file).stream().collect(Collectors.groupingBy(row -> row[0]));
    }
}
