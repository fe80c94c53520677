package longrun.rules.shape;

/** Which of two findings that the same entry would mend is the one shown: the first of these. */
public enum Precedence {
    MISSING,
    ORDER,
    PLACE,
    SIZE
}
