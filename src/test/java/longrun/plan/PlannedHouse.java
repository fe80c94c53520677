package longrun.plan;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longrun.Samples;
import longrun.capacity.CapacityTables;
import longrun.piping.Piping;
import longrun.sizing.Sizing;

/**
 * A house as a fitter would describe it, part by part. Begun with {@link #named}, its parts are entered whole and right,
 * and a mistake is planted afterwards by {@link #set} and {@link #without}; begun with {@link #empty} or {@link #behind}
 * it holds no more than is said of it. Entries are written as in a plan, with single quotes: {@code 'input':'40 kBtu/h'}.
 */
public final class PlannedHouse {

    private static final JsonMapper JSON = new JsonMapper();

    private final ObjectNode plan = JSON.createObjectNode();

    private PlannedHouse() {
        plan.put("format", "longrun-plan/1");
    }

    /** Nothing but the format. */
    public static PlannedHouse empty() {
        return new PlannedHouse();
    }

    /** Nothing but a regulator R at the tank. */
    public static PlannedHouse behind(String outlet, String drop) {
        return empty().regulator("R", "second-stage", "tank", outlet, drop);
    }

    /** A house by a code, on a site, fittings not counted; what is added to it is entered whole. */
    public static PlannedHouse named(String name) {
        PlannedHouse house = empty();
        house.plan.put("name", name).put("fittingAllowance", "none");
        house.put("/code", "{'profile':'fuel-gas-2018'}");
        house.put(
                "/site",
                "{'elevation':'900 ft','winterDesignTemp':'20 degF','mainShutoff':{'outdoors':true,'reachable':true}}");
        return house;
    }

    /** More entries of the house itself: {@code 'fittingAllowance':'counted'}. */
    public PlannedHouse with(String... entries) {
        plan.setAll(entries(entries));
        return this;
    }

    /** A regulator with no more than its place and pressures, and the entries named. */
    public PlannedHouse regulator(String id, String kind, String fedBy, String outlet, String drop, String... entries) {
        String own = "'id':'" + id + "','kind':'" + kind + "','fedBy':'" + fedBy + "','outlet':'" + outlet
                + "','allowedDrop':'" + drop + "'";
        return add("regulators", own, entries);
    }

    /** A section with no more than its pipe, and the entries named; legs as typed, separated by semicolons. */
    public PlannedHouse section(String id, String from, String material, String legs, String... entries) {
        String own = "'id':'" + id + "','from':'" + from + "','material':'" + material + "','legs':['"
                + legs.replace(";", "','") + "']";
        return add("sections", own, entries);
    }

    /** An appliance with no more than its input, and the entries named. */
    public PlannedHouse appliance(String id, String on, String input, String... entries) {
        return add("appliances", "'id':'" + id + "','fedBy':'" + on + "','input':'" + input + "'", entries);
    }

    /** One more of a list, such as {@code sections}, with the entries named, in their order. */
    public PlannedHouse add(String list, String own, String... entries) {
        for (String each : List.of("regulators", "sections", "appliances")) {
            plan.withArray(each);
        }
        ObjectNode thing = entries(own);
        thing.setAll(entries(entries));
        plan.withArray(list).add(thing);
        return this;
    }

    private static ObjectNode entries(String... words) {
        String all = Stream.of(words).filter(w -> !w.isEmpty()).collect(Collectors.joining(","));
        return (ObjectNode) read("{" + all + "}");
    }

    /** Takes an entry of the last of a list out: {@code sections}, {@code from}. */
    public PlannedHouse lastWithout(String list, String entry) {
        JsonNode all = plan.get(list);
        ((ObjectNode) all.get(all.size() - 1)).remove(entry);
        return this;
    }

    /** An ASME tank of that water capacity, that far from the house, everything else far off. */
    public PlannedHouse tank(String gallons, String toBuilding) {
        put(
                "/tank",
                "{'kind':'asme','orientation':'horizontal','placement':'above-ground','refillAt':'30 %',"
                        + "'toPropertyLine':'60 ft','toOpeningBelow':'none','toIntake':'none','toIgnition':'none'}");
        return set("/tank/waterCapacity", gallons).set("/tank/toBuilding", toBuilding);
    }

    public PlannedHouse firstStage(String id) {
        return outdoors(id, "first-stage", "tank", "10 psi", "1 psi").last("regulators", "{'minInlet':'15 psi'}");
    }

    public PlannedHouse integral(String id) {
        return outdoors(id, "integral-two-stage", "tank", "11 in w.c.", "0.5 in w.c.")
                .last("regulators", "{'minInlet':'15 psi'}");
    }

    public PlannedHouse secondStage(String id, String on) {
        return outdoors(id, "second-stage", on, "11 in w.c.", "0.5 in w.c.")
                .last("regulators", "{'minInlet':'5 psi','capacityAtInlet':'5 psi'}");
    }

    public PlannedHouse twoPsi(String id, String on) {
        return outdoors(id, "two-psi", on, "2 psi", "1 psi")
                .last("regulators", "{'minInlet':'5 psi','capacityAtInlet':'5 psi'}");
    }

    private PlannedHouse outdoors(String id, String kind, String fedBy, String outlet, String drop) {
        return add(
                        "regulators",
                        "'capacity':'900000 Btu/h','setting':'outdoors','vent':'outdoors','lockUp':'115"
                                + " %','droopAtCapacity':'0.5 in w.c.','ventToOpening':'5"
                                + " ft','ventToIgnition':'none','ventToIntake':'none','ventToVentTerminal':'8 ft'")
                .last(
                        "regulators",
                        "{'id':'" + id + "','kind':'" + kind + "','fedBy':'" + fedBy + "','outlet':'" + outlet
                                + "','allowedDrop':'" + drop + "'}");
    }

    /** A line regulator indoors with its valve, tees, union and limiter. */
    public PlannedHouse lineRegulator(String id, String on) {
        return add(
                "regulators",
                "'id':'" + id + "','kind':'line','fedBy':'" + on + "','outlet':'11 in w.c.','allowedDrop':'0.5 in"
                        + " w.c.','capacity':'400000"
                        + " Btu/h','capacityAtInlet':'1 psi','minInlet':'1"
                        + " psi','lossAtLoad':'0.2 psi','lockUp':'115"
                        + " %','droopAtCapacity':'0.5 in"
                        + " w.c.','setting':'indoors','vent':'limiter','shutoffBefore':true,'teeBefore':true,'teeAfter':true,'unionWithin':'6"
                        + " in','access':true");
    }

    /** Pipe in the house. */
    public PlannedHouse pipe(String id, String from, String material, String length) {
        return add(
                "sections",
                "'id':'" + id + "','from':'" + from + "','material':'" + material + "','setting':'indoors',"
                        + "'fittings':{},'under':'none','passes':[],'legs':['" + length + "']");
    }

    /** Pipe in the ground from the tank to the wall; of polyethylene it comes up in risers. */
    public PlannedHouse yard(String id, String from, String material, String length) {
        pipe(id, from, material, length).last("sections", "{'setting':'underground','depth':'18 in'}");
        return material.startsWith("pe-")
                ? last("sections", "{'ends':['anodeless-riser','anodeless-riser'],'tracerWire':'14 AWG'}")
                : last("sections", "{'coated':true}");
    }

    /** An appliance with valve, trap where its kind needs one, and connector. */
    public PlannedHouse burns(String id, String kind, String on, String input, String vent) {
        boolean trap =
                !List.of("range", "clothes-dryer", "outdoor-grill", "fireplace").contains(kind);
        return add(
                "appliances",
                "'id':'" + id + "','kind':'" + kind + "','fedBy':'" + on + "','input':'" + input + "',"
                        + "'vent':'" + vent
                        + "','gas':'propane','minInlet':'8 in w.c.','maxInlet':'14 in w.c.','connection':["
                        + "{'part':'shutoff','distance':'2 ft','sameRoom':true,'accessible':true,'size':'3/4'},"
                        + (trap ? "{'part':'sediment-trap','nipple':'3 in','capPointsDown':true,'gasTurns':true}," : "")
                        + "{'part':'flexible-connector','length':'3"
                        + " ft','throughWall':false,'concealed':false,'capacity':'400000"
                        + " Btu/h','capacityGas':'propane','ratedDrop':'0.5 in w.c.','size':'3/4'}]");
    }

    /** A text, or JSON with single quotes where it begins like an object or a list, or {@code true}, {@code false}. */
    public PlannedHouse set(String pointer, String value) {
        put(pointer, value);
        return this;
    }

    public PlannedHouse without(String pointer) {
        JsonPointer at = JsonPointer.compile(pointer);
        JsonNode holder = plan.at(at.head());
        String last = at.last().getMatchingProperty();
        JsonNode gone = holder instanceof ArrayNode array
                ? array.remove(Integer.parseInt(last))
                : ((ObjectNode) holder).remove(last);
        if (gone == null) {
            throw new IllegalArgumentException("nothing at " + pointer);
        }
        return this;
    }

    private void put(String pointer, String value) {
        JsonPointer at = JsonPointer.compile(pointer);
        JsonNode holder = plan.at(at.head());
        String last = at.last().getMatchingProperty();
        if (holder instanceof ArrayNode array) {
            array.set(Integer.parseInt(last), read(value));
        } else {
            ((ObjectNode) holder).set(last, read(value));
        }
    }

    private PlannedHouse last(String list, String entries) {
        JsonNode all = plan.get(list);
        ((ObjectNode) all.get(all.size() - 1)).setAll((ObjectNode) read(entries));
        return this;
    }

    private static JsonNode read(String value) {
        boolean json = value.matches("[0-9]+")
                || value.startsWith("{")
                || value.startsWith("[")
                || value.equals("true")
                || value.equals("false");
        try {
            return json
                    ? JSON.readTree(value.replace('\'', '"'))
                    : JSON.getNodeFactory().textNode(value);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(value, e);
        }
    }

    /** The plan as JSON. */
    public String text() {
        return plan.toString();
    }

    /** The plan as it is read; fails with its errors where it can't be. */
    public Plan plan() {
        return Samples.plan(text());
    }

    /** Every section sized. */
    public Sizing size() {
        return Sizing.of(Piping.of(plan()), CapacityTables.standard());
    }

    /** The size of a section, by its index. */
    public String size(int section) {
        return size().section(section).size().orElse("none");
    }

    @Override
    public String toString() {
        return plan.path("name").asText();
    }
}
