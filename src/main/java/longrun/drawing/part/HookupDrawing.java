package longrun.drawing.part;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import longrun.plan.Appliance.Part;
import longrun.plan.choice.PartKind;
import longrun.plan.choice.ShutoffPlace;
import org.jspecify.annotations.Nullable;

/** An appliance's parts from the end of the pipe to the burner, in the order the gas meets them. */
public final class HookupDrawing {

    private static final int TOP = 66;
    private static final int START = 56;
    private static final int LETTER = 8;
    private static final int EDGE = 8;

    /** How much room there is. */
    private enum Room {
        /** Whole names, and every distance. */
        WIDE,
        /** For a phone: short names, close together. */
        NARROW,
        /** An example: short names alone. */
        SMALL
    }

    private final String appliance;
    private final List<Part> parts;
    private final Set<Integer> wrong;
    private final List<Integer> right;
    private final StringBuilder out = new StringBuilder();
    private final int[] left;
    private final int[] level;
    private final int end;
    private final int bottom;

    private final Room room;

    private HookupDrawing(String appliance, List<Part> parts, Set<Integer> wrong, List<Integer> right, Room room) {
        this.room = room;
        this.appliance = appliance;
        this.parts = List.copyOf(parts);
        this.wrong = Set.copyOf(wrong);
        this.right = List.copyOf(right);
        left = new int[parts.size() + 1];
        level = new int[parts.size() + 1];
        left[0] = switch (room) {
            case WIDE -> START;
            case NARROW -> 20;
            case SMALL -> 24;
        };
        level[0] = TOP;
        for (int i = 0; i < parts.size(); i++) {
            left[i + 1] = left[i] + slot(i);
            level[i + 1] = level[i] + (kind(i) == PartKind.SEDIMENT_TRAP && turns(i) ? HookupSymbols.DROP : 0);
        }
        end = left[parts.size()] + lead();
        bottom = level[parts.size()] + 74;
    }

    /**
     * The parts as entered.
     *
     * @param appliance what it is called
     * @param wrong indices of the parts that are marked
     * @param right indices in the right order, to show where a marked part belongs; empty to show nothing
     * @return an SVG text with the pens of the style sheet
     */
    public static String of(String appliance, List<Part> parts, Set<Integer> wrong, List<Integer> right) {
        return new HookupDrawing(appliance, parts, wrong, right, Room.WIDE).draw();
    }

    /** The same for a phone: short names, and the parts closer together. */
    public static String narrow(String appliance, List<Part> parts, Set<Integer> wrong, List<Integer> right) {
        return new HookupDrawing(appliance, parts, wrong, right, Room.NARROW).draw();
    }

    /** The parts small, with short names and without distances: an example, or the right order beside a wrong one. */
    public static String small(String appliance, List<Part> parts) {
        return new HookupDrawing(appliance, parts, Set.of(), List.of(), Room.SMALL).draw();
    }

    /** What a part is called. */
    public static String name(@Nullable PartKind kind) {
        return kind == null
                ? "part not named"
                : Arrays.stream(kind.written().split("-")).collect(Collectors.joining(" "));
    }

    /** The parts in words, for whoever does not see the drawing. */
    public static String inWords(String appliance, List<Part> parts) {
        String row = parts.stream()
                .map(p -> name(p.part().findValue().orElse(null)) + (p.isSeen() ? "" : " (assumed, not seen)"))
                .collect(Collectors.joining(", "));
        return "From the end of the pipe to " + appliance + ": " + (parts.isEmpty() ? "no part is entered" : row) + ".";
    }

    private @Nullable PartKind kind(int i) {
        return parts.get(i).part().findValue().orElse(null);
    }

    private boolean turns(int i) {
        return !parts.get(i).gasTurns().is(false);
    }

    private String label(int i) {
        if (room != Room.WIDE) {
            PartKind kind = kind(i);
            String number = room == Room.NARROW ? (i + 1) + " " : "";
            return number
                    + (kind == null
                            ? "?"
                            : switch (kind) {
                                case SHUTOFF -> "shutoff";
                                case UNION -> "union";
                                case SEDIMENT_TRAP -> "trap";
                                case BUILT_IN_TRAP -> "inner trap";
                                case RIGID_PIPE -> "pipe";
                                case FLEXIBLE_CONNECTOR -> "connector";
                            });
        }
        String name = name(kind(i));
        return (i + 1) + "  " + name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }

    private int symbolWidth(int i) {
        PartKind kind = kind(i);
        return kind == null ? 48 : HookupSymbols.width(kind);
    }

    private int slot(int i) {
        return switch (room) {
            case WIDE -> Math.max(symbolWidth(i) + 12, label(i).length() * LETTER + 10);
            case NARROW -> Math.max(symbolWidth(i), label(i).length() * (LETTER - 1) + 2);
            case SMALL -> Math.max(symbolWidth(i), label(i).length() * LETTER + 2);
        };
    }

    /** Pipe between the last part and the appliance. */
    private int lead() {
        return room == Room.NARROW ? 8 : 24;
    }

    private int middle(int i) {
        return left[i] + slot(i) / 2;
    }

    private String draw() {
        int box = end + 96;
        String name = parts.isEmpty() && room == Room.WIDE ? appliance : cut(appliance); // nothing beside it
        int half = name.length() * LETTER / 2;
        boolean outward = half > 48; // a long name ends with the box, so that no edge cuts it
        int width = box + EDGE / 2;
        int height = bottom + 34 + (parts.stream().allMatch(Part::isSeen) ? 0 : 18);
        out.append("<svg class='draw hookup' viewBox='")
                .append(-EDGE)
                .append(" 0 ")
                .append(width + EDGE)
                .append(' ')
                .append(height);
        out.append("' style='width:").append(width + EDGE).append("px;min-width:");
        out.append((width + EDGE) * 17 / 20).append("px' role='img' aria-label='"); // smaller letters are not read
        out.append(HookupSymbols.safe(inWords(appliance, parts) + marked())).append("'>");
        out.append(HookupSymbols.pipe(0, TOP, left[0]));
        out.append(HookupSymbols.path("pn", "M0 " + (TOP - 12) + "c6 8 -6 16 0 24"));
        if (room != Room.SMALL) {
            out.append(HookupSymbols.words("gas", 0, TOP - 24, "start", "tq"));
        }
        if (room == Room.WIDE) {
            out.append(HookupSymbols.path("ld", "M28 " + (TOP - 29) + "h26m-7 -4l7 4l-7 4"));
        }
        for (int i = 0; i < parts.size(); i++) {
            part(i);
        }
        int y = level[parts.size()];
        out.append(HookupSymbols.pipe(left[parts.size()], y, lead()));
        boolean trapInside = IntStream.range(0, parts.size()).anyMatch(i -> kind(i) == PartKind.BUILT_IN_TRAP);
        out.append(HookupSymbols.appliance(end, y, TOP - 22, bottom - TOP + 22, trapInside));
        out.append(
                HookupSymbols.words(name, outward ? box : end + 48, bottom + 24, outward ? "end" : "middle", "halo"));
        if (room != Room.SMALL) {
            reach();
            belongs();
        }
        return out.append("</svg>").toString();
    }

    private String marked() {
        return wrong.isEmpty()
                ? ""
                : " Marked as wrong: "
                        + wrong.stream().sorted().map(i -> name(kind(i))).collect(Collectors.joining(", ")) + ".";
    }

    private static String cut(String name) {
        return name.length() > 18 ? name.substring(0, 17) + "\u2026" : name;
    }

    private void part(int i) {
        int x = left[i];
        int y = level[i];
        int lead = (slot(i) - symbolWidth(i)) / 2;
        int at = x + lead;
        Part part = parts.get(i);
        PartKind kind = kind(i);
        out.append("<g class='hp' data-part='").append(i).append("'>");
        out.append("<rect class='grip' x='").append(x).append("' y='").append(TOP - 30);
        out.append("' width='")
                .append(slot(i))
                .append("' height='")
                .append(bottom - TOP + 60)
                .append("'/>");
        out.append(HookupSymbols.pipe(x, y, lead));
        out.append(symbol(part, kind, at, y));
        int after = at + symbolWidth(i);
        out.append(HookupSymbols.pipe(after, level[i + 1], x + slot(i) - after));
        int foot = kind == PartKind.SEDIMENT_TRAP ? level[i + 1] + 54 : y + 22;
        out.append(HookupSymbols.path("ld", "M" + middle(i) + " " + foot + "V" + (bottom + 8)));
        out.append(HookupSymbols.words(
                label(i), middle(i), bottom + 24, "middle", wrong.contains(i) ? "tm halo" : "halo"));
        if (!part.isSeen()) {
            out.append(HookupSymbols.words("not seen", middle(i), bottom + 42, "middle", "tq"));
        }
        if (wrong.contains(i)) {
            int low = foot + 2;
            out.append(HookupSymbols.path(
                    "mark-wrong",
                    "M" + (at - 4) + " " + (y - 10) + "v-16h14M" + (after + 4) + " " + (low - 14) + "v14h-14"));
        }
        out.append("</g>");
    }

    private static String symbol(Part part, @Nullable PartKind kind, int x, int y) {
        if (kind == null) {
            return "<rect class='pn hidden-part' x='" + x + "' y='" + (y - 14) + "' width='48' height='28'/>"
                    + HookupSymbols.words("?", x + 24, y + 5, "middle", "");
        }
        return switch (kind) {
            case SHUTOFF ->
                HookupSymbols.shutoff(x, y) + (part.sameRoom().is(false) ? HookupSymbols.wall(x + 56, y) : "");
            case UNION -> HookupSymbols.union(x, y);
            case SEDIMENT_TRAP ->
                HookupSymbols.trap(
                        x, y, !part.gasTurns().is(false), !part.capPointsDown().is(false));
            case BUILT_IN_TRAP ->
                HookupSymbols.pipe(x, y, 36) + "<circle class='pt' cx='" + (x + 18) + "' cy='" + y + "' r='5'/>";
            case RIGID_PIPE -> HookupSymbols.pipe(x, y, 80);
            case FLEXIBLE_CONNECTOR ->
                HookupSymbols.connector(x, y, part.concealed().is(true))
                        + (part.throughWall().is(true) ? HookupSymbols.wall(x + 58, y) : "");
        };
    }

    /** How far the shutoff is, between the valve and the appliance. */
    private void reach() {
        for (int i = 0; i < parts.size(); i++) {
            Optional<String> distance = parts.get(i).distance().findText();
            boolean near = !parts.get(i).place().is(p -> p != ShutoffPlace.APPLIANCE);
            if (kind(i) == PartKind.SHUTOFF && distance.isPresent() && near) {
                int from = middle(i);
                out.append(HookupSymbols.path(
                        "ld", "M" + from + " " + (level[i] - 22) + "V20M" + end + " " + (TOP - 26) + "V20"));
                out.append(HookupSymbols.path(
                        "ld dim", "M" + from + " 26H" + end + "M" + from + " 26l8 -3v6zM" + end + " 26l-8 -3v6z"));
                out.append(HookupSymbols.words(
                        cut(distance.get()) + ", valve to appliance", (from + end) / 2, 18, "middle", "halo"));
                return;
            }
        }
    }

    /** Where the first marked part belongs, if it is not there. */
    private void belongs() {
        for (int i : wrong) {
            int place = right.indexOf(i);
            if (place >= 0 && place != i) {
                int gap = place == 0 ? left[0] : left[right.get(place - 1) + 1];
                gap = place > i ? Math.max(gap, left[i + 1]) : Math.min(gap, left[i]);
                int from = middle(i);
                int low = bottom + 12;
                int to = gap;
                int tip = level[place > i ? Math.min(place + 1, parts.size()) : place] + 22;
                out.append(HookupSymbols.path(
                        "belongs",
                        "M" + from + " " + (low - 30) + "C" + from + " " + (low + 6) + " " + to + " " + (low + 6) + " "
                                + to + " " + (tip)));
                out.append(HookupSymbols.path("belongs-tip", "M" + (to - 5) + " " + (tip + 10) + "l5 -10l5 10"));
                out.append(HookupSymbols.words("belongs here", to + 10, level[parts.size()] + 50, "start", "ta halo"));
                return;
            }
        }
    }
}
