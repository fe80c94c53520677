package longrun.piping;

import java.util.List;
import longrun.plan.choice.PartKind;
import longrun.quantity.Length;

/**
 * What in a section holds the gas back besides its length.
 *
 * @param turns changes of direction inside the section and from the section it follows
 * @param tee how the section leaves a tee
 * @param undirected length of legs whose turns are not known
 * @param traps sediment traps on its end, each a tee through the branch
 * @param shutoffs shutoffs on its end, each counted as a 90 degree elbow
 * @param assumed those of its traps and shutoffs that nobody has entered and the rules will ask for, or that nobody has
 *     looked at
 * @param elbows90 of the section's own list of fittings, valves included
 * @param elbows45 of the section's own list of fittings
 * @param teeBranches of the section's own list of fittings
 */
public record Turns(
        int turns,
        Tee tee,
        Length undirected,
        int traps,
        int shutoffs,
        List<PartKind> assumed,
        int elbows90,
        int elbows45,
        int teeBranches) {

    /** How a section leaves the point where others leave too. */
    public enum Tee {
        /** It leaves alone. */
        NO_TEE,
        /** It goes straight on through the run of the tee. */
        RUN,
        /** It takes the branch of the tee. */
        BRANCH
    }

    /** The same without the parts that nobody has entered or looked at. */
    Turns entered() {
        EndParts end = new EndParts(traps, shutoffs, assumed).entered();
        return new Turns(
                turns, tee, undirected, end.traps(), end.shutoffs(), List.of(), elbows90, elbows45, teeBranches);
    }

    /** Parts of the section's own list, whichever they are. */
    public int listedParts() {
        return elbows90 + elbows45 + teeBranches;
    }
}
