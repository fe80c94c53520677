package longrun.paper.page;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import longrun.piping.Outlet;
import longrun.plan.Appliance;
import longrun.plan.Leg;
import longrun.plan.Regulator;
import longrun.plan.Section;
import longrun.plan.SizeNames;
import longrun.plan.choice.Material;
import longrun.quantity.HeatRate;
import longrun.quantity.Length;
import longrun.quantity.Pressure;
import longrun.quantity.Show;
import longrun.review.Review;
import longrun.sizing.SectionSize;
import longrun.sizing.SectionStatus;
import longrun.words.IsolatedName;
import longrun.words.Names;

/** How the sheets say things; what is not known is a blank to fill in, never a zero. */
public final class SheetWords {

    /** A blank to write in. */
    public static final String BLANK = "______";

    private SheetWords() {}

    public static String feet(OptionalDouble feet) {
        return feet.isPresent() ? Show.decimals(feet.getAsDouble(), 1) : BLANK;
    }

    public static String feet(Optional<Length> length) {
        return length.map(l -> Show.decimals(l.feet(), 1)).orElse(BLANK);
    }

    /** Btu/h without the unit. */
    public static String heat(Optional<HeatRate> rate) {
        return rate.map(r -> Show.whole(r.btuh())).orElse(BLANK);
    }

    public static String whole(OptionalDouble value) {
        return value.isPresent() ? Show.whole(value.getAsDouble()) : BLANK;
    }

    /** To whole hundreds from ten thousand on, since a figure that is worked out is no more exact. */
    public static String roughly(double btuh) {
        return Show.whole(btuh >= 10_000 ? Math.round(btuh / 100) * 100 : btuh);
    }

    /** Inches of water under 1.5 psi, else psi; a blank where not known. */
    public static String pressure(Optional<Pressure> pressure) {
        if (pressure.isEmpty()) {
            return BLANK;
        }
        Pressure p = pressure.get();
        return p.psi() < 1.5 ? Show.decimals(p.inWc(), 2) + " in. w.c." : Show.decimals(p.psi(), 2) + " psi";
    }

    /** What a regulator is set to, as it was entered: "11 in. w.c.", "10 psi"; a blank where not known. */
    public static String set(Optional<Pressure> setting) {
        return setting.map(Show::pressure).orElse(BLANK);
    }

    /** A pressure in inches of water, without its unit; a blank where not known. */
    public static String inWc(Optional<Pressure> pressure) {
        return pressure.map(p -> Show.decimals(p.inWc(), 2)).orElse(BLANK);
    }

    /** "10.25 to 11.67 in. w.c.": two pressures with their unit once, where it is one. */
    public static String span(Optional<Pressure> lowest, Optional<Pressure> highest) {
        String low = pressure(lowest);
        String high = pressure(highest);
        String unit = high.substring(high.indexOf(' ') + 1);
        return (low.endsWith(" " + unit) ? low.substring(0, low.length() - unit.length() - 1) : low) + " to " + high;
    }

    /** "8 degF" as a thermometer says it. */
    public static String degrees(String typed) {
        return typed.replace("degF", "\u00B0F").replace("degC", "\u00B0C");
    }

    /** A text cut to the room of a number of letters of common width, with an ellipsis where it is cut. */
    public static String shortened(String text, int most) {
        String plain = IsolatedName.withoutMarks(text).strip().replaceAll("\\s+", " ");
        if (plain.codePoints().mapToDouble(SheetWords::width).sum() <= most) {
            return plain;
        }
        StringBuilder out = new StringBuilder();
        double room = most - 1;
        for (int letter : plain.codePoints().toArray()) {
            room -= width(letter);
            if (room < 0) {
                break;
            }
            out.appendCodePoint(letter);
        }
        return out.toString().stripTrailing() + "\u2026";
    }

    /** A letter's width beside that of a common one. */
    private static double width(int letter) {
        return letter >= 0x2E80 ? 2 : "WMmw@%".indexOf(letter) >= 0 || Character.isUpperCase(letter) ? 1.6 : 1;
    }

    /** "R1, first stage". */
    public static String regulator(Regulator r) {
        return r.id()
                + r.name()
                        .findValue()
                        .filter(n -> !n.isBlank())
                        .or(() -> r.kind().findValue().map(k -> k.label()))
                        .filter(n -> !n.equals(r.id()))
                        .map(n -> ", " + n)
                        .orElse("");
    }

    /** An appliance's name cut to the room of a number of letters; of two called alike the ids stay whole. */
    public static String shortened(Review review, Appliance a, int most) {
        String name = Names.of(review, a);
        if (!review.piping().names().isAlike(a)) {
            return shortened(name, most);
        }
        String id = " " + shortened(a.id(), most / 2);
        String alone = IsolatedName.withoutMarks(name).strip();
        return shortened(
                        alone.substring(
                                0,
                                alone.length()
                                        - IsolatedName.withoutMarks(a.id()).length()),
                        most - id.length())
                + id;
    }

    /** What a run ends at. */
    public static String outlet(Review review, Outlet outlet) {
        return switch (outlet.kind()) {
            case APPLIANCE -> Names.of(review, review.plan().appliances().get(outlet.item()));
            case REGULATOR -> regulator(review.plan().regulators().get(outlet.item()));
            case CAPPED -> "cap";
            case OPEN -> "end not entered";
        };
    }

    /** "steel, Schedule 40, indoors"; what is not entered is said so. */
    public static String pipe(Section s) {
        return s.material().findValue().map(Material::label).orElse("material not entered")
                + s.setting().findValue().map(p -> ", " + p.written()).orElse("");
    }

    /** "up 4 ft, north 6 ft"; a leg without direction is only a length. */
    public static String legs(Section s) {
        return s.legs()
                .findValue()
                .map(legs -> legs.stream().map(SheetWords::leg).collect(Collectors.joining(", ")))
                .orElse("legs not entered");
    }

    private static String leg(Leg leg) {
        return leg.direction().map(d -> d.written() + " ").orElse("")
                + Show.plain(leg.length().feet()) + " ft";
    }

    /** The size in use as a fitter reads it, or why there is none. */
    public static String size(SectionSize size) {
        if (size.status() == SectionStatus.NO_SIZE) {
            return "no size";
        }
        return name(size, size.size().orElse(""));
    }

    public static String needed(SectionSize size) {
        return name(size, size.neededSize().orElse(""));
    }

    private static String name(SectionSize size, String name) {
        return name.isEmpty() || size.table().isEmpty()
                ? BLANK
                : SizeNames.shown(size.table().get().material(), name).replace(" in.", "");
    }

    /** The sections in the order of the plan, by index. */
    public static List<Integer> sections(Review review) {
        return java.util.stream.IntStream.range(0, review.piping().sectionCount())
                .boxed()
                .toList();
    }
}
