package longrun.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longrun.plan.Placement;
import longrun.plan.Plan;
import longrun.plan.Tank;
import longrun.plan.TankKind;
import longrun.quantity.Volume;

/** The tanks of a house and which row of NFPA 58 table 6.4.1.1 each falls under. */
final class Tanks {

    /** A cylinder holds at most 1,000 lb of water, just under 120 gal. */
    private static final double GREATEST_CYLINDER_GAL = 119.9;

    private static final double APART_FT = 25;
    private static final double LONE_TANK_GAL = 1200;
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

    /** Water capacity of each, gallons. */
    static Optional<Double> gallons(Tank tank) {
        return tank.waterCapacity()
                .findValue()
                .map(Volume::gallons)
                .or(() -> tank.kind().is(TankKind.CYLINDER) ? Optional.of(GREATEST_CYLINDER_GAL) : Optional.empty());
    }

    static double count(Tank tank) {
        return tank.count().findValue().orElse(1.0);
    }

    /** What a site holds in all. */
    record Site(double containers, double gallons) {

        static Site of(House house) {
            double containers = 0;
            double gallons = 0;
            for (Tank tank : house.plan().allTanks()) {
                containers += count(tank);
                gallons += Tanks.gallons(tank).orElse(0.0) * count(tank);
            }
            return new Site(containers, gallons);
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
        boolean several = site.holdsSeveral();
        List<String> together = rows(site, at.tank(), false);
        List<String> alone = rows(site, at.tank(), true);
        List<String> possible;
        if (!several || isApart(at.tank())) {
            possible = alone;
        } else if (at.tank().betweenTanks().isUnknown() || isMaybeApart(at.tank())) {
            possible =
                    Stream.concat(together.stream(), alone.stream()).distinct().toList();
        } else {
            possible = together;
        }
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
                : Case.between(place, thing, possible, doubt(at));
    }

    private static Case.Doubt doubt(At at) {
        Place place = at.place();
        boolean placement = !at.tank().placement().isKnown();
        return placement
                ? new Case.Doubt(
                        "whether it stands above ground or is buried is not entered",
                        Question.supplier("Is {who} above ground or underground?"),
                        place.pointer() + "/placement")
                : new Case.Doubt(
                        "how far it is from the next tank is not entered",
                        Question.supplier("How far is {who} from the next tank?"),
                        place.pointer() + "/betweenTanks");
    }

    private static List<String> rows(Site site, Tank tank, boolean apart) {
        List<String> rows = new ArrayList<>();
        if (!tank.placement().is(Placement.UNDERGROUND)) {
            rows.add(row(site, tank, apart, false));
        }
        if (!tank.placement().is(Placement.ABOVE_GROUND)) {
            rows.add(row(site, tank, apart, true));
        }
        return rows.stream().distinct().toList();
    }

    /** TK-01 to TK-07. A site of 501 gal or more in all takes the row of the total, unless its tanks are 25 ft apart. */
    private static String row(Site site, Tank tank, boolean apart, boolean buried) {
        double each = gallons(tank).orElse(0.0);
        double counts = !apart && site.gallons() > 500 + ROUND ? site.gallons() : each;
        if (counts > 30_000 + ROUND) {
            return "";
        }
        if (counts > 2000 + ROUND) {
            return "to-30000";
        }
        if (buried) {
            return counts > 500 + ROUND ? "buried-2000" : "buried";
        }
        if (counts > 500 + ROUND) {
            return apart && each <= LONE_TANK_GAL + ROUND ? "single" : "to-2000";
        }
        return counts < 125 - ROUND ? "under-125" : "to-500";
    }

    private static boolean isApart(Tank tank) {
        return tank.betweenTanks().is(d -> d.length().rounded().feet() >= APART_FT);
    }

    private static boolean isMaybeApart(Tank tank) {
        return tank.betweenTanks().is(d -> d.orMore() && d.length().rounded().feet() < APART_FT);
    }
}
