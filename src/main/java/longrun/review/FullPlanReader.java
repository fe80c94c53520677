package longrun.review;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.capacity.OwnTable;
import longrun.capacity.OwnTableFaults;
import longrun.plan.Plan;
import longrun.plan.choice.Material;
import longrun.plan.json.PlanError;
import longrun.plan.json.PlanLimits;
import longrun.plan.json.PlanReader;
import longrun.plan.json.Reading;
import longrun.quantity.Pressure;

/** Reads plans as {@link PlanReader} does, and also checks the tubing tables that a plan holds. */
public final class FullPlanReader {

    private FullPlanReader() {}

    /** Reads the plan of a house from its text. */
    public static Reading read(String json) {
        return read(json, PlanLimits.HOUSE);
    }

    /** Reads a plan from its text; a list over its limit is an error. */
    public static Reading read(String json, PlanLimits limits) {
        try {
            return read(PlanReader.tree(json), limits);
        } catch (JsonProcessingException e) {
            return PlanReader.read(json); // which says what is wrong with it
        }
    }

    /** Reads the plan of a house from a parsed document. */
    public static Reading read(JsonNode document) {
        return read(document, PlanLimits.HOUSE);
    }

    private static Reading read(JsonNode document, PlanLimits limits) {
        Reading reading = PlanReader.read(document, limits);
        if (reading.plan().isEmpty()) {
            return reading;
        }
        List<PlanError> errors = new ArrayList<>();
        List<Plan.TubingTable> tables = reading.plan().get().tubingTables();
        for (int i = 0; i < tables.size(); i++) {
            check(tables.get(i), reading.written().pointer("/tubingTables/" + i), errors);
        }
        return errors.isEmpty() ? reading : new Reading(Optional.empty(), errors, reading.unread(), reading.written());
    }

    /** Adds the errors in a tubing table; one without cells yet is no error, since it sizes nothing. */
    private static void check(Plan.TubingTable t, String at, List<PlanError> errors) {
        if (!t.csv().isKnown()) {
            return;
        }
        try {
            OwnTable.ownTable(
                    t.name().findValue().orElse("table"),
                    t.material().findValue().orElse(Material.CSST),
                    t.inlet().findValue().orElse(Pressure.ofInWc(11)),
                    t.drop().findValue().orElse(Pressure.ofInWc(0.5)),
                    t.csv().findValue().orElseThrow());
        } catch (OwnTableFaults e) {
            e.faults().forEach(fault -> errors.add(new PlanError(at + "/csv", fault)));
        }
    }
}
