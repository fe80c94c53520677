package longrun.rules.tank;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import longrun.plan.Plan;
import longrun.plan.Tank;
import longrun.plan.choice.Placement;
import longrun.plan.choice.TankKind;
import longrun.quantity.Volume;
import longrun.rules.shape.Case;
import longrun.rules.shape.House;
import longrun.rules.shape.Place;
import longrun.rules.shape.Question;

/** The tanks of a house and which row of NFPA 58 table 6.4.1.1 each falls under. */
final class Tanks {

    /** A cylinder holds at most 1,000 lb of water, just under 120 gal. */
    private static final double GREATEST_CYLINDER_GAL = 119.9;

    private static final double APART_FT = 25;
    private static final double LONE_TANK_GAL = 1200;
    /** Tanks under this count together; one of more takes another's exception away. */
    private static final double SMALL_GAL = 125;

    /** The greatest capacity of the 10 ft row. */
    private static final double ROW_GAL = 500;

    private static final double TABLE_GAL = 30_000;
    /** Propane a gallon of water capacity holds at 42 % of its weight, 8.33 lb. */
    private static final double POUNDS_A_GALLON = 0.42 * 8.33;

    private static final double ROUND = 1e-6;

    private Tanks() {}

    record At(Tank tank, Place place) {}

    static List<At> listIn(House house) {
        Plan plan = house.plan();
        List<Tank> tanks = plan.allTanks();
        boolean one = plan.tank().size() == 1;
        String stem = plan.tank().isEmpty() ? "/tanks/" : "/tank/";
        List<At> all = new ArrayList<>();
        for (int i = 0; i < tanks.size(); i++) {
            String label = tanks.get(i).kind().is(TankKind.CYLINDER) ? "the cylinder" : "the tank";
            if (tanks.size() > 1) {
                label = label + " number " + (i + 1);
            }
            all.add(new At(tanks.get(i), new Place("tank", one ? "/tank" : stem + i, label)));
        }
        return all;
    }

    /** Water capacity of each, gallons; of a cylinder by the propane it holds, 42 % of its water by weight (TK-14). */
    static Optional<Double> gallons(Tank tank) {
        return tank.waterCapacity()
                .findValue()
                .map(Volume::gallons)
                .or(() -> tank.kind().is(TankKind.CYLINDER)
                        ? Optional.of(tank.propaneWeight()
                                .findValue()
                                .map(w -> Math.min(GREATEST_CYLINDER_GAL, w.pounds() / POUNDS_A_GALLON))
                                .orElse(GREATEST_CYLINDER_GAL))
                        : Optional.empty());
    }

    private static boolean isMeasured(Tank tank) {
        return tank.waterCapacity().isKnown()
                || (tank.kind().is(TankKind.CYLINDER) && tank.propaneWeight().isKnown());
    }

    static double count(Tank tank) {
        return tank.count().findValue().orElse(1.0);
    }

    /**
     * What a site holds.
     *
     * @param containers how many in all
     * @param over125 how many of more than 125 gal
     * @param unknown how many whose capacity is not entered
     * @param underGallons what those under 125 gal hold together
     * @param underGallonsAtMost the same if each that is not entered holds as much as it may
     * @param unknownAt the first tank whose capacity is not entered
     */
    record Site(
            double containers,
            double over125,
            double unknown,
            double underGallons,
            double underGallonsAtMost,
            Optional<String> unknownAt) {

        static Site of(House house) {
            double containers = 0;
            double over125 = 0;
            double unknown = 0;
            double under = 0;
            double underAtMost = 0;
            Optional<String> unknownAt = Optional.empty();
            for (At at : listIn(house)) {
                Tank tank = at.tank();
                double n = count(tank);
                double each = Tanks.gallons(tank).orElse(SMALL_GAL);
                containers += n;
                if (!isMeasured(tank)) {
                    boolean cylinder = tank.kind().is(TankKind.CYLINDER);
                    unknown += cylinder ? 0 : n;
                    underAtMost += each * n;
                    unknownAt = unknownAt.or(() -> Optional.of(at.place().pointer() + "/waterCapacity"));
                } else if (each < SMALL_GAL - ROUND) {
                    under += each * n;
                    underAtMost += each * n;
                } else if (each > SMALL_GAL + ROUND) {
                    over125 += n;
                }
            }
            return new Site(containers, over125, unknown, under, underAtMost, unknownAt);
        }

        boolean holdsSeveral() {
            return containers > 1;
        }
    }

    /** What is near: a row of the table for each placement that is possible, the distance between tanks as entered. */
    static <T> Case<T> byTable(Site site, At at, T thing) {
        Place place = at.place();
        if (gallons(at.tank()).isEmpty()) {
            return Case.asks(
                    place,
                    "the water capacity of {who} is not entered",
                    Question.supplier("What is the water capacity of {who} in gallons?"),
                    place.pointer() + "/waterCapacity");
        }
        List<String> possible = rows(site, at.tank());
        if (possible.stream().anyMatch(String::isEmpty)) {
            return Case.asks(
                    place,
                    "{who} is larger than the table of distances goes (30,000 gal)",
                    Question.supplier("Which distances hold for {who}?"),
                    place.pointer() + "/waterCapacity");
        }
        if (possible.equals(List.of("under-125"))) {
            return Case.notFor(place);
        }
        return possible.size() == 1
                ? Case.of(place, thing, possible.get(0))
                : Case.between(place, thing, possible, doubt(site, at));
    }

    private static Case.Doubt doubt(Site site, At at) {
        Place place = at.place();
        if (!at.tank().placement().isKnown()) {
            return new Case.Doubt(
                    "whether it stands above ground or is buried is not entered",
                    Question.supplier("Is {who} above ground or underground?"),
                    place.pointer() + "/placement");
        }
        boolean small = gallons(at.tank()).orElse(0.0) < SMALL_GAL - ROUND;
        if (site.unknownAt().isPresent() && (small ? site.underGallons() <= ROW_GAL + ROUND : site.over125() <= 1)) {
            return new Case.Doubt(
                    "what each of the tanks beside it holds is not entered",
                    Question.supplier("What is the water capacity of each tank in gallons?"),
                    site.unknownAt().get());
        }
        String next = small ? "the next tank" : "the next tank of more than 125 gal";
        return new Case.Doubt(
                "how far it is from " + next + " is not entered",
                Question.supplier("How far is {who} from " + next + "?"),
                place.pointer() + "/betweenTanks");
    }

    private static List<String> rows(Site site, Tank tank) {
        Set<String> rows = new LinkedHashSet<>();
        if (!tank.placement().is(Placement.UNDERGROUND)) {
            rows.addAll(above(site, tank));
        }
        if (!tank.placement().is(Placement.ABOVE_GROUND)) {
            for (double counts : counted(site, tank)) {
                rows.add(
                        counts > TABLE_GAL + ROUND
                                ? ""
                                : counts > 2000 + ROUND
                                        ? "to-30000"
                                        : counts > ROW_GAL + ROUND ? "buried-2000" : "buried");
            }
        }
        return List.copyOf(rows);
    }

    /** TK-01 to TK-07 above ground. */
    private static Set<String> above(Site site, Tank tank) {
        Set<String> rows = new LinkedHashSet<>();
        double each = gallons(tank).orElse(0.0);
        for (double counts : counted(site, tank)) {
            if (counts > TABLE_GAL + ROUND) {
                rows.add("");
            } else if (counts > 2000 + ROUND) {
                rows.add("to-30000");
            } else if (counts <= ROW_GAL + ROUND) {
                rows.add(counts < SMALL_GAL - ROUND ? "under-125" : "to-500");
            } else if (each < SMALL_GAL - ROUND || each > LONE_TANK_GAL + ROUND) {
                rows.add("to-2000");
            } else {
                lone(site, tank, rows);
            }
        }
        return rows;
    }

    /** TK-06: a tank of up to 1,200 gal stands at 10 ft where none of more than 125 gal is within 25 ft of it. */
    private static void lone(Site site, Tank tank, Set<String> rows) {
        double over = site.over125() - 1;
        double maybeOver = over + site.unknown();
        boolean apart = isApart(tank) || maybeOver <= 0;
        boolean near = !apart && tank.betweenTanks().is(d -> !d.orMore()) && over > 0 && over >= site.containers() - 1;
        if (!apart) {
            rows.add("to-2000");
        }
        if (!near) {
            rows.add("single");
        }
    }

    /**
     * The capacity whose row holds: its own, or together with the others under 125 gal where they come to 501 gal or more
     * (TK-07) and are not 25 ft apart.
     */
    private static List<Double> counted(Site site, Tank tank) {
        double each = gallons(tank).orElse(0.0);
        boolean together = each < SMALL_GAL - ROUND && site.underGallonsAtMost() > ROW_GAL + ROUND && !isApart(tank);
        if (!together) {
            return List.of(each);
        }
        boolean sure =
                site.underGallons() > ROW_GAL + ROUND && tank.betweenTanks().isKnown() && !isMaybeApart(tank);
        double total = Math.max(site.underGallons(), Math.min(site.underGallonsAtMost(), ROW_GAL + 1));
        return sure ? List.of(total) : List.of(total, each);
    }

    private static boolean isApart(Tank tank) {
        return tank.betweenTanks().is(d -> d.length().rounded().feet() >= APART_FT);
    }

    private static boolean isMaybeApart(Tank tank) {
        return tank.betweenTanks().is(d -> d.orMore() && d.length().rounded().feet() < APART_FT);
    }
}
