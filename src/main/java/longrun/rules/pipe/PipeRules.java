package longrun.rules.pipe;

import java.util.List;
import java.util.stream.Stream;
import longrun.rules.shape.AskedOnce;
import longrun.rules.shape.Rule;

/** The rules on the pipe itself, in the order they are told. */
public final class PipeRules {

    private PipeRules() {}

    public static List<Rule> rules() {
        return Stream.of(
                        List.<Rule>of(new PlasticPipe(), AskedOnce.ofSections(new PlasticRiser())),
                        CopperTube.rules(),
                        Burial.rules(),
                        List.<Rule>of(
                                AskedOnce.ofSections(new TracerWire()),
                                AskedOnce.ofSections(new UnderBuilding()),
                                AskedOnce.ofSections(new WallPassage())),
                        Concealed.rules(),
                        List.<Rule>of(Support.rule(), new CsstBonding(), new UncappedOutlet()))
                .flatMap(List::stream)
                .toList();
    }
}
