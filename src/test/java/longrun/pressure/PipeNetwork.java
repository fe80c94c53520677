package longrun.pressure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import longrun.piping.Piping;
import longrun.piping.Stage;
import longrun.quantity.Pressure;
import longrun.sizing.Sizing;

/**
 * One low pressure stage as the input text of a general pipe network engine: flow in gal/min stands for ft3/h of gas,
 * head in ft for in. w.c. Head is lost by Hazen-Williams, h = 4.727 L q^1.852 / (C^1.852 d^4.871) with q in ft3/s and d
 * in ft (the engine's manual, head loss formulas); C of each bore is fitted so that it loses what the code's equation
 * says at one flow, that of 0.5 in. w.c. over 100 ft. Away from it the two part by their exponents, 1.852 and 1/0.541.
 */
final class PipeNetwork {

    /** Propane in the code's tables; Cr of its low pressure equation (2018 IFGC 402.4, Appendix A.4). */
    private static final double BTU_PER_FT3 = 2488;

    private static final double CR = 1.2462;
    private static final double GPM_PER_FT3_PER_S = 448.831;
    private static final double FLOW_POWER = 1.852;
    private static final double BORE_POWER = 4.871;

    private final Piping piping;
    private final SectionFlow[] flow;
    private final Pressure setting;

    /** @param setting of the stage's regulator */
    PipeNetwork(Sizing sizing, SectionFlow[] flow, Pressure setting) {
        this.piping = sizing.piping();
        this.flow = flow;
        this.setting = setting;
    }

    /** The text, and the junctions in the order of the stage's sections, as the engine's page takes them. */
    Map<String, Object> text(Stage stage) {
        StringBuilder junctions = new StringBuilder();
        StringBuilder pipes = new StringBuilder();
        List<String> names = new ArrayList<>();
        for (int s : stage.sections()) {
            double here = load(s)
                    - piping.children(s).stream().mapToDouble(this::load).sum();
            junctions.append(line("J%d 0 %.9f", s, here / BTU_PER_FT3));
            int parent = piping.parent(s);
            pipes.append(line(
                    "P%d %s J%d %.9f %.9f %.9f 0",
                    s,
                    parent < 0 ? "R" : "J" + parent,
                    s,
                    flow[s].lengthFt(),
                    flow[s].boreIn(),
                    fitted(flow[s].boreIn())));
            names.add("J" + s);
        }
        String text = "[JUNCTIONS]\n" + junctions + "[RESERVOIRS]\n" + line("R %.9f", setting.inWc()) + "[PIPES]\n"
                + pipes
                + "[OPTIONS]\nUNITS GPM\nHEADLOSS H-W\nACCURACY 0.00001\nTRIALS 200\n[END]\n";
        return Map.of("text", text, "junctions", names);
    }

    private double load(int section) {
        return piping.load(section).whole().orElseThrow().btuh();
    }

    /** The coefficient with which a bore loses half an inch over 100 ft at the flow at which the code says so. */
    private static double fitted(double boreIn) {
        double ft3PerH = 2313 * Math.pow(boreIn, 2.623) * Math.pow(0.5 / (CR * 100), 0.541);
        double lossOfOne =
                4.727 * 100 * Math.pow(ft3PerH / GPM_PER_FT3_PER_S, FLOW_POWER) / Math.pow(boreIn / 12, BORE_POWER);
        return Math.pow(lossOfOne / 0.5, 1 / FLOW_POWER);
    }

    private static String line(String form, Object... values) {
        return String.format(Locale.ROOT, form, values) + "\n";
    }
}
