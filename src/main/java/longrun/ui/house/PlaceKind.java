package longrun.ui.house;

import java.util.List;
import java.util.function.Function;
import longrun.ui.house.route.RouteView;

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
    ROUTE(
            "route",
            "Pipe route",
            "From the regulator outward, as you would pace it. Enter for the next line; a list from elsewhere can be pasted.",
            List.of("/sections", "/fittingAllowance"),
            RouteView::new),
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
        return pointers.stream().anyMatch(p -> pointer.equals(p) || pointer.startsWith(p + "/"));
    }

    /** The place an entry stands in; the first where no place holds it. */
    static PlaceKind of(String pointer) {
        for (PlaceKind each : values()) {
            if (each.holds(pointer)) {
                return each;
            }
        }
        return HOUSE;
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
