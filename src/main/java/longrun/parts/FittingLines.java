package longrun.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import longrun.piping.Outlet;
import longrun.piping.Turns;
import longrun.plan.Section;
import longrun.plan.choice.Material;
import longrun.plan.choice.PipeFitting;
import org.jspecify.annotations.Nullable;

/** Fittings along the pipe: elbows from the turns of the legs, what a person listed, ends and caps. */
final class FittingLines {

    private static final Map<PipeFitting, String> LISTED = Map.of(
            PipeFitting.ELBOW_90, "90 degree elbow",
            PipeFitting.ELBOW_45, "45 degree elbow",
            PipeFitting.TEE_BRANCH, "Tee",
            PipeFitting.VALVE, "Shutoff valve");

    private final Bought bought;
    private final Tally tally = new Tally(PartGroup.FITTINGS);
    private final List<PartLine> uncounted = new ArrayList<>();

    private FittingLines(Bought bought) {
        this.bought = bought;
    }

    static List<PartLine> of(Bought bought, List<PipeNeed> pipe) {
        FittingLines all = new FittingLines(bought);
        bought.sections().forEach(all::section);
        Junctions.count(bought, all.tally);
        pipe.forEach(all::couplings);
        List<PartLine> out = new ArrayList<>(all.tally.lines());
        out.addAll(all.uncounted);
        return out;
    }

    private void section(int s) {
        Section section = bought.piping().section(s);
        Turns turns = bought.piping().turns(s);
        Material material = bought.material(s).orElse(null);
        turns(s, turns, material);
        section.fittings()
                .findValue()
                .orElse(Map.of())
                .forEach((fitting, count) -> tally.add(
                        LISTED.getOrDefault(fitting, fitting.written()) + of(material),
                        bought.shown(s),
                        count,
                        bought.id(s),
                        List.of(bought.id(s)),
                        "listed at the section"));
        if (turns.undirected().feet() > 0) {
            lacking("Fittings of a length whose turns are not described", s, "describe its legs, or list its fittings");
        }
        if (material == Material.CSST) {
            tally.add(
                    "CSST end fitting",
                    bought.shown(s),
                    2,
                    bought.id(s),
                    List.of(bought.id(s)),
                    "two ends a section, as the sizing counts them");
        } else if (material == Material.COPPER) {
            lacking("Joint fittings of copper tube", s, "they depend on the joint and on hard or soft tube");
        } else if (material == Material.PE_PIPE || material == Material.PE_TUBING) {
            lacking("Joint fittings of polyethylene", s, "they depend on the maker's way of joining");
        }
        end(s);
    }

    private void turns(int s, Turns turns, @Nullable Material material) {
        if (turns.turns() == 0 || material == Material.CSST) {
            return; // corrugated tubing is bent
        }
        if (material == Material.STEEL) {
            tally.add(
                    "90 degree elbow, steel",
                    bought.shown(s),
                    turns.turns(),
                    bought.id(s),
                    List.of(bought.id(s)),
                    "from the turns of the legs");
        } else {
            lacking(
                    "Elbows" + of(material),
                    s,
                    turns.turns() + (turns.turns() == 1 ? " turn" : " turns")
                            + " by its legs: none where the tube is bent, one each where it is not");
        }
    }

    private static String of(@Nullable Material material) {
        return material == null ? "" : ", " + material.label();
    }

    private void end(int s) {
        bought.piping().findOutlet(s).ifPresent(o -> {
            if (o.kind() == Outlet.Kind.CAPPED) {
                tally.add(
                        "Cap or plug" + of(bought.material(s).orElse(null)),
                        bought.shown(s),
                        1,
                        bought.id(s),
                        List.of(bought.id(s)),
                        "its end is capped");
            } else if (o.kind() == Outlet.Kind.OPEN) {
                lacking("Cap or plug", s, "it feeds nothing, and nobody has said that it is capped");
            }
        });
    }

    private void couplings(PipeNeed need) {
        if (!need.cutting().isEmpty()) {
            tally.add(
                    "Coupling, steel",
                    need.size(),
                    need.cutting().get(0).couplings(),
                    String.join(", ", need.sections()),
                    need.sections(),
                    "where a straight is longer than a length of pipe");
        }
    }

    private void lacking(String item, int s, String basis) {
        uncounted.add(PartLine.uncounted(
                PartGroup.FITTINGS, item, bought.shown(s), List.of(bought.id(s)), bought.id(s) + ": " + basis));
    }
}
