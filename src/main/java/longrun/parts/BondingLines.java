package longrun.parts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import longrun.plan.Section;
import longrun.plan.choice.Material;
import longrun.quantity.Show;

/** The conductor that bonds corrugated tubing. */
final class BondingLines {

    private BondingLines() {}

    static List<PartLine> of(Bought bought) {
        Map<String, List<String>> wires = new LinkedHashMap<>();
        Map<String, OptionalDouble> feet = new LinkedHashMap<>();
        List<String> without = new ArrayList<>();
        for (int s : bought.sections()) {
            Section section = bought.piping().section(s);
            if (bought.material(s).filter(m -> m == Material.CSST).isEmpty()) {
                continue;
            }
            if (section.bonding().isUnknown()) {
                without.add(bought.id(s));
            }
            section.bonding().findValue().ifPresent(w -> {
                String key = Show.plain(w.awg()) + " AWG|"
                        + section.bondingLength().findText().orElse("");
                wires.computeIfAbsent(key, k -> new ArrayList<>()).add(bought.id(s));
                feet.put(
                        key,
                        section.bondingLength()
                                .findValue()
                                .map(l -> OptionalDouble.of(l.feet()))
                                .orElse(OptionalDouble.empty()));
            });
        }
        List<PartLine> out = new ArrayList<>();
        wires.forEach((key, sections) -> out.add(new PartLine(
                PartGroup.BONDING,
                "Bonding conductor, with its clamps",
                key.substring(0, key.indexOf('|')),
                feet.getOrDefault(key, OptionalDouble.empty()),
                "ft",
                sections,
                String.join(", ", sections)
                        + (feet.getOrDefault(key, OptionalDouble.empty()).isPresent()
                                ? ": as entered"
                                : ": its length is not entered")
                        + (sections.size() > 1 ? "; taken as one bond, entered alike for each" : ""))));
        if (!without.isEmpty() && wires.isEmpty()) {
            out.add(PartLine.uncounted(
                    PartGroup.BONDING,
                    "Bonding conductor, with its clamps",
                    "",
                    without,
                    String.join(", ", without) + ": corrugated tubing whose bonding is not entered"));
        }
        return out;
    }
}
