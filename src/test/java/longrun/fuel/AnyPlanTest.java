package longrun.fuel;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import longrun.PlanCount;
import longrun.Samples;
import longrun.hotwater.Altitude;
import longrun.origin.Figure;
import longrun.plan.Plan;
import longrun.plan.json.PlanReader;
import longrun.tank.Demand;
import longrun.tank.Houses;
import longrun.tank.TankFindings;
import longrun.tank.TankReport;
import longrun.tank.TankStudy;
import org.junit.jupiter.api.Test;

/** Whatever is entered or left out: nothing throws, and what is missing never turns a figure to nothing. */
class AnyPlanTest {

    private record Studied(TankReport tank, FuelReport fuel) {}

    private static Studied study(Plan plan) {
        TankReport tank = TankStudy.of(plan);
        FuelReport fuel = FuelYear.of(plan, tank);
        TankFindings.of(plan, tank).forEach(f -> assertThat(f.field()).startsWith("/"));
        Altitude.findings(plan);
        tank.origins();
        fuel.origins();
        for (Figure f : figures(tank, fuel)) {
            if (f.isKnown()) {
                assertThat(f.number()).as(f.name()).isFinite();
            }
        }
        return new Studied(tank, fuel);
    }

    private static List<Figure> figures(TankReport t, FuelReport f) {
        List<Figure> out = new ArrayList<>(List.of(
                t.usableGal(),
                t.capacityAtDesignBtuh(),
                t.plannedBtuh(),
                t.nowGal(),
                f.annualGal(),
                f.cost(),
                f.co2Lb(),
                f.daysPerFill().coldestMonth(),
                f.daysPerFill().mean(),
                f.deliveriesPerYear()));
        t.demands().forEach((Demand d) -> out.add(d.btuh()));
        return out;
    }

    /** Pointers of every object field of a document. */
    private static List<String> fields(JsonNode node, String at) {
        List<String> out = new ArrayList<>();
        if (node instanceof ObjectNode object) {
            object.fieldNames().forEachRemaining(name -> {
                out.add(at + "/" + name);
                out.addAll(fields(object.get(name), at + "/" + name));
            });
        } else if (node instanceof ArrayNode array) {
            for (int i = 0; i < array.size(); i++) {
                out.addAll(fields(array.get(i), at + "/" + i));
            }
        }
        return out;
    }

    @Test
    void eachEntryLeftOutThrowsNothingAndMakesNoFigureZero() throws Exception {
        for (String text : List.of(Houses.ORCHARD, Samples.text("sample-plan.json"))) {
            Studied whole = study(Samples.plan(text));
            JsonNode tree = PlanReader.tree(text);
            for (String pointer : fields(tree, "")) {
                JsonNode copy = tree.deepCopy();
                int cut = pointer.lastIndexOf('/');
                JsonNode parent = copy.at(pointer.substring(0, cut));
                ((ObjectNode) parent).remove(pointer.substring(cut + 1));
                PlanReader.read(copy).plan().ifPresent(plan -> {
                    Studied less = study(plan);
                    List<Figure> before = figures(whole.tank(), whole.fuel());
                    List<Figure> after = figures(less.tank(), less.fuel());
                    for (int i = 0; i < Math.min(before.size(), after.size()); i++) {
                        OptionalDouble now = after.get(i).value();
                        if (now.isPresent()
                                && before.get(i).isKnown()
                                && before.get(i).number() > 0) {
                            assertThat(now.getAsDouble())
                                    .as(pointer + " " + before.get(i).name())
                                    .isPositive();
                        }
                    }
                });
            }
        }
    }

    @Test
    void absurdButReadableEntriesThrowNothing() throws Exception {
        long seed = 8;
        System.out.println("seed " + seed);
        Random random = new Random(seed);
        String[] values = {
            "0 %",
            "1,000 %",
            "100 %",
            "0 gal",
            "1,000,000 gal",
            "0 Btu/h",
            "1,000,000,000 Btu/h",
            "-100 degF",
            "300 degF",
            "68 degF",
            "0 lb",
            "1 in",
            "100,000 ft",
            "0 psi",
            "300 psi",
            "1 Btu/gal",
            "none"
        };
        int read = 0;
        int plans = PlanCount.LADDER.plans();
        String full = Houses.ORCHARD.replace(
                "\"refillAt\": \"30 %\"",
                "\"refillAt\": \"30 %\", \"diameter\": \"37 in\", \"length\": \"118 in\", \"leastTankPressure\": \"10"
                        + " psi\", \"axisDepth\": \"3 ft\", \"count\": 1");
        JsonNode tree = PlanReader.tree(full);
        List<String> fields = fields(tree, "");
        for (int i = 0; i < plans; i++) {
            JsonNode copy = tree.deepCopy();
            for (int k = 0; k <= random.nextInt(3); k++) {
                String pointer = fields.get(random.nextInt(fields.size()));
                int cut = pointer.lastIndexOf('/');
                String unit = copy.at(pointer).asText().replaceFirst("^[0-9.,]+ ?", "");
                List<String> fitting = Arrays.stream(values)
                        .filter(v -> v.endsWith(" " + unit))
                        .toList();
                if (copy.at(pointer.substring(0, cut)) instanceof ObjectNode parent && !fitting.isEmpty()) {
                    parent.put(pointer.substring(cut + 1), fitting.get(random.nextInt(fitting.size())));
                }
            }
            var plan = PlanReader.read(copy).plan();
            if (plan.isPresent()) {
                read++;
                study(plan.get());
            }
        }
        assertThat(read).isGreaterThan(plans / 3);
    }
}
