package longrun.drawing.part;

import longrun.plan.Section;
import longrun.plan.choice.Material;
import longrun.plan.choice.Under;

/** A buried section cut across: the ground, the cover over the pipe, the wire beside it, what stands above. Not to scale. */
public final class TrenchDrawing {

    private static final int GROUND = 64;
    private static final int PIPE_X = 150;
    private static final int PIPE_Y = 176;
    private static final int RADIUS = 16;

    private TrenchDrawing() {}

    /** The trench with what was entered of it; what was not entered says so. */
    public static String of(Section s) {
        boolean plastic = s.material().is(m -> m == Material.PE_PIPE || m == Material.PE_TUBING);
        boolean steel = s.material().is(m -> m == Material.STEEL);
        String cover = EntryText.distance(s.depth());
        String wire = EntryText.text(s.tracerWire(), "no wire");
        String coat = EntryText.yesNo(s.coated(), "coated", "not coated");
        String above = above(s);
        StringBuilder out = new StringBuilder(
                "<svg class='draw trench' viewBox='0 0 420 240' style='width:420px' role='img' aria-label='");
        out.append(HookupSymbols.safe("Section " + s.id() + " cut across its trench. Cover over the pipe: " + cover
                + (plastic ? "; tracer wire: " + wire : "") + (steel ? "; " + coat : "")
                + (above.isEmpty() ? "" : "; above it: " + above) + "."));
        out.append("'>");
        out.append(path("ld", "M0 " + GROUND + "H420"));
        StringBuilder hatch = new StringBuilder();
        for (int x = 10; x < 420; x += 30) {
            hatch.append("M").append(x).append(" ").append(GROUND).append("l-8 8");
        }
        out.append(path("ld", hatch.toString()));
        out.append(path("pn hidden-part", "M96 " + GROUND + "V216H204V" + GROUND));
        if (!above.isEmpty()) {
            out.append(path("pt", "M60 " + (GROUND - 22) + "h180v22h-180z"));
            out.append(HookupSymbols.words(above, 150, GROUND - 30, "middle", "tq"));
        } else {
            out.append(HookupSymbols.words("ground", 0, GROUND - 10, "start", "tq"));
        }
        circle(out, PIPE_X, PIPE_Y, RADIUS, "pt");
        if (steel && s.coated().is(true)) {
            circle(out, PIPE_X, PIPE_Y, RADIUS + 5, "pn");
        }
        circle(out, PIPE_X, PIPE_Y, RADIUS - 6, "pn");
        int top = PIPE_Y - RADIUS;
        out.append(path("ld dim", "M226 " + GROUND + "V" + top + "M220 " + top + "h12M220 " + GROUND + "h12"));
        out.append(HookupSymbols.words(cover, 240, (GROUND + top) / 2 + 6, "start", ""));
        out.append(HookupSymbols.words("cover", 240, (GROUND + top) / 2 + 24, "start", "tq"));
        if (plastic) {
            boolean none = s.tracerWire().isNone();
            out.append("<circle class='").append(none ? "pn hidden-part" : "pt").append("' cx='122' cy='196' r='4'/>");
            out.append(path("ld", "M126 198L236 206"));
            out.append(HookupSymbols.words(wire.equals("no wire") ? wire : "wire: " + wire, 240, 212, "start", ""));
        } else if (steel) {
            out.append(path("ld", "M172 186L236 206"));
            out.append(HookupSymbols.words(s.coated().isKnown() ? coat : "coating: " + coat, 240, 212, "start", ""));
        }
        return out.append("</svg>").toString();
    }

    private static String above(Section s) {
        return s.under()
                .findValue()
                .map(u -> u == Under.DRIVE ? "a drive" : u == Under.SLAB ? "a slab" : "a building")
                .orElse("");
    }

    private static void circle(StringBuilder out, int x, int y, int r, String pen) {
        out.append("<circle class='")
                .append(pen)
                .append("' cx='")
                .append(x)
                .append("' cy='")
                .append(y);
        out.append("' r='").append(r).append("'/>");
    }

    private static String path(String pen, String d) {
        return HookupSymbols.path(pen, d);
    }
}
