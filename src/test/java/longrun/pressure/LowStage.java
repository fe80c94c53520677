package longrun.pressure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import longrun.Samples;
import longrun.capacity.CapacityTables;
import longrun.piping.Piping;
import longrun.piping.Stage;
import longrun.quantity.Pressure;
import longrun.sizing.Sizing;

/**
 * A low pressure stage of a random house, all of pipe or tube with a bore, and gas left everywhere.
 *
 * @param chain the program's pressures, of which those of {@code stage} are worked out
 * @param at to tell it by
 */
record LowStage(Sizing sizing, StageChain chain, Stage stage, Pressure setting, String at) {

    /** Above it gas thins on its way, which an engine for water knows nothing of. */
    private static final Pressure HIGHEST = Pressure.ofInWc(14);

    static List<LowStage> of(long seed) {
        Sizing sizing =
                Sizing.of(Piping.of(Samples.plan(new RandomHouses(seed, true).json)), CapacityTables.standard());
        StageChain chain = new StageChain(sizing);
        List<LowStage> out = new ArrayList<>();
        for (Stage stage : sizing.piping().stages()) {
            LowStage low = new LowStage(
                    sizing,
                    chain,
                    stage,
                    stage.regulator().outlet().findValue().orElseThrow(),
                    "seed " + seed + " " + stage.id());
            if (low.setting().compareTo(HIGHEST) < 0 && low.isOfBoresWithGasLeft()) {
                out.add(low);
            }
        }
        return out;
    }

    private boolean isOfBoresWithGasLeft() {
        work();
        return stage.sections().stream().allMatch(s -> chain.flow[s].hasBore() && chain.endInWc[s] > 0);
    }

    void work() {
        chain.run(stage, setting, 0);
    }

    /** What is lost from the setting to the end of each section, in. w.c. */
    List<Double> lostInWc() {
        return stage.sections().stream()
                .map(s -> setting.inWc() - chain.endInWc[s])
                .toList();
    }

    Map<String, Object> network() {
        return new PipeNetwork(sizing, chain.flow, setting).text(stage);
    }
}
