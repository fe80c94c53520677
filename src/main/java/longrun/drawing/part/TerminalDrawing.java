package longrun.drawing.part;

import java.util.Optional;
import longrun.plan.Appliance;
import longrun.plan.Fact;
import longrun.plan.Site;
import longrun.quantity.Length;

/** A wall in elevation with the end of an appliance's vent: above the ground, above the snow, beside a regulator. Not to scale. */
public final class TerminalDrawing {

    private static final int GROUND = 210;
    private static final int SNOW = 176;
    private static final int X = 170;
    private static final int Y = 96;

    private TerminalDrawing() {}

    /**
     * The wall with the distances entered.
     *
     * @param called the appliance within a sentence
     */
    public static String of(Appliance a, String called, Fact<Length> snow) {
        String above = EntryText.distance(a.terminalAboveGrade());
        String beside = EntryText.distance(a.terminalToRegulator());
        String lies = EntryText.text(snow, "no snow");
        StringBuilder out = new StringBuilder(
                "<svg class='draw terminal' viewBox='0 0 520 240' style='width:520px' role='img' aria-label='");
        out.append(HookupSymbols.safe("The wall seen from outside. The vent of " + called + " ends above the ground: "
                + above + "; snow lies: " + lies + "; to the relief outlet of a regulator: " + beside + "."));
        out.append("'>");
        StringBuilder hatch = new StringBuilder("M0 " + GROUND + "H520");
        for (int x = 10; x < 520; x += 30) {
            hatch.append("M").append(x).append(" ").append(GROUND).append("l-8 8");
        }
        out.append(path("ld", hatch.toString()));
        if (!snow.isNone()) {
            out.append(path("pn hidden-part", "M0 " + SNOW + "c60 -8 120 8 180 0s120 8 180 0 110 -6 160 0"));
            out.append(HookupSymbols.words("snow: " + lies, 8, SNOW - 8, "start", "tq"));
        }
        out.append("<circle class='pt' cx='")
                .append(X)
                .append("' cy='")
                .append(Y)
                .append("' r='18'/>");
        out.append("<circle class='pn' cx='")
                .append(X)
                .append("' cy='")
                .append(Y)
                .append("' r='10'/>");
        out.append(HookupSymbols.words("end of the vent", X - 28, Y - 30, "middle", "tq"));
        out.append(path("ld dim", "M" + X + " " + (Y + 18) + "V" + GROUND + "M" + (X - 6) + " " + (Y + 18) + "h12"));
        out.append(HookupSymbols.words(above, X + 10, (Y + GROUND) / 2 + 12, "start", "halo"));
        String pen = a.terminalToRegulator().isNone() ? "pn hidden-part" : "pt";
        out.append("<circle class='").append(pen).append("' cx='400' cy='80' r='18'/>");
        out.append(path("pn", "M382 80h36M400 98v10m-6 0h12"));
        out.append(HookupSymbols.words("regulator", 400, 50, "middle", "tq"));
        if (!a.terminalToRegulator().isNone()) {
            out.append(path("ld", "M" + (X + 18) + " " + Y + "L400 108"));
        }
        out.append(HookupSymbols.words(beside, 290, 92, "middle", "halo"));
        return out.append("</svg>").toString();
    }

    /** The same by the snow of the site. */
    public static String of(Appliance a, String called, Optional<Site> site) {
        return of(a, called, site.map(Site::snowDepth).orElse(Fact.unknown()));
    }

    private static String path(String pen, String d) {
        return HookupSymbols.path(pen, d);
    }
}
