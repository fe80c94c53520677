package longrun.rules.shape;

import java.util.ArrayList;
import java.util.List;
import longrun.capacity.CapacityTables;
import longrun.piping.Network;
import longrun.piping.Piping;
import longrun.plan.Appliance;
import longrun.plan.Code;
import longrun.plan.Plan;
import longrun.plan.Section;
import longrun.plan.choice.CodeProfile;
import longrun.pressure.Pressures;
import longrun.rules.limit.Limits;
import longrun.sizing.Sizing;

/** All a rule sees of a house: what was entered, what hangs on what, and the pressure along it. */
public final class House {

    private final Plan plan;
    private final Network network;
    private final Limits limits;
    private final Pressures pressures;
    private final List<Hookup> hookups;
    private final List<Place> appliances;
    private final List<Place> sections;

    private House(Pressures pressures) {
        this.pressures = pressures;
        this.plan = pressures.sizing().piping().plan();
        this.network = pressures.sizing().piping().network();
        this.limits = Limits.of(plan, profile());
        this.hookups = Hookup.listIn(plan, pressures.sizing().piping().names());
        this.appliances = hookups.stream().map(Hookup::place).toList();
        this.sections = sections(plan);
    }

    private House(House like, List<Hookup> hookups) {
        this.pressures = like.pressures;
        this.plan = like.plan;
        this.network = like.network;
        this.limits = like.limits;
        this.hookups = List.copyOf(hookups);
        this.appliances = like.appliances;
        this.sections = like.sections;
    }

    private static List<Place> sections(Plan plan) {
        List<Place> places = new ArrayList<>();
        for (Section section : plan.sections()) {
            places.add(new Place(section.id(), "/sections/" + places.size(), "section " + section.id()));
        }
        return places;
    }

    /** With the published tables. */
    public static House of(Plan plan) {
        return of(Pressures.of(Sizing.of(Piping.of(plan), CapacityTables.standard())));
    }

    /** Of a plan already sized. */
    public static House of(Pressures pressures) {
        return new House(pressures);
    }

    /** The same house, seen by these hookups. */
    public House with(List<Hookup> seen) {
        return new House(this, seen);
    }

    public List<Hookup> hookups() {
        return hookups;
    }

    /** Where an appliance stands, by its number in the plan. */
    public Place appliance(int index) {
        return appliances.get(index);
    }

    /** Where a section stands, by its number in the plan. */
    public Place section(int index) {
        return sections.get(index);
    }

    public Plan plan() {
        return plan;
    }

    /** What an appliance is called within a sentence. */
    public String called(Appliance appliance) {
        return pressures.sizing().piping().names().called(appliance);
    }

    public Network network() {
        return network;
    }

    /** The code that decides on the house side: {@code fuel-gas-2018} where none is entered. */
    public CodeProfile profile() {
        return plan.code().map(Code::profile).flatMap(p -> p.findValue()).orElse(CodeProfile.FUEL_GAS_2018);
    }

    /** The pressure along every run, with the sizes the tables ask for or a person chose. */
    public Pressures pressures() {
        return pressures;
    }

    /** What each rule requires here, local amendments included. */
    public Limits limits() {
        return limits;
    }
}
