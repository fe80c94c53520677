package longrun.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import longrun.piping.Piping;
import longrun.piping.TrapNeed;
import longrun.plan.Appliance;
import longrun.plan.Appliance.Part;
import longrun.plan.choice.Gas;
import longrun.plan.choice.PartKind;
import longrun.quantity.Show;

/** The parts between the end of the pipe and each appliance, as entered. */
final class ApplianceLines {

    private static final String NOT_SEEN = "assumed, not seen";
    private static final PartGroup GROUP = PartGroup.APPLIANCES;

    private final Bought bought;
    private final Tally tally = new Tally(GROUP);
    private final List<PartLine> apart = new ArrayList<>();

    private ApplianceLines(Bought bought) {
        this.bought = bought;
    }

    static List<PartLine> of(Bought bought) {
        ApplianceLines all = new ApplianceLines(bought);
        bought.piping().plan().appliances().forEach(all::appliance);
        List<PartLine> out = new ArrayList<>(all.tally.lines());
        out.addAll(all.apart);
        return out;
    }

    private void appliance(Appliance a) {
        if (a.connection().isUnknown()) {
            boolean trap = TrapNeed.of(a) != TrapNeed.EXEMPT;
            apart.add(PartLine.uncounted(
                    GROUP,
                    "Parts of a connection",
                    "",
                    List.of(a.id()),
                    name(a) + ": not entered; the rules will ask for a shutoff"
                            + (trap ? " and a sediment trap" : "")));
            return;
        }
        for (Part part : a.connection().findValue().orElse(List.of())) {
            part(a, part);
        }
    }

    private void part(Appliance a, Part part) {
        Optional<PartKind> kind = part.part().findValue();
        if (kind.isEmpty()) {
            apart.add(
                    PartLine.uncounted(GROUP, "A part", "", List.of(a.id()), name(a) + ": nobody has said what it is"));
            return;
        }
        switch (kind.get()) {
            case SHUTOFF -> add("Shutoff valve", a, part);
            case UNION -> add("Union", a, part);
            case SEDIMENT_TRAP ->
                add(
                        "Sediment trap: tee, nipple"
                                + part.nipple().findText().map(n -> " " + n).orElse(", its length not entered")
                                + ", cap",
                        a,
                        part);
            case FLEXIBLE_CONNECTOR -> add("Flexible connector" + connector(part), a, part);
            case RIGID_PIPE ->
                apart.add(new PartLine(
                        GROUP,
                        "Rigid pipe to the appliance",
                        size(a, part),
                        part.length()
                                .findValue()
                                .map(l -> OptionalDouble.of(l.feet()))
                                .orElse(OptionalDouble.empty()),
                        "ft",
                        List.of(a.id()),
                        name(a)
                                + (part.length().isKnown() ? ": as entered" : ": its length is not entered")
                                + (part.isSeen() ? "" : ", " + NOT_SEEN)));
            case BUILT_IN_TRAP -> {
                // comes with the appliance
            }
        }
    }

    private static String connector(Part part) {
        return part.length().findText().map(l -> ", " + l).orElse(", its length not entered")
                + part.capacity()
                        .findValue()
                        .map(c -> ", rated " + Show.btuh(c.btuh())
                                + part.capacityGas()
                                        .findValue()
                                        .map(g -> " of " + (g == Gas.NATURAL ? "natural gas" : "propane"))
                                        .orElse(""))
                        .orElse(", its rating to be read");
    }

    private void add(String item, Appliance a, Part part) {
        tally.add(item, size(a, part), 1, name(a), List.of(a.id()), part.isSeen() ? "as entered" : NOT_SEEN);
    }

    private static String name(Appliance a) {
        return a.name().findValue().filter(n -> !n.isBlank()).orElse(a.id());
    }

    /** The part's own size, else that of the pipe it hangs on. */
    private String size(Appliance a, Part part) {
        return part.size().findText().orElseGet(() -> {
            Piping piping = bought.piping();
            return a.fedBy()
                    .findValue()
                    .map(piping::findSection)
                    .filter(s -> s.isPresent() && bought.size(s.getAsInt()).isPresent())
                    .map(s -> "for " + bought.shown(s.getAsInt()) + " pipe")
                    .orElse("not entered");
        });
    }
}
