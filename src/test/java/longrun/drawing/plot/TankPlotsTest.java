package longrun.drawing.plot;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import longrun.Samples;
import longrun.drawing.tank.TankYard;
import longrun.fuel.FuelYear;
import longrun.plan.Plan;
import longrun.plan.json.PlanReader;
import longrun.tank.TankReport;
import longrun.tank.TankStudy;
import org.junit.jupiter.api.Test;

/** The plots of vapour and of the level, and the drawing of what is measured about a tank. */
class TankPlotsTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    static String vapour(Plan plan) {
        return VapourPlot.of(TankStudy.of(plan), TankStudy.design(plan), "design temperature")
                .svg();
    }

    static String level(Plan plan) {
        TankReport tank = TankStudy.of(plan);
        return LevelPlot.of(plan, tank, FuelYear.of(plan, tank)).svg();
    }

    static String demo() {
        return Samples.text("data/demo/orchard-house.json");
    }

    @Test
    void vapourIsDrawnAgainstTheNeed() {
        String svg = vapour(Samples.plan(demo()));
        Golden.same("vapour.svg", svg);
        assertThat(svg).contains(">a short time<", ">keeps 20 psig<", ">need<", "433,000", "219,000", "8 \u00b0F");
    }

    @Test
    void theLevelShowsDeliveriesAndTheDayToCall() {
        String svg = level(Samples.plan(demo()));
        Golden.same("level.svg", svg);
        assertThat(svg).contains("refill, 30 %", "call by ", "gauge, 1 Oct", " gal<");
    }

    @Test
    void weeksWithoutTruckAreDrawnAndTheLevelAfterThemNamed() {
        String json = demo().replace(
                        "\"leadDays\": 7", "\"leadDays\": 7, \"unreachable\": [{\"from\":\"01-04\",\"to\":\"01-17\"}]");
        String svg = level(Samples.plan(json));
        Golden.same("level-no-truck.svg", svg);
        assertThat(svg).contains("no truck, 4 Jan to 17 Jan");
    }

    @Test
    void theYardNamesWhatNobodyHasMeasured() {
        String json = Samples.text("sample-plan.json").replace("\"toIntake\": \"15 ft\",", "");
        String svg = TankYard.svg(Samples.plan(json).allTanks().get(0));
        Golden.same("yard.svg", svg);
        assertThat(svg)
                .contains("to the building 14 ft", "to an intake not known", "to an opening below there is none");
    }

    @Test
    void withoutATankNothingIsDrawnAndTheLackIsNamed() {
        Plan plan = Samples.plan("{\"format\":\"longrun-plan/1\"}");
        Golden.same("vapour-unknown.svg", vapour(plan));
        Golden.same("level-unknown.svg", level(plan));
        assertThat(vapour(plan)).contains("Missing: the tank").doesNotContain(">a short time<");
        assertThat(level(plan)).contains("not known yet", "not read").doesNotContain("refill, ");
    }

    /** At 5,000 ft propane boils at -51 degF, which is off the scale. */
    @Test
    void gasStopsWhereTheHeightOfTheHousePutsIt() {
        assertThat(vapour(Samples.plan(demo()))).contains("\u221246 \u00b0F: gas stops");
        assertThat(vapour(Samples.plan(demo().replace("1450 ft", "5000 ft")))).doesNotContain("gas stops");
        assertThat(vapour(Samples.plan(demo().replace("\"elevation\": \"1450 ft\", ", ""))))
                .contains("\u221244 \u00b0F: gas stops");
    }

    @Test
    void aNeedThatIsNotKnownIsNotDrawn() {
        String json = Samples.text("sample-plan.json").replace("\"input\": \"65000 Btu/h\", ", "");
        assertThat(vapour(Samples.plan(json))).contains("the need is not known").doesNotContain(">need<");
    }

    @Test
    void theSuppliersFigureStandsInPlaceOfTheDoubt() {
        String json = Samples.text("sample-plan.json")
                .replace("\"refillAt\": \"30 %\"", "\"refillAt\": \"30 %\", \"vapourCapacity\": \"300000 Btu/h\"");
        assertThat(vapour(Samples.plan(json))).contains("the supplier\u2019s").doesNotContain(">keeps 20 psig<");
    }

    @Test
    void aPictureIsTheSameInEveryCountry() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            String there = vapour(Samples.sample()) + level(Samples.sample());
            Locale.setDefault(Locale.GERMANY);
            assertThat(vapour(Samples.sample()) + level(Samples.sample())).isEqualTo(there);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void everyPlanCanBeDrawnWhateverItLacks() throws JsonProcessingException {
        long seed = 20260112L;
        Random random = new Random(seed);
        String sample = Samples.text("sample-plan.json");
        int drawn = 0;
        for (int round = 0; round < 120; round++) {
            ObjectNode draft = (ObjectNode) JSON.readTree(sample);
            int cuts = 1 + random.nextInt(8);
            for (int i = 0; i < cuts; i++) {
                spoil(draft, random);
            }
            var reading = PlanReader.read(draft);
            if (reading.plan().isEmpty()) {
                continue;
            }
            drawn++;
            try {
                Golden.parses(vapour(reading.plan().get()));
                Golden.parses(level(reading.plan().get()));
                reading.plan().get().allTanks().forEach(t -> Golden.parses(TankYard.svg(t)));
            } catch (RuntimeException e) {
                throw new AssertionError("seed " + seed + " round " + round + ": " + draft, e);
            }
        }
        assertThat(drawn).as("seed " + seed).isGreaterThan(40);
    }

    /** Takes an entry of tank, site or use away, or makes it absurdly small or large. */
    private static void spoil(ObjectNode draft, Random random) {
        List<String> parts = List.of("/tank", "/site", "/use", "/use/hotWater", "/use/heating", "/appliances/0");
        JsonNode part = draft.at(parts.get(random.nextInt(parts.size())));
        if (part instanceof ArrayNode || !(part instanceof ObjectNode object) || object.isEmpty()) {
            return;
        }
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        String name = names.get(random.nextInt(names.size()));
        String text = object.path(name).asText();
        switch (random.nextInt(3)) {
            case 0 -> object.remove(name);
            case 1 -> object.set(name, TextNode.valueOf(text.replaceFirst("[0-9]+", "0")));
            default -> object.set(name, TextNode.valueOf(text.replaceFirst("[0-9]+", "99")));
        }
    }
}
