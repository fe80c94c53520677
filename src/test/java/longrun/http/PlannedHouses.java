package longrun.http;

import java.util.List;
import longrun.plan.PlannedHouse;

/** Ten houses piped right, of different kinds: nothing in them is to mend, and nothing wants care. */
final class PlannedHouses {

    private PlannedHouses() {}

    static List<PlannedHouse> all() {
        return List.of(
                twoStage(),
                twoPsi(),
                allCopper(),
                manifold(),
                yardLine(),
                buriedTank(),
                cylinders(),
                remoteShutoff(),
                movableRange(),
                generator());
    }

    static PlannedHouse twoStage() {
        return PlannedHouse.named("two-stage, steel")
                .tank("500 gal", "14 ft")
                .firstStage("R1")
                .yard("Y1", "R1", "copper", "40 ft")
                .secondStage("R2", "Y1")
                .pipe("A", "R2", "steel", "12 ft")
                .pipe("B", "A", "steel", "10 ft")
                .pipe("C", "A", "steel", "14 ft")
                .burns("heater", "on-demand-water-heater", "B", "180000 Btu/h", "direct")
                .burns("range", "range", "C", "65000 Btu/h", "none");
    }

    static PlannedHouse twoPsi() {
        return PlannedHouse.named("2 psi with a line regulator")
                .tank("500 gal", "14 ft")
                .firstStage("R1")
                .yard("Y1", "R1", "pe-pipe", "50 ft")
                .twoPsi("R2", "Y1")
                .pipe("L1", "R2", "copper", "25 ft")
                .lineRegulator("R3", "L1")
                .pipe("A", "R3", "copper", "6 ft")
                .pipe("B", "A", "copper", "5 ft")
                .pipe("C", "A", "copper", "8 ft")
                .burns("furnace", "furnace", "B", "80000 Btu/h", "direct")
                .burns("dryer", "clothes-dryer", "C", "22000 Btu/h", "fan");
    }

    static PlannedHouse allCopper() {
        return PlannedHouse.named("all copper, integral two-stage")
                .tank("250 gal", "12 ft")
                .integral("R1")
                .pipe("A", "R1", "copper", "18 ft")
                .pipe("B", "A", "copper", "6 ft")
                .pipe("C", "A", "copper", "9 ft")
                .burns("boiler", "boiler", "B", "60000 Btu/h", "direct")
                .burns("range", "range", "C", "60000 Btu/h", "none");
    }

    static PlannedHouse manifold() {
        PlannedHouse house = PlannedHouse.named("corrugated tubing from a manifold")
                .tank("500 gal", "14 ft")
                .firstStage("R1")
                .yard("Y1", "R1", "copper", "30 ft")
                .secondStage("R2", "Y1")
                .pipe("M", "R2", "csst", "10 ft")
                .pipe("A", "M", "csst", "12 ft")
                .pipe("B", "M", "csst", "15 ft")
                .burns("heater", "on-demand-water-heater", "A", "150000 Btu/h", "direct")
                .burns("furnace", "furnace", "B", "60000 Btu/h", "direct");
        for (int i = 0; i < 2; i++) {
            house.set(
                    "/appliances/" + i + "/connection/0",
                    "{'part':'shutoff','place':'manifold','distance':'22"
                            + " ft','readyAccess':true,'labelled':true,'size':'3/4'}");
        }
        return house;
    }

    static PlannedHouse yardLine() {
        return PlannedHouse.named("polyethylene in the yard")
                .tank("1000 gal", "40 ft")
                .firstStage("R1")
                .yard("Y1", "R1", "pe-tubing", "90 ft")
                .secondStage("R2", "Y1")
                .pipe("A", "R2", "steel", "20 ft")
                .burns("furnace", "furnace", "A", "100000 Btu/h", "direct");
    }

    static PlannedHouse buriedTank() {
        return PlannedHouse.named("buried tank")
                .tank("500 gal", "12 ft")
                .set("/tank/placement", "underground")
                .set("/tank/vapourCapacity", "500000 Btu/h")
                .set("/site/groundTemp", "48 degF")
                .firstStage("R1")
                .yard("Y1", "R1", "pe-pipe", "35 ft")
                .secondStage("R2", "Y1")
                .pipe("A", "R2", "copper", "15 ft")
                .burns("boiler", "boiler", "A", "120000 Btu/h", "fan");
    }

    static PlannedHouse cylinders() {
        return PlannedHouse.named("two cylinders")
                .set(
                        "/tank",
                        "{'kind':'cylinder','count':2,'propaneWeight':'420"
                                + " lb','placement':'above-ground','refillAt':'30 %','vapourCapacity':'200000"
                                + " Btu/h','toBuilding':'1 ft','toPropertyLine':'20 ft','toOpeningBelow':'4"
                                + " ft','toIntake':'12 ft','toIgnition':'12 ft'}")
                .integral("R1")
                .pipe("A", "R1", "copper", "14 ft")
                .burns("heater", "space-heater", "A", "35000 Btu/h", "direct");
    }

    static PlannedHouse remoteShutoff() {
        return PlannedHouse.named("fireplace with a remote shutoff")
                .tank("250 gal", "12 ft")
                .integral("R1")
                .pipe("A", "R1", "steel", "22 ft")
                .burns("hearth", "fireplace", "A", "38000 Btu/h", "direct")
                .set(
                        "/appliances/0/connection/0",
                        "{'part':'shutoff','place':'remote','distance':'14"
                                + " ft','readyAccess':true,'labelled':true,'size':'3/4'}");
    }

    /** The valve behind a range that is pulled out counts as access (SV-05). */
    static PlannedHouse movableRange() {
        return PlannedHouse.named("movable range")
                .tank("120 gal", "3 ft")
                .integral("R1")
                .pipe("A", "R1", "csst", "16 ft")
                .burns("range", "range", "A", "65000 Btu/h", "none")
                .set("/appliances/0/connection/1/length", "6 ft");
    }

    static PlannedHouse generator() {
        return PlannedHouse.named("standby generator and grill")
                .tank("500 gal", "14 ft")
                .firstStage("R1")
                .yard("Y1", "R1", "pe-pipe", "40 ft")
                .secondStage("R2", "Y1")
                .pipe("A", "R2", "steel", "8 ft")
                .pipe("B", "A", "steel", "10 ft")
                .pipe("C", "A", "steel", "12 ft")
                .set("/sections/1/setting", "outdoors")
                .set("/sections/2/setting", "outdoors")
                .set("/sections/3/setting", "outdoors")
                .burns("generator", "standby-generator", "B", "200000 Btu/h", "fan")
                .burns("grill", "outdoor-grill", "C", "50000 Btu/h", "none")
                .set("/appliances/1/connection/1/length", "12 ft");
    }
}
