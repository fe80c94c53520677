package longrun.tank;

import longrun.Samples;
import longrun.plan.Plan;

/** Invented houses the tests of tank and fuel share. */
public final class Houses {

    private Houses() {}

    /** An orchard house: 500 gal lying above ground, furnace, on-demand heater, range; 68 degF indoors. */
    public static final String ORCHARD = """
            { "format": "longrun-plan/1", "name": "Orchard house",
              "site": { "elevation": "1450 ft", "winterDesignTemp": "8 degF", "people": 4,
                "monthlyMeanTemp": ["29 degF", "32 degF", "40 degF", "50 degF", "59 degF", "68 degF", "72 degF", "70 degF", "63 degF", "52 degF", "42 degF", "32 degF"],
                "coldWater": { "source": "well", "temp": "51 degF" }, "groundTemp": "48 degF", "leadDays": 7,
                "unreachable": [ { "from": "01-04", "to": "01-17" } ] },
              "appliances": [
                { "id": "furnace", "kind": "furnace", "input": "60000 Btu/h" },
                { "id": "heater", "kind": "on-demand-water-heater", "input": "199000 Btu/h" },
                { "id": "range", "kind": "range", "input": "65000 Btu/h" } ],
              "tank": { "kind": "asme", "waterCapacity": "500 gal", "orientation": "horizontal", "placement": "above-ground", "gauge": "62 %", "gaugeDate": "2026-10-01", "refillAt": "30 %" },
              "use": {
                "heating": { "appliance": "furnace", "designLoad": "38000 Btu/h", "efficiency": "95 %", "balanceTemp": "62 degF" },
                "indoorTemp": "68 degF",
                "hotWater": { "arrangement": "on-demand-only", "useTemp": "105 degF", "dailyVolume": "55 gal",
                  "onDemand": { "appliance": "heater", "setTemp": "120 degF", "efficiency": "93 %" } },
                "others": [ { "appliance": "range", "volumePerYear": "35 gal" } ],
                "occasions": [ { "name": "winter evening", "firing": ["heater", "range"] } ],
                "heatingValue": "91502 Btu/gal", "pricePerGal": 2.85 } }
            """;

    public static Plan orchard() {
        return Samples.plan(ORCHARD);
    }

    /** The orchard house with one piece of its text exchanged. */
    public static Plan orchard(String piece, String other) {
        if (!ORCHARD.contains(piece)) {
            throw new AssertionError("no such piece: " + piece);
        }
        return Samples.plan(ORCHARD.replace(piece, other));
    }
}
