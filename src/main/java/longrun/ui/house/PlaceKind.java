package longrun.ui.house;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import longrun.ui.house.fuel.FuelView;
import longrun.ui.house.route.RouteView;
import longrun.ui.house.tank.TankView;

/** The places of a house in the order of the thread; each holds the entries whose pointers it names. */
public enum PlaceKind {
    HOUSE(
            "house",
            "House",
            "What the house is, where it stands, and how the pressure is cut down. Any order will do.",
            "/(name|rooms|code|format)(/.*)?|/site(/(?!mainShutoff|groundTemp|monthlyMeanTemp|leadDays|unreachable|coldWater).*)?"
                    + "|/regulators(/[0-9]+(/(?!setting|vent|underEaves|shutoffBefore|tee|unionWithin|access).*)?)?",
            HousePlace::new),
    APPLIANCES(
            "appliances",
            "Appliances",
            "Everything that burns gas, each from its own rating plate.",
            "/appliances(/[0-9]+(/(?!connection|fedBy).*)?)?",
            AppliancesPlace::new),
    ROUTE(
            "route",
            "Pipe route",
            "From the regulator outward, as you would pace it. Enter for the next section; a list from elsewhere can"
                    + " be pasted.",
            "/(sections|fittingAllowance|availableSizes|tubingTables|useMemoryTables|readings)(/.*)?|/appliances/[0-9]+/fedBy",
            RouteView::new),
    CONNECTIONS(
            "connections",
            "Connections",
            "Each appliance\u2019s last parts, in the order the gas meets them, from the end of the pipe to the"
                    + " burner.",
            "/appliances/[0-9]+/connection(/.*)?|/site/mainShutoff(/.*)?|/regulators/[0-9]+/(setting|vent.*|underEaves"
                    + "|shutoffBefore|teeBefore|teeAfter|unionWithin|access)",
            ConnectionsPlace::new),
    TANK(
            "tank",
            "Tank",
            "Liquid turns to gas by the warmth of the air on the wetted steel: the colder and the emptier, the less.",
            "/(tank|tanks)(/.*)?|/site/groundTemp",
            TankView::new),
    FUEL(
            "fuel",
            "Fuel",
            "What the house burns through the year, how long a fill lasts, and when to call.",
            "/(use|deliveries)(/.*)?|/site/(monthlyMeanTemp|leadDays|unreachable|coldWater)(/.*)?",
            FuelView::new),
    FINDINGS(
            "findings",
            "Findings",
            "What is wrong or doubtful, and the questions to take along, by who can answer.",
            "",
            FindingsPlace::new);

    private final String slug;
    private final String title;
    private final String lede;
    private final Pattern pointers;
    private final Function<HouseDesk, Place> maker;

    PlaceKind(String slug, String title, String lede, String pointers, Function<HouseDesk, Place> maker) {
        this.slug = slug;
        this.title = title;
        this.lede = lede;
        this.pointers = Pattern.compile(pointers);
        this.maker = maker;
    }

    /** Its part of the address. */
    public String slug() {
        return slug;
    }

    public String title() {
        return title;
    }

    String lede() {
        return lede;
    }

    Place make(HouseDesk desk) {
        return maker.apply(desk);
    }

    /** Whether an entry stands in this place. */
    public boolean holds(String pointer) {
        return !pointer.isEmpty() && pointers.matcher(pointer).matches();
    }

    /** The place an entry stands in; empty where no page asks for it yet. */
    static Optional<PlaceKind> find(String pointer) {
        return Arrays.stream(values()).filter(p -> p.holds(pointer)).findFirst();
    }

    /** The place an entry stands in; the first where no page asks for it yet. */
    static PlaceKind of(String pointer) {
        return find(pointer).orElse(HOUSE);
    }

    /** The place at a part of the address; empty where there is none. */
    static Optional<PlaceKind> findSlug(String slug) {
        return Arrays.stream(values()).filter(p -> p.slug.equals(slug)).findFirst();
    }
}
