package longrun.rules.shape;

/**
 * Where a rule looks.
 *
 * @param at the id a finding stands at, or tank, site, plan
 * @param pointer JSON pointer of the thing looked at
 * @param label how a fitter would call it in a sentence, such as "the range"
 */
public record Place(String at, String pointer, String label) {

    /** A place inside this one, told by the same id and name. */
    public Place inside(String path) {
        return new Place(at, pointer + "/" + path, label);
    }
}
