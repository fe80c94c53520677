package longrun.drawing.route;

import longrun.plan.choice.Material;
import longrun.plan.choice.Setting;

/** How a pipe is stroked, by where it runs and what it is made of. */
final class PipeStroke {

    private PipeStroke() {}

    /** The further classes of a setting's stroke. */
    static String pen(Setting s) {
        return switch (s) {
            case INDOORS -> "";
            case OUTDOORS -> " out";
            case UNDERGROUND -> " bur";
            case CONCEALED -> " con";
        };
    }

    /** The class of the marks a material's stroke bears; steel has none. */
    static String mark(Material m) {
        return switch (m) {
            case STEEL -> "";
            case COPPER -> "mcu";
            case CSST -> "mcs";
            case PE_PIPE, PE_TUBING -> "mpe";
        };
    }
}
