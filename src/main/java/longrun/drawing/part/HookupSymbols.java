package longrun.drawing.part;

import longrun.plan.choice.PartKind;

/** The symbols of the parts between pipe and appliance; each begins at (x, y) on the pipe's line and ends {@link #width} on. */
final class HookupSymbols {

    /** How far the pipe comes down at a trap whose gas turns. */
    static final int DROP = 40;

    private static final int NIPPLE = 44;

    private HookupSymbols() {}

    /** Pixels along the pipe. */
    static int width(PartKind kind) {
        return switch (kind) {
            case SHUTOFF -> 56;
            case UNION -> 44;
            case SEDIMENT_TRAP -> 56;
            case BUILT_IN_TRAP -> 36;
            case RIGID_PIPE -> 80;
            case FLEXIBLE_CONNECTOR -> 116;
        };
    }

    /** Pipe along its line. */
    static String pipe(int x, int y, int length) {
        return length <= 0 ? "" : path("p", "M" + x + " " + y + "h" + length);
    }

    static String shutoff(int x, int y) {
        return pipe(x, y, 56)
                + path("pt", "M" + (x + 14) + " " + (y - 11) + "v22l28 -22v22z")
                + path("pn", "M" + (x + 28) + " " + y + "v-18m-9 0h18");
    }

    static String union(int x, int y) {
        return pipe(x, y, 44) + "<rect class='pt' x='" + (x + 12) + "' y='" + (y - 9) + "' width='20' height='18'/>"
                + path("pn", "M" + (x + 19) + " " + (y - 9) + "v18m6 0v-18");
    }

    /**
     * A tee with its capped nipple.
     *
     * @param turns whether gas turns in the tee: in at the top, out at the branch
     * @param down whether the cap hangs straight down
     */
    static String trap(int x, int y, boolean turns, boolean down) {
        int tee = x + 28;
        int out = turns ? y + DROP : y;
        String along = turns ? path("p", "M" + x + " " + y + "H" + tee + "V" + out + "H" + (x + 56)) : pipe(x, y, 56);
        return along
                + (down
                        ? path("p", "M" + tee + " " + out + "v" + NIPPLE)
                                + path("p cap", "M" + (tee - 9) + " " + (out + NIPPLE) + "h18")
                        : path("p", "M" + tee + " " + out + "l-22 30")
                                + path("p cap", "M" + (tee - 30) + " " + (out + 25) + "l15 11"));
    }

    static String connector(int x, int y, boolean concealed) {
        StringBuilder zig = new StringBuilder("M" + (x + 14) + " " + y + "l4 -8");
        for (int i = 0; i < 10; i++) {
            zig.append(i % 2 == 0 ? "l8 16" : "l8 -16");
        }
        zig.append("l4 8");
        return pipe(x, y, 14) + path(concealed ? "pn hidden-part" : "pn", zig.toString()) + pipe(x + 102, y, 14);
    }

    /** A wall the line passes. */
    static String wall(int x, int y) {
        StringBuilder hatch = new StringBuilder();
        for (int i = -44; i < 44; i += 11) {
            hatch.append("M").append(x - 5).append(" ").append(y + i + 10).append("l10 -8");
        }
        return path("ld", "M" + (x - 5) + " " + (y - 44) + "v88m10 0v-88") + path("ld", hatch.toString());
    }

    /** The appliance: its box, a burner, and the trap its maker built in. */
    static String appliance(int x, int y, int top, int height, boolean trapInside) {
        int base = top + height / 2;
        StringBuilder out = new StringBuilder(
                "<rect class='pt' x='" + x + "' y='" + top + "' width='96' height='" + height + "' rx='3'/>");
        out.append(path("pn", "M" + x + " " + y + "h14V" + base + "h12"));
        out.append(path("pn", "M" + (x + 26) + " " + base + "h50"));
        for (int i = 0; i < 4; i++) {
            out.append(path("pn", "M" + (x + 33 + i * 12) + " " + (base - 2) + "c-4-5 -1-8 0-13c1 5 4 8 0 13z"));
        }
        if (trapInside) {
            out.append(path("pn", "M" + (x + 14) + " " + y + "v18m-6 0h12"));
        }
        return out.toString();
    }

    static String path(String pen, String d) {
        return "<path class='" + pen + "' d='" + d + "'/>";
    }

    static String words(String text, int x, int y, String anchor, String pen) {
        return "<text x='" + x + "' y='" + y + "' text-anchor='" + anchor + "'"
                + (pen.isEmpty() ? "" : " class='" + pen + "'") + ">" + safe(text) + "</text>";
    }

    /** Text made safe inside mark-up. */
    static String safe(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("'", "&#39;");
    }
}
