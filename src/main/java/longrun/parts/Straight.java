package longrun.parts;

/**
 * One straight of threaded pipe between two fittings, as paced: centre to centre, so never shorter than what is cut.
 *
 * @param thousandths its length in thousandths of a foot, the precision lengths are compared at
 * @param where the sections it lies in
 * @param turnsKnown whether its leg has a direction; else it may be made of shorter pieces, which need no more pipe
 */
public record Straight(long thousandths, String where, boolean turnsKnown) {

    public double feet() {
        return thousandths / 1000.0;
    }

    Straight longer(long more, String section) {
        return new Straight(thousandths + more, where.equals(section) ? where : where + "+" + section, turnsKnown);
    }

    Straight cutTo(long length) {
        return new Straight(length, where, turnsKnown);
    }
}
