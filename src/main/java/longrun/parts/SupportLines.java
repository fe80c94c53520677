package longrun.parts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.plan.Section;
import longrun.plan.choice.Setting;
import longrun.quantity.Length;
import longrun.quantity.Show;

/** What holds the pipe and what it passes through. */
final class SupportLines {

    private static final PartGroup GROUP = PartGroup.SUPPORTS;

    private SupportLines() {}

    static List<PartLine> of(Bought bought) {
        Tally tally = new Tally(GROUP);
        Map<String, List<String>> withoutSpacing = new LinkedHashMap<>();
        List<String> plates = new ArrayList<>();
        List<String> sleeves = new ArrayList<>();
        for (int s : bought.sections()) {
            Section section = bought.piping().section(s);
            if (!section.setting().is(Setting.UNDERGROUND)) {
                supports(bought, s, section, tally, withoutSpacing);
            }
            if (section.plates().is(true)) {
                plates.add(bought.id(s));
            }
            for (Section.Pass pass : section.passes().findValue().orElse(List.of())) {
                if (pass.sleeved().is(true)) {
                    String what = pass.what()
                            .findText()
                            .map(w -> ", through " + w.replace('-', ' '))
                            .orElse("");
                    tally.add("Sleeve" + what, bought.shown(s), 1, bought.id(s), List.of(bought.id(s)), "as entered");
                } else if (pass.sleeved().isUnknown()) {
                    sleeves.add(bought.id(s));
                }
            }
        }
        List<PartLine> out = new ArrayList<>(tally.lines());
        withoutSpacing.forEach((size, ids) -> out.add(
                PartLine.uncounted(GROUP, "Supports", size, ids, String.join(", ", ids) + ": no spacing is entered")));
        if (!plates.isEmpty()) {
            out.add(PartLine.uncounted(
                    GROUP,
                    "Striker plates",
                    "",
                    plates,
                    String.join(", ", plates) + ": how many studs is not in a plan"));
        }
        if (!sleeves.isEmpty()) {
            out.add(PartLine.uncounted(
                    GROUP, "Sleeves", "", sleeves, String.join(", ", sleeves) + ": not said whether it is sleeved"));
        }
        return out;
    }

    private static void supports(
            Bought bought, int s, Section section, Tally tally, Map<String, List<String>> withoutSpacing) {
        Optional<Length> length = bought.piping().measured(s);
        double every = section.supportEvery().findValue().map(l -> l.feet()).orElse(0.0);
        if (every > 0 && length.isPresent()) {
            tally.add(
                    "Support",
                    bought.shown(s),
                    (int) Math.ceil(length.get().feet() / every - 1e-9),
                    bought.id(s),
                    List.of(bought.id(s)),
                    "one every " + Show.plain(every) + " ft or less, as entered");
        } else {
            withoutSpacing
                    .computeIfAbsent(bought.shown(s), k -> new ArrayList<>())
                    .add(bought.id(s));
        }
    }
}
