package longrun.plan.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import longrun.PlanCount;
import longrun.plan.MutatedPlans;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each error's pointer (RFC 6901) names the place as the document writes it, however it writes its lists. */
class MutatedPlansTest {

    private static final long SEED = 20_261_127;
    private static final int PLANS = PlanCount.HOSTILE.plans();

    /** The place is in the document, and once what stands there is gone, so is the error. */
    @Test
    void whatIsWrongIsMendedWhereItsPointerSays() {
        MutatedPlans plans = new MutatedPlans(SEED);
        int errors = 0;
        for (int k = 0; k < PLANS; k++) {
            ObjectNode document = plans.next();
            for (PlanError e : PlanReader.read(document).errors()) {
                if (e.pointer().isEmpty() || e.pointer().equals("/format")) {
                    continue;
                }
                errors++;
                String as = "seed " + SEED + ", plan " + k + ": " + e;
                assertThat(document.at(e.pointer()).isMissingNode()).as(as).isFalse();
                ObjectNode mended = document.deepCopy();
                clear(mended, e.pointer());
                assertThat(PlanReader.read(mended).errors()).as(as).doesNotContain(e);
            }
        }
        assertThat(errors).isGreaterThan(PLANS / 2);
    }

    /** A second reading, which knows the document alone, finds the same names of nothing at the same places. */
    @Test
    void aSecondReadingFindsTheSameNamesOfNothing() {
        MutatedPlans plans = new MutatedPlans(SEED + 1);
        int found = 0;
        for (int k = 0; k < PLANS; k++) {
            ObjectNode document = plans.next();
            TreeSet<String> first = new TreeSet<>();
            for (PlanError e : PlanReader.read(document).errors()) {
                if (e.message().contains("\" is not a name of ")) {
                    first.add(e.pointer());
                }
            }
            assertThat(first)
                    .as("seed %d, plan %d: %s", SEED + 1, k, document)
                    .isEqualTo(new NamesOfNothing(document).pointers());
            found += first.size();
        }
        assertThat(found).isGreaterThan(PLANS / 4);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "/use/heating/appliance;\"use\":{\"heating\":{\"appliance\":\"furnace\"}}",
                "/use/heating/0/appliance;\"use\":{\"heating\":[{\"appliance\":\"furnace\"}]}",
                "/use/others/appliance;\"use\":{\"others\":{\"appliance\":\"range\"}}",
                "/use/others/hoursPerDay;\"use\":{\"others\":{\"hoursPerDay\":25}}",
                "/use/occasions/firing;\"use\":{\"occasions\":{\"firing\":\"heater\"}}",
                "/use/occasions/0/firing;\"use\":{\"occasions\":[{\"firing\":\"heater\"}]}",
                "/use/occasions/firing/0;\"use\":{\"occasions\":{\"firing\":[\"heater\"]}}",
                "/availableSizes/steel;\"availableSizes\":{\"steel\":\"7/16\"}",
                "/availableSizes/steel/0;\"availableSizes\":{\"steel\":[\"7/16\"]}",
                "/sections/from;\"sections\":{\"id\":\"A\",\"from\":\"Z\"}",
                "/sections/installedSize;\"sections\":{\"id\":\"A\",\"material\":\"steel\",\"installedSize\":\"7/16\"}",
                "/sections/legs/1;\"sections\":{\"id\":\"A\",\"legs\":[\"up 2 ft\",\"down 1 ft\"]}",
                "/sections/1/legs;\"sections\":[{\"id\":\"A\",\"legs\":\"up 2"
                        + " ft\"},{\"id\":\"B\",\"from\":\"A\",\"legs\":\"down 1 ft\"}]",
                "/appliances/connection/size;\"appliances\":{\"connection\":{\"size\":\"wide\"}}",
                "/tank/count;\"tank\":{\"count\":1001}",
                "/tank/0/count;\"tank\":[{\"count\":1001}]",
                "/tanks/count;\"tanks\":{\"count\":1001}",
                "/tanks/0/count;\"tanks\":[{\"count\":1001}]"
            })
    void oneThingWithoutTheListThatIsAllowedHasNoNumberInItsPointer(String pointer, String entry) {
        assertThat(PlanReader.read("{\"format\":\"longrun-plan/1\"," + entry + "}")
                        .errors())
                .extracting(PlanError::pointer)
                .containsExactly(pointer);
    }

    private static void clear(ObjectNode document, String pointer) {
        JsonNode parent = document.at(pointer.substring(0, pointer.lastIndexOf('/')));
        String last = pointer.substring(pointer.lastIndexOf('/') + 1);
        if (parent instanceof ArrayNode list) {
            int index = Integer.parseInt(last);
            list.set(index, list.get(index).isNull() ? BooleanNode.TRUE : NullNode.instance); // other items stay
        } else {
            ((ObjectNode) parent).remove(last.replace("~1", "/").replace("~0", "~"));
        }
    }

    /** References of a document, read by hand: no class of the reader is used. */
    private static final class NamesOfNothing {

        private static final List<String> RESERVED = List.of("tank", "site", "plan", "hot-water");

        private final JsonNode document;
        private final TreeSet<String> out = new TreeSet<>();

        NamesOfNothing(JsonNode document) {
            this.document = document;
        }

        TreeSet<String> pointers() {
            TreeSet<String> sections = ids("sections");
            TreeSet<String> regulators = ids("regulators");
            TreeSet<String> appliances = ids("appliances");
            TreeSet<String> rooms = ids("rooms");
            TreeSet<String> tables = new TreeSet<>();
            each("/tubingTables").forEach(p -> text(p + "/name").ifPresent(tables::add));
            TreeSet<String> feeders = union(sections, regulators);
            TreeSet<String> feedersOfRegulators = union(sections, List.of("tank"));
            TreeSet<String> anything = union(feeders, RESERVED);
            anything.addAll(appliances);
            anything.addAll(rooms);
            names("/sections", "/from", feeders);
            names("/sections", "/table", tables);
            names("/regulators", "/fedBy", feedersOfRegulators);
            names("/appliances", "/fedBy", sections);
            names("/appliances", "/room", rooms);
            names("/readings", "/at", anything);
            names("/answers", "/at", anything);
            if (document.at("/use").isObject()) {
                names("/use/heating", "/appliance", appliances);
                names("/use/others", "/appliance", appliances);
                for (String occasion : each("/use/occasions")) {
                    JsonNode firing = document.at(occasion + "/firing");
                    if (firing.isArray()) {
                        for (int i = 0; i < firing.size(); i++) {
                            String at = occasion + "/firing/" + i;
                            written(at).filter(t -> !appliances.contains(t)).ifPresent(t -> out.add(at));
                        }
                    } else {
                        name(occasion + "/firing", appliances);
                    }
                }
                name("/use/hotWater/onDemand/appliance", appliances);
            }
            return out;
        }

        private static TreeSet<String> union(TreeSet<String> some, Iterable<String> more) {
            TreeSet<String> all = new TreeSet<>(some);
            more.forEach(all::add);
            return all;
        }

        private void names(String list, String entry, TreeSet<String> known) {
            each(list).forEach(p -> name(p + entry, known));
        }

        private void name(String at, TreeSet<String> known) {
            text(at).filter(t -> !known.contains(t)).ifPresent(t -> out.add(at));
        }

        /** The objects of a list, or the one that stands without it. */
        private List<String> each(String list) {
            JsonNode node = document.at(list);
            if (node.isObject()) {
                return List.of(list);
            }
            List<String> all = new java.util.ArrayList<>();
            for (int i = 0; node.isArray() && i < node.size(); i++) {
                if (node.get(i).isObject()) {
                    all.add(list + "/" + i);
                }
            }
            return all;
        }

        private TreeSet<String> ids(String list) {
            TreeSet<String> all = new TreeSet<>();
            for (String at : each("/" + list)) {
                JsonNode id = document.at(at + "/id");
                if (id.isMissingNode() || id.isNull()) {
                    all.add(at.substring(1).replace('/', '-'));
                } else {
                    all.add(id.isTextual() && !id.textValue().isBlank() ? id.textValue() : "");
                }
            }
            return all;
        }

        private Optional<String> text(String at) {
            return written(at).filter(t -> !t.strip().equalsIgnoreCase("none"));
        }

        private Optional<String> written(String at) {
            JsonNode node = document.at(at);
            return node.isTextual() || node.isNumber() ? Optional.of(node.asText()) : Optional.empty();
        }
    }
}
