package longrun.drawing.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.piping.Outlet;
import longrun.piping.Piping;
import longrun.plan.Appliance;
import longrun.plan.Regulator;
import longrun.plan.Section;
import longrun.plan.SizeNames;
import longrun.plan.Tank;
import longrun.plan.choice.Material;
import longrun.plan.choice.PartKind;
import longrun.plan.choice.TankKind;
import longrun.review.Review;
import longrun.sizing.SectionSize;
import longrun.sizing.SectionStatus;
import longrun.sizing.StageSize;
import longrun.words.IsolatedName;

/** What is lettered in the drawing. */
final class RunWords {

    private static final int LONGEST = 28;

    /** Three lines of it. */
    private static final int MOST_OF_A_NAME = 3 * LONGEST;

    private final Review review;
    private final DrawingUnits units;
    private final Optional<Material> common;

    RunWords(Review review, DrawingUnits units) {
        this.review = review;
        this.units = units;
        Map<Material, Integer> count = new HashMap<>();
        for (Section s : review.plan().sections()) {
            s.material().findValue().ifPresent(m -> count.merge(m, 1, Integer::sum));
        }
        Optional<Material> most = Optional.empty();
        for (Material m : Material.values()) {
            if (count.getOrDefault(m, 0) > most.map(count::get).orElse(0)) {
                most = Optional.of(m);
            }
        }
        this.common = most;
    }

    static String shortened(String text) {
        return shortened(text, LONGEST);
    }

    private static String shortened(String text, int most) {
        String plain = text.strip().replaceAll("\\s+", " ");
        return plain.codePointCount(0, plain.length()) <= most
                ? plain
                : plain.substring(0, plain.offsetByCodePoints(0, most - 1)) + "\u2026";
    }

    /** A name in lines of a length that fits beside what it names, parted between words where it has any. */
    static List<String> lines(String name) {
        List<String> out = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : IsolatedName.withoutMarks(name).split(" ", -1)) {
            String rest = word;
            if (line.length() > 0 && letters(line) + 1 + letters(rest) > LONGEST) {
                out.add(IsolatedName.of(line.toString()));
                line.setLength(0);
            }
            while (letters(rest) > LONGEST) {
                int cut = rest.offsetByCodePoints(0, LONGEST);
                out.add(IsolatedName.of(rest.substring(0, cut)));
                rest = rest.substring(cut);
            }
            line.append(line.length() > 0 ? " " : "").append(rest);
        }
        if (line.length() > 0 || out.isEmpty()) {
            out.add(IsolatedName.of(line.toString()));
        }
        return out;
    }

    private static int letters(CharSequence text) {
        return Character.codePointCount(text, 0, text.length());
    }

    String size(int section) {
        SectionSize size = review.sizing().section(section);
        if (size.status() == SectionStatus.NO_SIZE) {
            return "no size";
        }
        if (size.size().isEmpty()) {
            return "not sized";
        }
        return name(size, size.size().get()) + (review.piping().isProvisional(section) ? " so far" : "");
    }

    private static String name(SectionSize size, String name) {
        Material material = size.table().map(t -> t.material()).orElse(Material.STEEL);
        return switch (material) {
            case COPPER -> name + size.sizeOd().map(od -> " (" + od + " OD)").orElse("");
            case CSST -> SizeNames.shown(material, name);
            case STEEL, PE_PIPE, PE_TUBING -> name;
        };
    }

    String under(int section) {
        Section s = review.piping().section(section);
        List<String> said = new ArrayList<>();
        s.material()
                .findValue()
                .filter(m -> !Optional.of(m).equals(common))
                .ifPresent(m -> said.add(m.isPlastic() ? "PE" : m.label()));
        said.add(review.piping()
                .load(section)
                .whole()
                .map(load -> units.heat(load.btuh()))
                .orElse("load not known"));
        if (review.sizing().section(section).status() == SectionStatus.UNDERSIZED) {
            said.add("too small");
        }
        if (s.isAssumed()) {
            said.add("not seen");
        }
        if (s.rough().is(true)) {
            said.add("rough");
        }
        return String.join(", ", said);
    }

    List<PartKind> parts(Optional<Outlet> end) {
        return appliance(end)
                .flatMap(a -> a.connection().findValue())
                .map(parts -> parts.stream()
                        .flatMap(p -> p.part().findValue().stream())
                        .limit(8)
                        .toList())
                .orElse(List.of());
    }

    private Optional<Appliance> appliance(Optional<Outlet> end) {
        return end.filter(o -> o.kind() == Outlet.Kind.APPLIANCE)
                .map(o -> review.plan().appliances().get(o.item()));
    }

    String endName(Optional<Outlet> end) {
        Optional<Appliance> a = appliance(end);
        if (a.isEmpty()) {
            return end.filter(o -> o.kind() == Outlet.Kind.CAPPED).isPresent()
                    ? "capped"
                    : end.filter(o -> o.kind() == Outlet.Kind.OPEN).isPresent() ? "end not said" : "";
        }
        String name = shortened(review.piping().names().name(a.get()), MOST_OF_A_NAME);
        return IsolatedName.of(name.substring(0, name.offsetByCodePoints(0, Math.min(1, name.length())))
                        .toUpperCase(java.util.Locale.ROOT)
                + name.substring(name.offsetByCodePoints(0, Math.min(1, name.length()))));
    }

    double endHeight(Optional<Outlet> end) {
        return appliance(end)
                .flatMap(a -> a.kind().findValue())
                .map(k -> switch (k) {
                    case ON_DEMAND_WATER_HEATER, STORAGE_WATER_HEATER, FURNACE, BOILER -> 50.0;
                    case COOKTOP, LIGHT, GAS_LOGS -> 18.0;
                    default -> 32.0;
                })
                .orElse(32.0);
    }

    /** Under the appliance: whether the longest run of its stage ends there. */
    List<String> endNotes(Optional<Outlet> end) {
        List<String> notes = new ArrayList<>();
        appliance(end)
                .ifPresent(a -> notes.add(
                        a.input().findValue().map(h -> units.heat(h.btuh())).orElse("input not known")));
        Piping piping = review.piping();
        appliance(end).filter(Appliance::hasPartsNotSeen).ifPresent(a -> notes.add("parts not seen"));
        end.ifPresent(o -> {
            if (o.kind() == Outlet.Kind.CAPPED) {
                piping.section(o.section())
                        .reserve()
                        .findValue()
                        .ifPresent(r -> notes.add("keeps " + units.heat(r.btuh())));
            }
            int stage = piping.stageIndex(o.section());
            if (stage >= 0) {
                StageSize size = review.sizing().stage(stage);
                if (size.longestRun().isPresent()
                        && size.longestRunTo().filter(o::equals).isPresent()) {
                    notes.add("longest run "
                            + units.length(size.longestRun().get().feet()));
                    if (!review.sizing().assumedParts(o.section()).isEmpty()) {
                        notes.add(
                                piping.endsInPartsNotSeen(o.section())
                                        ? "counted as the rules ask"
                                        : "parts not entered, counted");
                    }
                }
            }
        });
        return notes;
    }

    List<String> regulator(int index) {
        Regulator r = review.plan().regulators().get(index);
        List<String> lines = new ArrayList<>();
        String name = r.name()
                .findValue()
                .filter(n -> !n.isBlank())
                .orElse(r.id() + r.kind().findValue().map(k -> ", " + k.label()).orElse(""));
        lines.addAll(lines(shortened(name, MOST_OF_A_NAME)));
        lines.add(r.outlet()
                .findValue()
                .map(p -> units.pressure(p.psi(), p.inWc()))
                .orElse("outlet not known"));
        return lines;
    }

    List<String> tank() {
        List<Tank> tanks = review.plan().allTanks();
        if (tanks.isEmpty()) {
            return List.of("Tank");
        }
        long count = Math.round(tanks.get(0).count().findValue().orElse(1.0)) * tanks.size();
        String one = cylinders() ? "Cylinder" : "Tank";
        String kind = count > 1 && count < 100 ? count + " " + one.toLowerCase(java.util.Locale.ROOT) + "s" : one;
        return List.of(kind
                + tanks.get(0)
                        .waterCapacity()
                        .findText()
                        .map(t -> ", " + shortened(t))
                        .orElse(""));
    }

    boolean cylinders() {
        return review.plan().allTanks().stream().anyMatch(t -> t.kind().is(TankKind.CYLINDER));
    }
}
