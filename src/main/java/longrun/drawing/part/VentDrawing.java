package longrun.drawing.part;

import longrun.plan.Distance;
import longrun.plan.Fact;
import longrun.plan.Regulator;

/** A wall in elevation with its regulator, and what each distance of the vent is measured to. Not to scale. */
public final class VentDrawing {

    private static final int OUT_X = 280;
    private static final int OUT_Y = 128;

    private VentDrawing() {}

    /** What is measured from the relief outlet, with the distances entered. */
    public static String of(Regulator r) {
        StringBuilder out = new StringBuilder(
                "<svg class='draw vents' viewBox='0 0 720 270' style='width:720px' role='img' aria-label='");
        out.append(
                HookupSymbols.safe("The wall seen from outside. From the relief outlet of the regulator to an opening"
                        + " below it: " + said(r.ventToOpening()) + "; to a spark or flame: " + said(r.ventToIgnition())
                        + "; to an air intake: " + said(r.ventToIntake()) + "; to a vent terminal: "
                        + said(r.ventToVentTerminal()) + "."));
        out.append("'>");
        out.append(path(
                "ld",
                "M0 230H720M0 230l-8 8M60 230l-8 8M120 230l-8 8M180 230l-8 8M240 230l-8 8M300 230l-8 8"
                        + "M360 230l-8 8M420 230l-8 8M480 230l-8 8M540 230l-8 8M600 230l-8 8M660 230l-8 8"));
        out.append(path("p", "M250 230V100H" + (OUT_X - 16)));
        out.append("<circle class='pt' cx='").append(OUT_X).append("' cy='100' r='18'/>");
        out.append(path("pn", "M" + (OUT_X - 18) + " 100h36"));
        out.append(path("p", "M" + (OUT_X + 16) + " 100h40v-70"));
        out.append(path("pn", "M" + OUT_X + " 118v10m-6 0h12"));
        out.append(HookupSymbols.words("regulator", OUT_X - 28, 78, "end", "tq"));
        if (r.underEaves().is(true)) {
            out.append(path("pn", "M180 30H400l24 -14H156z"));
        }
        opening(out, r.ventToOpening());
        thing(
                out,
                520,
                66,
                path("pt", "M520 50h44v32h-44z") + path("pn", "M520 58h44m-44 8h44m-44 8h44"),
                "air intake",
                r.ventToIntake());
        thing(
                out,
                470,
                208,
                path("pt", "M470 190h56v40h-56z") + path("pn", "M494 222c-7-8 -2-12 2-22c2 9 8 13 2 22z"),
                "spark or flame",
                r.ventToIgnition());
        thing(
                out,
                560,
                138,
                "<circle class='pt' cx='576' cy='138' r='16'/><circle class='pn' cx='576' cy='138' r='9'/>",
                "vent terminal",
                r.ventToVentTerminal());
        out.append("<circle cx='").append(OUT_X).append("' cy='").append(OUT_Y);
        out.append("' r='4' style='fill:var(--accent)'/>");
        out.append(HookupSymbols.words("from the", OUT_X + 12, 164, "start", "ta halo"));
        out.append(HookupSymbols.words("relief outlet", OUT_X + 12, 182, "start", "ta halo"));
        return out.append("</svg>").toString();
    }

    /** The opening is measured level along the wall, since only what lies below the vent counts. */
    private static void opening(StringBuilder out, Fact<Distance> distance) {
        String pen = distance.isNone() ? "pn hidden-part" : "pt";
        out.append(path(pen, "M60 138h70v66h-70z")).append(path("ld", "M95 138v66m-35 -33h70"));
        out.append(path("ld dim", "M130 " + OUT_Y + "H" + OUT_X + "M130 " + OUT_Y + "l8 -3v6z"));
        out.append(path("ld", "M130 138V118"));
        out.append(HookupSymbols.words("opening below the vent", 60, 222, "start", "tq"));
        out.append(HookupSymbols.words(said(distance), 190, 120, "middle", "halo"));
    }

    private static void thing(StringBuilder out, int x, int y, String symbol, String name, Fact<Distance> distance) {
        out.append(distance.isNone() ? symbol.replace("class='pt'", "class='pn hidden-part'") : symbol);
        out.append(path("ld", "M" + OUT_X + " " + OUT_Y + "L" + x + " " + y));
        out.append(HookupSymbols.words(name, x + 64, y, "start", "tq"));
        out.append(HookupSymbols.words(said(distance), x + 64, y + 18, "start", "halo"));
    }

    private static String said(Fact<Distance> distance) {
        if (distance.isNone()) {
            return "there is none";
        }
        return distance.findText().map(t -> t.replace(">", "over")).orElse("not known");
    }

    private static String path(String pen, String d) {
        return HookupSymbols.path(pen, d);
    }
}
