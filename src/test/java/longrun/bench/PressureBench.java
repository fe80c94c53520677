package longrun.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import longrun.Samples;
import longrun.capacity.CapacityTables;
import longrun.piping.Piping;
import longrun.pressure.Headroom;
import longrun.pressure.Pressures;
import longrun.sizing.Sizing;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long it takes to prove the pressure at every appliance, and all headroom, of a plan; a comb is one trunk with an
 * appliance at every section, the deepest shape there is.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class PressureBench {

    @Param({"100", "1000", "10000", "100000"})
    public int sections;

    @Param({"comb", "bush"})
    public String shape;

    private Sizing sizing;

    @Setup
    public void build() {
        sizing = Sizing.of(Piping.of(Samples.plan(house(sections, shape))), CapacityTables.standard());
    }

    /** Half the sections lead on, the other half each end at an appliance. */
    static String house(int sections, String shape) {
        StringBuilder pipe = new StringBuilder();
        StringBuilder fired = new StringBuilder();
        for (int i = 0; i < sections / 2; i++) {
            int before = shape.equals("comb") ? i - 1 : (i - 1) / 2;
            String comma = i == 0 ? "" : ",";
            pipe.append(comma)
                    .append(section("T" + i, i == 0 ? "R" : "T" + before))
                    .append(',')
                    .append(section("B" + i, "T" + i));
            fired.append(comma)
                    .append("{\"id\":\"A")
                    .append(i)
                    .append("\",\"kind\":\"other\",\"input\":\"10 Btu/h\",\"fedBy\":\"B")
                    .append(i)
                    .append("\",\"minInlet\":\"8 in w.c.\",\"maxInlet\":\"14 in w.c.\"}");
        }
        return "{\"format\":\"longrun-plan/1\",\"fittingAllowance\":\"none\",\"regulators\":[{\"id\":\"R\",\"kind\":"
                + "\"second-stage\",\"fedBy\":\"tank\",\"outlet\":\"11 in w.c.\",\"allowedDrop\":\"0.5 in w.c.\"}],"
                + "\"sections\":[" + pipe + "],\"appliances\":[" + fired + "]}";
    }

    private static String section(String id, String from) {
        return "{\"id\":\"" + id + "\",\"from\":\"" + from + "\",\"material\":\"steel\",\"legs\":[\"0.01 ft\"]}";
    }

    @Benchmark
    public Object pressures() {
        return Pressures.of(sizing).outlets();
    }

    @Benchmark
    public List<Object> headroom() {
        Headroom headroom = Headroom.of(sizing);
        List<Object> out = new ArrayList<>();
        for (int a = 0; a < sizing.piping().plan().appliances().size(); a++) {
            out.add(headroom.atAppliance(a));
        }
        out.add(headroom.ofStage(0));
        out.add(String.format(Locale.ROOT, "%s", headroom.lengthOfStage(0)));
        return out;
    }
}
