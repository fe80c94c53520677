package longrun.paper;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import longrun.piping.Outlet;
import longrun.plan.Appliance;
import longrun.plan.Leg;
import longrun.plan.Material;
import longrun.plan.Plan;
import longrun.plan.Regulator;
import longrun.plan.Section;
import longrun.plan.SizeNames;
import longrun.quantity.Pressure;
import longrun.quantity.Show;
import longrun.review.Review;
import longrun.sizing.SectionSize;
import longrun.sizing.SectionStatus;
import longrun.words.Names;

/** How the sheets say things; what is not known is a blank to fill in, never a zero. */
final class SheetWords {

    /** A blank to write in. */
    static final String BLANK = "______";

    private SheetWords() {}

    static String feet(OptionalDouble feet) {
        return feet.isPresent() ? Show.decimals(feet.getAsDouble(), 1) : BLANK;
    }

    static String whole(OptionalDouble value) {
        return value.isPresent() ? Show.whole(value.getAsDouble()) : BLANK;
    }

    /** To whole hundreds from ten thousand on, as one speaks of a figure that is reckoned. */
    static String roughly(double btuh) {
        return Show.whole(btuh >= 10_000 ? Math.round(btuh / 100) * 100 : btuh);
    }

    /** Inches of water under 1.5 psi, else psi; a blank where not known. */
    static String pressure(OptionalDouble inWc) {
        if (inWc.isEmpty()) {
            return BLANK;
        }
        Pressure p = Pressure.ofInWc(inWc.getAsDouble());
        return p.psi() < 1.5 ? Show.decimals(p.inWc(), 2) + " in. w.c." : Show.decimals(p.psi(), 2) + " psi";
    }

    /** "R1, first stage". */
    static String regulator(Regulator r) {
        return r.id()
                + r.name()
                        .findValue()
                        .filter(n -> !n.isBlank())
                        .or(() -> r.kind().findValue().map(k -> k.label()))
                        .filter(n -> !n.equals(r.id()))
                        .map(n -> ", " + n)
                        .orElse("");
    }

    /** What a run ends at. */
    static String outlet(Plan plan, Outlet outlet) {
        return switch (outlet.kind()) {
            case APPLIANCE -> {
                Appliance a = plan.appliances().get(outlet.item());
                yield Names.of(a);
            }
            case REGULATOR -> regulator(plan.regulators().get(outlet.item()));
            case CAPPED -> "cap";
            case OPEN -> "end not entered";
        };
    }

    /** "steel, Schedule 40, indoors"; what is not entered is said so. */
    static String pipe(Section s) {
        return s.material().findValue().map(Material::label).orElse("material not entered")
                + s.setting().findValue().map(p -> ", " + p.written()).orElse("");
    }

    /** "up 4 ft, north 6 ft"; a leg without direction is only a length. */
    static String legs(Section s) {
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
    static String size(SectionSize size) {
        if (size.status() == SectionStatus.NO_SIZE) {
            return "no size";
        }
        return name(size, size.size().orElse(""));
    }

    static String needed(SectionSize size) {
        return name(size, size.neededSize().orElse(""));
    }

    private static String name(SectionSize size, String name) {
        return name.isEmpty() || size.table().isEmpty()
                ? BLANK
                : SizeNames.shown(size.table().get().material(), name).replace(" in.", "");
    }

    /** The sections in the order of the plan, by index. */
    static List<Integer> sections(Review review) {
        return java.util.stream.IntStream.range(0, review.piping().sectionCount())
                .boxed()
                .toList();
    }
}
