package longrun.draft;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import longrun.plan.PlanPath;

/** The places of a house, in the order in which the page lists them, and which entries each asks for. */
public enum PlaceKind {
    HOUSE("house", "House", "What the house is, where it stands, and how the pressure is reduced. Any order will do."),
    APPLIANCES("appliances", "Appliances", "Everything that burns gas, each from its own rating plate."),
    ROUTE(
            "route",
            "Pipe route",
            "From the regulator outward, as you would pace it. The Enter key begins the next section; a list from elsewhere can"
                    + " be pasted."),
    CONNECTIONS(
            "connections",
            "Connections",
            "Each appliance\u2019s last parts, in the order the gas meets them, from the end of the pipe to the"
                    + " burner."),
    TANK(
            "tank",
            "Tank",
            "Liquid turns to gas by the warmth of the air on the wetted steel: the colder and the emptier, the less."),
    FUEL("fuel", "Fuel", "What the house burns through the year, how long a fill lasts, and when to call."),
    HOT_WATER(
            "hot-water",
            "Hot water",
            "The storage heater first, the on-demand heater behind it, the mixing valve last before the house."),
    FINDINGS("findings", "Findings", "What is wrong or doubtful, and the questions to take along, by who can answer."),
    VALVE(
            "valve",
            "Before the valve",
            "The pressure test, the points at which work stops, and what the gauge shows, before gas is let in for use."),
    PAPERS(
            "papers",
            "Papers",
            "What to put in front of supplier, fitter and inspector: each sheet as it will be printed, and what is"
                    + " still open in it.");

    /** An entry or a part of the plan, and the place that asks for it; {@code *} is any item of a list. */
    private record Entries(PlanPath path, PlaceKind place) {

        Entries(String path, PlaceKind place) {
            this(PlanPath.of(path), place);
        }

        /** How many steps of an entry's path this row names; 0 where it names another. */
        int stepsIn(PlanPath entry) {
            for (int i = 0; i < path.length(); i++) {
                String own = path.step(i);
                if (!own.equals(entry.step(i)) && !(own.equals("*") && PlanPath.isIndex(entry.step(i)))) {
                    return 0;
                }
            }
            return path.length();
        }
    }

    /** Which place asks for which entries; of several rows that name an entry the longest counts. */
    private static final List<Entries> TABLE = List.of(
            new Entries("/name", HOUSE),
            new Entries("/format", HOUSE),
            new Entries("/code", HOUSE),
            new Entries("/rooms", HOUSE),
            new Entries("/site", HOUSE),
            new Entries("/site/mainShutoff", CONNECTIONS),
            new Entries("/site/groundTemp", TANK),
            new Entries("/site/monthlyMeanTemp", FUEL),
            new Entries("/site/leadDays", FUEL),
            new Entries("/site/unreachable", FUEL),
            new Entries("/site/coldWater", HOT_WATER),
            new Entries("/regulators", HOUSE),
            new Entries("/regulators/*/setting", CONNECTIONS),
            new Entries("/regulators/*/ventToOpening", CONNECTIONS),
            new Entries("/regulators/*/ventToIntake", CONNECTIONS),
            new Entries("/regulators/*/ventToIgnition", CONNECTIONS),
            new Entries("/regulators/*/ventToVentTerminal", CONNECTIONS),
            new Entries("/regulators/*/underEaves", CONNECTIONS),
            new Entries("/regulators/*/shutoffBefore", CONNECTIONS),
            new Entries("/regulators/*/teeBefore", CONNECTIONS),
            new Entries("/regulators/*/teeAfter", CONNECTIONS),
            new Entries("/regulators/*/unionWithin", CONNECTIONS),
            new Entries("/regulators/*/vent", CONNECTIONS),
            new Entries("/regulators/*/access", CONNECTIONS),
            new Entries("/appliances", APPLIANCES),
            new Entries("/appliances/*/fedBy", ROUTE),
            new Entries("/appliances/*/connection", CONNECTIONS),
            new Entries("/sections", ROUTE),
            new Entries("/fittingAllowance", ROUTE),
            new Entries("/availableSizes", ROUTE),
            new Entries("/tubingTables", ROUTE),
            new Entries("/useMemoryTables", ROUTE),
            new Entries("/readings", VALVE),
            new Entries("/holdPoints", VALVE),
            new Entries("/tank", TANK),
            new Entries("/tanks", TANK),
            new Entries("/use", FUEL),
            new Entries("/use/hotWater", HOT_WATER),
            new Entries("/use/pricePerKwh", HOT_WATER),
            new Entries("/deliveries", FUEL));

    private final String slug;
    private final String title;
    private final String lede;

    PlaceKind(String slug, String title, String lede) {
        this.slug = slug;
        this.title = title;
        this.lede = lede;
    }

    /** Its part of the page's address. */
    public String slug() {
        return slug;
    }

    /** Its name on screen. */
    public String title() {
        return title;
    }

    /** What it is for, in a sentence or two. */
    public String lede() {
        return lede;
    }

    /** With what to begin here while nothing is entered; blank where the place itself says so. */
    public String beginning() {
        return switch (this) {
            case TANK -> "Begin with tank or cylinder, and its water capacity.";
            case FUEL -> "Begin with what heats the house; whoever sized the heating knows what it loses.";
            case HOT_WATER -> "Begin with where hot water comes from.";
            case VALVE -> "Nothing here is due before the pipe is built.";
            default -> "";
        };
    }

    /** Whether this place asks for the entry at a JSON pointer. */
    public boolean holds(String pointer) {
        return find(pointer).filter(p -> p == this).isPresent();
    }

    /** The place that asks for the entry at a JSON pointer; empty where none does. */
    public static Optional<PlaceKind> find(String pointer) {
        PlanPath entry = PlanPath.of(pointer);
        Entries best = null;
        int most = 0;
        for (Entries row : TABLE) {
            int length = row.stepsIn(entry);
            if (length > most) {
                most = length;
                best = row;
            }
        }
        return Optional.ofNullable(best).map(Entries::place);
    }

    /** The place that asks for the entry at a JSON pointer; {@link #HOUSE} where none does. */
    public static PlaceKind of(String pointer) {
        return find(pointer).orElse(HOUSE);
    }

    /** The place with this part of the page's address; empty where there is none. */
    public static Optional<PlaceKind> findSlug(String slug) {
        return Arrays.stream(values()).filter(p -> p.slug.equals(slug)).findFirst();
    }
}
