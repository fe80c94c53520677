package longrun.ui.house;

import java.util.List;
import java.util.function.Function;
import longrun.ui.house.fuel.FuelView;
import longrun.ui.house.tank.TankView;

/** The places of a house in the order of the thread; each holds the entries below its pointers. */
public enum PlaceKind {
    HOUSE(
            "house",
            "House",
            "What the house is, where it stands, and how the pressure is cut down. Any order will do.",
            List.of("/name", "/regulators", "/site", "/rooms", "/code", "/format"),
            HousePlace::new),
    APPLIANCES(
            "appliances",
            "Appliances",
            "Everything that burns gas, each from its own rating plate.",
            List.of("/appliances"),
            AppliancesPlace::new),
    TANK(
            "tank",
            "Tank",
            "Liquid turns to gas by the warmth of the air on the wetted steel: the colder and the emptier, the less.",
            List.of("/tank", "/tanks", "/site/groundTemp"),
            TankView::new),
    FUEL(
            "fuel",
            "Fuel",
            "What the house burns through the year, how long a fill lasts, and when to call.",
            List.of("/use", "/deliveries", "/site/monthlyMeanTemp", "/site/leadDays", "/site/unreachable"),
            FuelView::new),
    FINDINGS(
            "findings",
            "Findings",
            "What is wrong or doubtful, and the questions to take along, by who can answer.",
            List.of(),
            FindingsPlace::new);

    private final String slug;
    private final String title;
    private final String lede;
    private final List<String> pointers;
    private final Function<HouseDesk, Place> maker;

    PlaceKind(String slug, String title, String lede, List<String> pointers, Function<HouseDesk, Place> maker) {
        this.slug = slug;
        this.title = title;
        this.lede = lede;
        this.pointers = pointers;
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
    boolean holds(String pointer) {
        return of(pointer) == this && depth(pointer) > 0;
    }

    /** How much of a pointer this place's nearest pointer covers; 0 where none does. */
    private int depth(String pointer) {
        return pointers.stream()
                .filter(p -> pointer.equals(p) || pointer.startsWith(p + "/"))
                .mapToInt(String::length)
                .max()
                .orElse(0);
    }

    /** The place an entry stands in, by the pointer that covers most of it; the first where no place holds it. */
    static PlaceKind of(String pointer) {
        PlaceKind best = HOUSE;
        for (PlaceKind each : values()) {
            if (each.depth(pointer) > best.depth(pointer)) {
                best = each;
            }
        }
        return best;
    }

    static PlaceKind ofSlug(String slug) {
        for (PlaceKind each : values()) {
            if (each.slug.equals(slug)) {
                return each;
            }
        }
        return HOUSE;
    }
}
