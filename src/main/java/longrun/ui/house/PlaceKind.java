package longrun.ui.house;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.function.Function;

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
    CONNECTIONS(
            "connections",
            "Connections",
            "Each appliance\u2019s last parts, in the order the gas meets them, from the end of the pipe to the burner.",
            List.of(
                    "/appliances/*/connection",
                    "/regulators/*/setting",
                    "/regulators/*/capacity",
                    "/regulators/*/vent",
                    "/regulators/*/ventToOpening",
                    "/regulators/*/ventToIgnition",
                    "/regulators/*/ventToIntake",
                    "/regulators/*/ventToVentTerminal",
                    "/regulators/*/underEaves",
                    "/regulators/*/shutoffBefore",
                    "/regulators/*/teeBefore",
                    "/regulators/*/teeAfter",
                    "/regulators/*/unionWithin",
                    "/regulators/*/access",
                    "/site/mainShutoff"),
            ConnectionsPlace::new),
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

    /** Whether anything of this place is entered. */
    boolean begun(JsonNode draft) {
        return pointers.stream().filter(p -> !p.equals("/format")).anyMatch(p -> stands(draft, p.substring(1)));
    }

    private static boolean stands(JsonNode at, String path) {
        int slash = path.indexOf('/');
        String name = slash < 0 ? path : path.substring(0, slash);
        String rest = slash < 0 ? "" : path.substring(slash + 1);
        if (name.equals("*")) {
            for (JsonNode each : at) {
                if (stands(each, rest)) {
                    return true;
                }
            }
            return false;
        }
        JsonNode next = at.path(name);
        return !next.isMissingNode() && (rest.isEmpty() || stands(next, rest));
    }

    /** How closely a place holds an entry: the steps of the pointer it is held by, 0 where it does not. */
    private int closeness(String pointer) {
        String[] entry = pointer.split("/", -1);
        return pointers.stream()
                .map(p -> p.split("/", -1))
                .filter(p -> leadsTo(p, entry))
                .mapToInt(p -> p.length)
                .max()
                .orElse(0);
    }

    private static boolean leadsTo(String[] held, String[] entry) {
        for (int i = 0; i < held.length; i++) {
            if (i >= entry.length || !(held[i].equals("*") || held[i].equals(entry[i]))) {
                return false;
            }
        }
        return true;
    }

    /** The place an entry stands in, that which holds it most closely; the first where no place holds it. */
    static PlaceKind of(String pointer) {
        PlaceKind closest = HOUSE;
        for (PlaceKind each : values()) {
            if (each.closeness(pointer) > closest.closeness(pointer)) {
                closest = each;
            }
        }
        return closest;
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
