package longrun.bench;

import java.util.concurrent.TimeUnit;
import longrun.capacity.CapacityTable;
import longrun.capacity.CapacityTables;
import longrun.piping.Piping;
import longrun.plan.Plan;
import longrun.plan.choice.Material;
import longrun.quantity.Length;
import longrun.quantity.Pressure;
import longrun.review.Chains;
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
 * A tree of sections sized, against a bare loop over arrays that does the same look-ups: loads summed from the ends, one
 * row, the first capacity that carries each load.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SizingBench {

    @Param({"100", "1000", "10000", "100000"})
    public int sections;

    private Plan plan;
    private CapacityTables tables;
    private int[] parent;
    private double[] input;
    private double[] row;

    @Setup
    public void prepare() {
        plan = Chains.tree(sections);
        tables = CapacityTables.standard();
        parent = new int[sections];
        input = new double[sections];
        for (int i = 0; i < sections; i++) {
            parent[i] = i == 0 ? -1 : (i - 1) / 2;
            input[i] = i >= sections / 2 ? 300 : 0;
        }
        CapacityTable table = tables.published(Material.STEEL, Pressure.ofInWc(11), Pressure.ofInWc(0.5))
                .orElseThrow();
        int at = table.findRow(Length.ofFeet(2 * (Math.floor(Math.log(sections) / Math.log(2)) + 1)))
                .orElseThrow();
        row = new double[table.sizes().size()];
        for (int c = 0; c < row.length; c++) {
            row[c] = table.capacity(at, c).orElseThrow().btuh();
        }
    }

    @Benchmark
    public Sizing program() {
        return Sizing.of(Piping.of(plan), tables);
    }

    @Benchmark
    public int[] bareLoop() {
        double[] load = input.clone();
        for (int i = sections - 1; i > 0; i--) {
            load[parent[i]] += load[i];
        }
        int[] size = new int[sections];
        for (int i = 0; i < sections; i++) {
            int c = 0;
            while (c < row.length && row[c] < load[i]) {
                c++;
            }
            size[i] = c;
        }
        return size;
    }
}
