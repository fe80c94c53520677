package longrun.rules.shape;

import java.util.List;

/** One rule of the trade: stateless, the same answer for the same house. */
public interface Rule {

    /** The public name, which other programs read. */
    String name();

    /** What it is about, when another finding would be mended by the same entry. */
    default Precedence precedence() {
        return Precedence.PLACE;
    }

    /** What it says at every place it looks at, in the order of the plan. Never throws for a plan that can be read. */
    List<Verdict> judge(House house);
}
