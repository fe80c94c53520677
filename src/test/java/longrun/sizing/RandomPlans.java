package longrun.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import longrun.plan.PlannedHouse;

/** Makes plans at random from a seed, of every material, pressure and allowance. */
public final class RandomPlans {

    private static final String[] DIRECTIONS = {"north", "east", "south", "west", "up", "down"};
    private static final String[] MATERIALS = {"steel", "copper", "csst", "pe-pipe", "pe-tubing"};
    private static final String[][] STAGES = {
        {"11 in w.c.", "0.5 in w.c."},
        {"11 in w.c.", "0.5 in w.c."},
        {"11 in w.c.", "1 in w.c."},
        {"2 psi", "1 psi"},
        {"10 psi", "1 psi"},
        {"10 psi", "3 psi"},
        {"5 psi", "3.5 psi"}
    };
    private static final String[] REGULATOR_FACTS = {
        "",
        "'capacity':'500 kBtu/h','minInlet':'5 psi','setting':'outdoors'",
        "'capacity':'200 kBtu/h','setting':'indoors'",
        "'minInlet':'9 in w.c.','droopAtCapacity':'1 in w.c.'"
    };
    private static final String[] LABELS = {
        "",
        "'gas':'propane','minInlet':'8 in w.c.','maxInlet':'14 in w.c.'",
        "'gas':'natural','minInlet':'5 in w.c.','maxInlet':'300 psi'",
        "'minInlet':'10.5 in w.c.'",
        "'gas':'converted','maxInlet':'13 in w.c.'"
    };
    private static final String[] KINDS = {
        "",
        "'kind':'range'",
        "'kind':'furnace'",
        "'kind':'storage-water-heater'",
        "'kind':'clothes-dryer'",
        "'kind':'oven'",
        "'kind':'gas-logs'",
        "'kind':'gas-logs','vent':'none'",
        "'kind':'gas-logs','vent':'direct'",
        "'kind':'standby-generator'"
    };
    private static final String[] ALLOWANCES = {"'none'", "'20 %'", "'counted'", "null", "'counted'"};
    private static final String[][] INSTALLED = {
        {"1/2", "1"}, {"1/2 nominal", "5/8 OD"}, {"13", "30"}, {"1/2", "2"}, {"1/2 CTS", "1 CTS"}
    };

    private final Random random;
    private final PlannedHouse house = PlannedHouse.empty();
    private int regulators;
    private int sections;
    private int appliances;
    private final int most;

    private RandomPlans(long seed, int most) {
        this.random = new Random(seed);
        this.most = most;
    }

    /** The plan of a seed, as JSON. */
    public static String json(long seed, int mostSections) {
        return new RandomPlans(seed, mostSections).make();
    }

    private String make() {
        String allowance = ALLOWANCES[random.nextInt(ALLOWANCES.length)];
        house.with("'fittingAllowance':" + allowance);
        stage("tank", 2);
        if (random.nextInt(4) == 0) {
            house.with("'availableSizes':{'steel':['1/2','1','2'],'copper':['1/2 nominal','7/8 OD'],"
                    + "'csst':['13','19','25','31','46']}");
        }
        return house.text();
    }

    private void stage(String fedBy, int depth) {
        String id = "R" + regulators++;
        String[] pressures = STAGES[random.nextInt(STAGES.length)];
        String kind = depth == 2 ? "first-stage" : depth == 1 ? "second-stage" : "line";
        house.add(
                "regulators",
                "'id':'" + id + "','kind':'" + kind + "','fedBy':'" + fedBy + "'",
                REGULATOR_FACTS[random.nextInt(REGULATOR_FACTS.length)],
                random.nextInt(40) == 0 ? "" : "'outlet':'" + pressures[0] + "'",
                "'allowedDrop':'" + pressures[1] + "'");
        int material = random.nextInt(MATERIALS.length);
        List<String> ends = new ArrayList<>(List.of(id));
        List<String> directions = new ArrayList<>(List.of(""));
        int count = 1 + random.nextInt(6);
        List<String> leaves = new ArrayList<>();
        for (int k = 0; k < count && sections < most; k++) {
            int on = random.nextInt(ends.size());
            int own = random.nextInt(3) == 0 ? random.nextInt(MATERIALS.length) : material;
            String section = "S" + sections;
            String last = section(section, ends.get(on), directions.get(on), own);
            leaves.remove(ends.get(on));
            leaves.add(section);
            ends.add(section);
            directions.add(last);
        }
        for (String leaf : leaves) {
            int what = random.nextInt(12);
            if (what == 0 && depth > 0) {
                stage(leaf, depth - 1);
            } else if (what > 1) {
                appliance(leaf);
            }
        }
    }

    private String section(String id, String from, String arriving, int material) {
        StringBuilder legs = new StringBuilder();
        String before = arriving;
        int n = 1 + random.nextInt(6);
        for (int k = 0; k < n; k++) {
            String way = random.nextInt(5) == 0 ? "" : DIRECTIONS[random.nextInt(DIRECTIONS.length)];
            if (!way.isEmpty() && reverse(way).equals(before)) {
                way = before;
            }
            double feet = random.nextInt(3) == 0 ? random.nextInt(40) : Math.round(random.nextDouble() * 300) / 10.0;
            legs.append(k == 0 ? "" : ",").append(String.format(Locale.ROOT, "'%s %s ft'", way, plain(feet)));
            before = way;
        }
        String leaves = random.nextInt(150) == 0 ? "" : "'from':'" + from + "'";
        String pipe = "'material':'" + MATERIALS[material] + "','legs':[" + legs + "]";
        String fittings = random.nextInt(5) == 0
                ? "'fittings':"
                        + new String[] {"{}", "{'elbow-90':2,'elbow-45':1}", "{'tee-branch':1,'valve':1}"}
                                [random.nextInt(3)]
                : "";
        String installed =
                random.nextInt(6) == 0 ? "'installedSize':'" + INSTALLED[material][random.nextInt(2)] + "'" : "";
        String chosen = random.nextInt(8) == 0 ? "'chosenSize':'" + INSTALLED[material][random.nextInt(2)] + "'" : "";
        String end = new String[] {"", "'reserve':'40 MBH','capped':true", "'reserve':'none','capped':true"}
                [random.nextInt(3)];
        house.add("sections", "'id':'" + id + "'", leaves, pipe, fittings, installed, chosen, end);
        sections++;
        return before;
    }

    private void appliance(String on) {
        String input = random.nextInt(25) == 0
                ? ""
                : "'input':'" + (5 + random.nextInt(60)) * (random.nextInt(4) == 0 ? 20 : 3) + " kBtu/h'";
        String[] hookups = {
            "",
            "'connection':[]",
            "'connection':[{'part':'shutoff'},{'part':'flexible-connector'}]",
            "'connection':[{'part':'shutoff'},{'part':'sediment-trap'},{'part':'flexible-connector'}]",
            "'connection':[{'part':'shutoff'},{'part':'union'},{'part':'sediment-trap'},{'part':'shutoff'}]"
        };
        String kind = KINDS[random.nextInt(KINDS.length)];
        String fedBy = random.nextInt(150) == 0 ? "" : "'fedBy':'" + on + "'";
        String label = LABELS[random.nextInt(LABELS.length)];
        house.add(
                "appliances",
                "'id':'a" + appliances++ + "'",
                kind,
                label,
                fedBy,
                input,
                hookups[random.nextInt(hookups.length)]);
    }

    private static String plain(double feet) {
        return feet == Math.rint(feet) ? Long.toString((long) feet) : Double.toString(feet);
    }

    private static String reverse(String way) {
        return switch (way) {
            case "north" -> "south";
            case "south" -> "north";
            case "east" -> "west";
            case "west" -> "east";
            case "up" -> "down";
            default -> "up";
        };
    }
}
