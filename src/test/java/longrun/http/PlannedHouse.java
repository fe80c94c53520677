package longrun.http;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * A house as a fitter would describe it, part by part, each part entered whole and right. A mistake is planted
 * afterwards by {@link #set} and {@link #without}.
 */
final class PlannedHouse {

    private static final JsonMapper JSON = new JsonMapper();

    private final ObjectNode plan = JSON.createObjectNode();

    PlannedHouse(String name) {
        plan.put("format", "longrun-plan/1").put("name", name);
        put("/code", "{'profile':'fuel-gas-2018'}");
        put(
                "/site",
                "{'elevation':'900 ft','winterDesignTemp':'20 degF','mainShutoff':{'outdoors':true,'reachable':true}}");
        plan.put("fittingAllowance", "none");
        plan.putArray("regulators");
        plan.putArray("sections");
        plan.putArray("appliances");
    }

    /** An ASME tank of that water capacity, that far from the house, everything else far off. */
    PlannedHouse tank(String gallons, String toBuilding) {
        put(
                "/tank",
                "{'kind':'asme','orientation':'horizontal','placement':'above-ground','refillAt':'30 %',"
                        + "'toPropertyLine':'60 ft','toOpeningBelow':'none','toIntake':'none','toIgnition':'none'}");
        return set("/tank/waterCapacity", gallons).set("/tank/toBuilding", toBuilding);
    }

    PlannedHouse firstStage(String id) {
        return outdoors(id, "first-stage", "tank", "10 psi", "1 psi").last("regulators", "{'minInlet':'15 psi'}");
    }

    PlannedHouse integral(String id) {
        return outdoors(id, "integral-two-stage", "tank", "11 in w.c.", "0.5 in w.c.")
                .last("regulators", "{'minInlet':'15 psi'}");
    }

    PlannedHouse secondStage(String id, String on) {
        return outdoors(id, "second-stage", on, "11 in w.c.", "0.5 in w.c.")
                .last("regulators", "{'minInlet':'5 psi','capacityAtInlet':'5 psi'}");
    }

    PlannedHouse twoPsi(String id, String on) {
        return outdoors(id, "two-psi", on, "2 psi", "1 psi")
                .last("regulators", "{'minInlet':'5 psi','capacityAtInlet':'5 psi'}");
    }

    private PlannedHouse outdoors(String id, String kind, String fedBy, String outlet, String drop) {
        return add(
                        "regulators",
                        "{'capacity':'900000 Btu/h','setting':'outdoors','vent':'outdoors','lockUp':'115"
                                + " %','droopAtCapacity':'0.5 in w.c.','ventToOpening':'5"
                                + " ft','ventToIgnition':'none','ventToIntake':'none','ventToVentTerminal':'8 ft'}")
                .last(
                        "regulators",
                        "{'id':'" + id + "','kind':'" + kind + "','fedBy':'" + fedBy + "','outlet':'" + outlet
                                + "','allowedDrop':'" + drop + "'}");
    }

    /** A line regulator indoors with its valve, tees, union and limiter. */
    PlannedHouse lineRegulator(String id, String on) {
        return add(
                "regulators",
                "{'id':'" + id + "','kind':'line','fedBy':'" + on + "','outlet':'11 in w.c.','allowedDrop':'0.5 in"
                        + " w.c.','capacity':'400000"
                        + " Btu/h','capacityAtInlet':'1 psi','minInlet':'1"
                        + " psi','lossAtLoad':'0.2 psi','lockUp':'115"
                        + " %','droopAtCapacity':'0.5 in"
                        + " w.c.','setting':'indoors','vent':'limiter','shutoffBefore':true,'teeBefore':true,'teeAfter':true,'unionWithin':'6"
                        + " in','access':true}");
    }

    /** Pipe in the house. */
    PlannedHouse pipe(String id, String from, String material, String length) {
        return add(
                "sections",
                "{'id':'" + id + "','from':'" + from + "','material':'" + material + "','setting':'indoors',"
                        + "'fittings':{},'under':'none','passes':[],'legs':['" + length + "']}");
    }

    /** Pipe in the ground from the tank to the wall; of polyethylene it comes up in risers. */
    PlannedHouse yard(String id, String from, String material, String length) {
        pipe(id, from, material, length).last("sections", "{'setting':'underground','depth':'18 in'}");
        return material.startsWith("pe-")
                ? last("sections", "{'ends':['anodeless-riser','anodeless-riser'],'tracerWire':'14 AWG'}")
                : last("sections", "{'coated':true}");
    }

    /** An appliance with valve, trap where its kind needs one, and connector. */
    PlannedHouse burns(String id, String kind, String on, String input, String vent) {
        boolean trap = !java.util.List.of("range", "clothes-dryer", "outdoor-grill", "fireplace")
                .contains(kind);
        return add(
                "appliances",
                "{'id':'" + id + "','kind':'" + kind + "','fedBy':'" + on + "','input':'" + input + "',"
                        + "'vent':'" + vent
                        + "','gas':'propane','minInlet':'8 in w.c.','maxInlet':'14 in w.c.','connection':["
                        + "{'part':'shutoff','distance':'2 ft','sameRoom':true,'accessible':true,'size':'3/4'},"
                        + (trap ? "{'part':'sediment-trap','nipple':'3 in','capPointsDown':true,'gasTurns':true}," : "")
                        + "{'part':'flexible-connector','length':'3"
                        + " ft','throughWall':false,'concealed':false,'capacity':'400000"
                        + " Btu/h','capacityGas':'propane','ratedDrop':'0.5 in w.c.','size':'3/4'}]}");
    }

    /** A text, or JSON with single quotes where it begins like an object or a list, or {@code true}, {@code false}. */
    PlannedHouse set(String pointer, String value) {
        put(pointer, value);
        return this;
    }

    PlannedHouse without(String pointer) {
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

    private PlannedHouse add(String list, String object) {
        ((ArrayNode) plan.get(list)).add(read(object));
        return this;
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

    String text() {
        return plan.toString();
    }

    @Override
    public String toString() {
        return plan.path("name").asText();
    }
}
