package longrun.rules.tank;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import longrun.plan.Distance;
import longrun.plan.Fact;
import longrun.plan.Tank;
import longrun.plan.choice.Placement;
import longrun.plan.choice.TankKind;
import longrun.rules.limit.State;
import longrun.rules.shape.Case;
import longrun.rules.shape.Cases;
import longrun.rules.shape.DistanceRule;
import longrun.rules.shape.House;
import longrun.rules.shape.Place;
import longrun.rules.shape.Precedence;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/** Topic tank distance: from buildings, property lines, other tanks, openings, flames and intakes. */
public final class TankDistance {

    private TankDistance() {}

    public static List<Rule> rules() {
        return List.of(
                rule("tank-between-tanks", TankDistance::between, Tank::betweenTanks, "betweenTanks", "the next tank"),
                rule("tank-to-building", TankDistance::byTable, Tank::toBuilding, "toBuilding", "the nearest building"),
                rule(
                        "tank-to-property-line",
                        TankDistance::byTable,
                        Tank::toPropertyLine,
                        "toPropertyLine",
                        "the nearest property line that can be built up to"),
                rule(
                        "tank-relief-opening",
                        house -> byKind(house, List.of("cylinder")),
                        Tank::toOpeningBelow,
                        "toOpeningBelow",
                        "the nearest building opening below its relief"),
                new IgnitionOrIntake());
    }

    private static DistanceRule<Tank> rule(
            String name, Cases<Tank> where, Function<Tank, Fact<Distance>> measure, String field, String thing) {
        return new DistanceRule<>(
                name,
                Precedence.PLACE,
                where,
                measure,
                field,
                State.HOLDS,
                new DistanceRule.Words(
                        "{who} is {entered} from " + thing,
                        "how far {who} is from " + thing + " is not entered",
                        "Set {who} {limit} or more from " + thing + ".",
                        Question.supplier("How far is {who} from " + thing + ", or is there none?")));
    }

    private static List<Case<Tank>> byTable(House house) {
        Tanks.Site site = Tanks.Site.of(house);
        return Tanks.listIn(house).stream()
                .map(at -> Tanks.byTable(site, at, at.tank()))
                .toList();
    }

    /** The column "between containers above ground" of the table. */
    private static List<Case<Tank>> between(House house) {
        List<Case<Tank>> cases = new ArrayList<>();
        boolean several = Tanks.Site.of(house).holdsSeveral();
        for (Tanks.At at : Tanks.listIn(house)) {
            double gallons = Tanks.gallons(at.tank()).orElse(Double.NaN);
            if (!several || at.tank().placement().is(Placement.UNDERGROUND) || gallons <= 250) {
                cases.add(Case.notFor(at.place()));
            } else if (Double.isNaN(gallons)) {
                cases.add(Case.asks(
                        at.place(),
                        "the water capacity of {who} is not entered",
                        Question.supplier("What is the water capacity of {who} in gallons?"),
                        at.place().pointer() + "/waterCapacity"));
            } else {
                cases.add(Case.of(at.place(), at.tank(), gallons > 2000 ? "to-30000" : "to-2000"));
            }
        }
        return cases;
    }

    private static List<Case<Tank>> byKind(House house, List<String> cylinderRows) {
        List<Case<Tank>> cases = new ArrayList<>();
        for (Tanks.At at : Tanks.listIn(house)) {
            Place place = at.place();
            List<String> rows = new ArrayList<>();
            if (!at.tank().kind().is(TankKind.ASME)) {
                rows.addAll(cylinderRows);
            }
            if (!at.tank().kind().is(TankKind.CYLINDER)) {
                rows.add("asme");
            }
            boolean kindKnown = at.tank().kind().isKnown();
            Case.Doubt doubt = kindKnown
                    ? new Case.Doubt(
                            "whether it is filled where it stands decides",
                            Question.supplier("Is {who} filled where it stands, or exchanged?"),
                            place.pointer() + "/kind")
                    : new Case.Doubt(
                            "whether it is an ASME tank or a cylinder is not entered",
                            Question.supplier("Is {who} an ASME tank or a cylinder?"),
                            place.pointer() + "/kind");
            cases.add(
                    rows.size() == 1
                            ? Case.of(place, at.tank(), rows.get(0))
                            : Case.between(place, at.tank(), rows, doubt));
        }
        return cases;
    }

    /** Two entries under one name: what burns, and what draws air in. */
    private static final class IgnitionOrIntake implements Rule {

        private final List<DistanceRule<Tank>> parts = List.of(
                rule(
                        name(),
                        IgnitionOrIntake::places,
                        Tank::toIgnition,
                        "toIgnition",
                        "the nearest source of ignition"),
                rule(
                        name(),
                        IgnitionOrIntake::places,
                        Tank::toIntake,
                        "toIntake",
                        "the nearest direct-vent opening or air intake"));

        private static List<Case<Tank>> places(House house) {
            return byKind(house, List.of("cylinder", "cylinder-filled-on-site"));
        }

        @Override
        public String name() {
            return "tank-ignition-or-intake";
        }

        @Override
        public List<Verdict> judge(House house) {
            List<Verdict> verdicts = new ArrayList<>();
            parts.forEach(p -> verdicts.addAll(p.judge(house)));
            return verdicts;
        }
    }
}
