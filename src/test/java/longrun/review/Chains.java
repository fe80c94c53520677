package longrun.review;

import java.util.Locale;
import longrun.Samples;
import longrun.plan.Plan;

/** Long houses for tests and benchmarks. */
public final class Chains {

    private Chains() {}

    /** One chain of sections, 1,000 ft in all, with an appliance of 9,000 Btu/h at its end. */
    public static Plan chain(int sections) {
        StringBuilder plan = head();
        String from = "R";
        for (int i = 0; i < sections; i++) {
            section(plan, i, from, String.format(Locale.ROOT, "%.3f mm", 304_800.0 / sections));
            from = "s" + i;
        }
        return Samples.plan(plan.append("],\"appliances\":[{\"id\":\"a\",\"fedBy\":\"")
                .append(from)
                .append("\",\"input\":\"9 kBtu/h\"}]}")
                .toString());
    }

    /** A tree in which each section feeds two, with an appliance at each end. */
    public static Plan tree(int sections) {
        StringBuilder plan = head();
        for (int i = 0; i < sections; i++) {
            section(plan, i, i == 0 ? "R" : "s" + (i - 1) / 2, "2 ft");
        }
        plan.append("],\"appliances\":[");
        String comma = "";
        for (int i = sections / 2; i < sections; i++) {
            plan.append(comma)
                    .append("{\"id\":\"a")
                    .append(i)
                    .append("\",\"fedBy\":\"s")
                    .append(i)
                    .append("\",\"input\":\"300 Btu/h\"}");
            comma = ",";
        }
        return Samples.plan(plan.append("]}").toString());
    }

    private static StringBuilder head() {
        return new StringBuilder(
                        "{\"format\":\"longrun-plan/1\",\"fittingAllowance\":\"none\",\"regulators\":[{\"id\":\"R\",")
                .append("\"kind\":\"second-stage\",\"fedBy\":\"tank\",\"outlet\":\"11 in w.c.\",")
                .append("\"allowedDrop\":\"0.5 in w.c.\"}],\"sections\":[");
    }

    private static void section(StringBuilder plan, int i, String from, String legs) {
        plan.append(i == 0 ? "" : ",")
                .append("{\"id\":\"s")
                .append(i)
                .append("\",\"from\":\"")
                .append(from)
                .append("\",\"material\":\"steel\",\"legs\":[\"")
                .append(legs)
                .append("\"]}");
    }
}
