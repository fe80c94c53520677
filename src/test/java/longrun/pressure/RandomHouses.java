package longrun.pressure;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import longrun.plan.PlannedHouse;

/**
 * Seeded random plans as JSON text: one regulator or two or three in a row, up to sixty sections, mixed materials. The
 * same seed always gives the same house.
 */
final class RandomHouses {

    /** No two of them are opposite: a leg may not turn straight back. */
    private static final String[] WAYS = {"north ", "east ", "up ", ""};

    private final Random random;
    private final PlannedHouse house = PlannedHouse.empty();
    private final List<String> materials;
    private int nextSection;
    private int nextAppliance;
    final String json;

    RandomHouses(long seed, boolean installed, String... entries) {
        house.with(entries);
        random = new Random(seed);
        materials =
                random.nextInt(3) == 0 ? List.of("steel", "csst", "copper") : List.of(pick("steel", "copper", "csst"));
        boolean twoPsi = random.nextBoolean();
        regulator("R1", "first-stage", "tank", "10 psi", "1 psi", 3_000_000);
        section("R1", pick("pe-pipe", "steel", "copper"), false);
        String main = lastSection();
        if (twoPsi) {
            regulator("R2", "two-psi", main, "2 psi", "1 psi", 2_000_000);
            section("R2", materials.get(0), installed);
            String trunk = lastSection();
            for (int i = 0; i < 1 + random.nextInt(3); i++) {
                section(trunk, materials.get(0), installed);
                regulator("L" + i, "line", lastSection(), "11 in w.c.", "0.5 in w.c.", 500_000);
                tree("L" + i, 1 + random.nextInt(18), installed);
            }
        } else {
            regulator("R2", "second-stage", main, "11 in w.c.", "0.5 in w.c.", 1_500_000);
            tree("R2", 1 + random.nextInt(58), installed);
        }
        json = house.text();
    }

    @SafeVarargs
    private final <T> T pick(T... choices) {
        return choices[random.nextInt(choices.length)];
    }

    private String lastSection() {
        return "S" + (nextSection - 1);
    }

    private void regulator(String id, String kind, String fedBy, String outlet, String drop, int capacity) {
        house.regulator(
                id,
                kind,
                fedBy,
                outlet,
                drop,
                "'capacity':'" + capacity + " Btu/h'",
                pick("", "'droopAtCapacity':'1 in w.c.'", "'lockUp':'110 %'", "'minInlet':'1 psi'"));
    }

    /** Sections hung at random below a regulator; those that end up as leaves get an appliance. */
    private void tree(String regulator, int count, boolean installed) {
        List<String> ids = new ArrayList<>();
        List<Boolean> feeds = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int parent = i == 0 || random.nextInt(8) == 0 ? -1 : random.nextInt(i);
            section(
                    parent < 0 ? regulator : ids.get(parent),
                    materials.get(random.nextInt(materials.size())),
                    installed);
            ids.add(lastSection());
            feeds.add(false);
            if (parent >= 0) {
                feeds.set(parent, true);
            }
        }
        for (int i = 0; i < count; i++) {
            if (!feeds.get(i)) {
                appliance(ids.get(i));
            }
        }
    }

    private void section(String from, String material, boolean installed) {
        StringBuilder legs = new StringBuilder();
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            String way = WAYS[random.nextInt(WAYS.length)];
            legs.append(i == 0 ? "" : ";")
                    .append(way)
                    .append(1 + random.nextInt(9))
                    .append(" ft");
        }
        String size = !installed || random.nextInt(4) > 0
                ? ""
                : "'installedSize':'"
                        + switch (material) {
                            case "csst" -> pick("23", "30", "37", "62");
                            case "copper" -> pick("1/2 nominal", "3/4 nominal", "1 nominal", "2 nominal");
                            default -> pick("1/2", "3/4", "1", "2", "4");
                        }
                        + "'";
        house.section(
                "S" + nextSection++,
                from,
                material,
                legs.toString(),
                size,
                random.nextInt(4) == 0 ? "'fittings':{'elbow-90':2}" : "");
    }

    private void appliance(String section) {
        String id = "A" + nextAppliance++;
        house.add(
                "appliances",
                "'id':'" + id + "','kind':'other','input':'" + 1000 * (5 + random.nextInt(60)) + " Btu/h','fedBy':'"
                        + section + "'",
                pick("", "'minInlet':'8 in w.c.'", "'minInlet':'9.5 in w.c.'"),
                pick("", "'maxInlet':'13 in w.c.'", "'maxInlet':'14 in w.c.'"),
                pick(
                        "",
                        "'connection':[{'part':'rigid-pipe','length':'2 ft'}]",
                        "'connection':[{'part':'shutoff'},{'part':'flexible-connector','capacity':'60000 Btu/h'}]",
                        "'connection':[{'part':'flexible-connector','ratedDrop':'0.3 in w.c.'}]"));
    }
}
