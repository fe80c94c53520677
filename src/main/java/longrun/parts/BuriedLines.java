package longrun.parts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import longrun.plan.Section;
import longrun.plan.choice.Setting;
import longrun.quantity.Length;
import longrun.quantity.Show;

/** What goes into the ground with the pipe: risers and other ends of plastic, and tracer wire. */
final class BuriedLines {

    private static final PartGroup GROUP = PartGroup.BURIED;

    private final Bought bought;
    private final Tally tally = new Tally(GROUP);
    private final List<PartLine> apart = new ArrayList<>();
    private final Map<String, List<Integer>> wire = new LinkedHashMap<>();

    private BuriedLines(Bought bought) {
        this.bought = bought;
    }

    static List<PartLine> of(Bought bought) {
        BuriedLines all = new BuriedLines(bought);
        for (int s : bought.sections()) {
            if (bought.material(s).filter(m -> m.isPlastic()).isPresent()) {
                all.plastic(s, bought.piping().section(s));
            }
        }
        List<PartLine> out = new ArrayList<>(all.tally.lines());
        all.wire.forEach((awg, sections) -> out.add(all.tracer(awg, sections)));
        out.addAll(all.apart);
        return out;
    }

    private void plastic(int s, Section section) {
        if (section.ends().isUnknown()) {
            apart.add(PartLine.uncounted(
                    GROUP,
                    "Risers or end fittings",
                    bought.shown(s),
                    List.of(bought.id(s)),
                    bought.id(s) + ": its ends are not entered"));
        }
        section.ends()
                .findValue()
                .orElse(List.of())
                .forEach(end -> tally.add(
                        end.isBlank() ? "End fitting" : capital(end.strip().replace('-', ' ')),
                        bought.shown(s),
                        1,
                        bought.id(s),
                        List.of(bought.id(s)),
                        "an end entered for the section"));
        if (!section.setting().is(Setting.UNDERGROUND)) {
            return;
        }
        if (section.tracerWire().isKnown()) {
            section.tracerWire()
                    .findValue()
                    .ifPresent(w -> wire.computeIfAbsent(Show.plain(w.awg()) + " AWG", k -> new ArrayList<>())
                            .add(s));
        } else if (section.tracerWire().isUnknown()) {
            apart.add(PartLine.uncounted(
                    GROUP, "Tracer wire", "", List.of(bought.id(s)), bought.id(s) + ": not entered"));
        }
    }

    private PartLine tracer(String awg, List<Integer> sections) {
        double feet = 0;
        boolean known = true;
        double share = 0;
        for (int s : sections) {
            Optional<Length> measured = bought.piping().measured(s);
            known &= measured.isPresent();
            feet += measured.map(Length::feet).orElse(0.0);
            share = Math.max(
                    share,
                    bought.material(s).map(m -> StockForm.of(m).wasteShare()).orElse(0.0));
        }
        List<String> ids = sections.stream().map(bought::id).toList();
        return new PartLine(
                GROUP,
                "Tracer wire",
                awg,
                known ? OptionalDouble.of(Math.round(feet * (1 + share) * 1000) / 1000.0) : OptionalDouble.empty(),
                "ft",
                ids,
                known
                        ? String.join(", ", ids) + ": " + Show.plain(feet)
                                + " ft of pipe, with the same share for waste"
                        : String.join(", ", ids) + ": legs not entered");
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }
}
