package longrun.drawing.route;

import java.util.List;
import java.util.Optional;
import longrun.piping.Outlet;
import longrun.plan.choice.Direction;
import longrun.plan.choice.Material;
import longrun.plan.choice.PartKind;
import longrun.plan.choice.Setting;

/**
 * One section as it is drawn.
 *
 * @param above the section the gas comes from, also through a regulator; -1 at the start of a pipe
 * @param legs as paced; one leg of unknown length where none are entered
 * @param material what it is made of, if said
 * @param parts of the hookup at its end, in flow order
 * @param end what hangs on its end
 * @param endName the appliance's name
 * @param size as lettered at its leader
 * @param under the line under the size
 * @param endNotes lines under the appliance's name
 * @param mustFix whether something at it must be fixed
 * @param throughWall whether it comes in from outdoors
 */
record Run(
        int index,
        String id,
        int above,
        List<Leg> legs,
        Optional<Setting> setting,
        Optional<Material> material,
        List<PartKind> parts,
        Optional<Outlet> end,
        String endName,
        double endHeight,
        String size,
        String under,
        List<String> endNotes,
        boolean mustFix,
        boolean endMustFix,
        boolean throughWall) {

    /**
     * A straight length.
     *
     * @param way where it goes, if said
     * @param feet its length; NaN where it is not known
     */
    record Leg(Optional<Direction> way, double feet) {

        boolean known() {
            return !Double.isNaN(feet);
        }
    }

    boolean isAt(Outlet.Kind kind) {
        return end.filter(o -> o.kind() == kind).isPresent();
    }
}
