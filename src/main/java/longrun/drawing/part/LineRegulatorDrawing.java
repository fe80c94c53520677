package longrun.drawing.part;

import longrun.plan.Fact;
import longrun.plan.Regulator;

/** A line regulator in flow order: shutoff, tee, union, the regulator with its vent, tee. */
public final class LineRegulatorDrawing {

    private static final int Y = 110;

    private LineRegulatorDrawing() {}

    /** What is fitted in full line; what is not fitted or not known dotted, with its word. */
    public static String of(Regulator r) {
        StringBuilder out = new StringBuilder(
                "<svg class='draw' viewBox='0 0 640 190' style='width:640px' role='img' aria-label='");
        out.append(HookupSymbols.safe("Line regulator, in the order the gas meets them: shutoff "
                + yes(r.shutoffBefore()) + ", tee before " + yes(r.teeBefore()) + ", union " + within(r)
                + ", regulator with vent " + vent(r) + ", tee after " + yes(r.teeAfter()) + "."));
        out.append("'>").append(path("p", "M0 " + Y + "H640"));
        out.append(HookupSymbols.words("gas", 0, Y - 24, "start", "tq"));
        out.append(path("ld", "M28 " + (Y - 29) + "h26m-7 -4l7 4l-7 4"));
        piece(out, 100, "shutoff", yes(r.shutoffBefore()), r.shutoffBefore().is(true), "M-14 -11v22l28 -22v22z");
        piece(out, 210, "tee, plugged", yes(r.teeBefore()), r.teeBefore().is(true), "M0 0v-26m-8 0h16");
        piece(out, 320, "union", within(r), r.unionWithin().isKnown(), "M-10 -9h20v18h-20zM-3 -9v18m6 0v-18");
        out.append("<circle class='pt' cx='430' cy='").append(Y).append("' r='22'/>");
        out.append(path("pn", "M408 " + Y + "h44"));
        out.append(HookupSymbols.words("regulator", 430, Y + 46, "middle", ""));
        out.append(path(r.vent().isKnown() ? "pn" : "pn hidden-part", "M430 " + (Y - 22) + "v-34m-5 8l5 -8l5 8"));
        out.append(HookupSymbols.words("vent: " + vent(r), 430, Y - 66, "middle", "halo"));
        piece(out, 550, "tee, plugged", yes(r.teeAfter()), r.teeAfter().is(true), "M0 0v-26m-8 0h16");
        return out.append("</svg>").toString();
    }

    private static void piece(StringBuilder out, int x, String name, String said, boolean fitted, String d) {
        out.append("<g transform='translate(").append(x).append(' ').append(Y).append(")'>");
        out.append(path(fitted ? "pt" : "pn hidden-part", d)).append("</g>");
        out.append(HookupSymbols.words(name, x, Y + 46, "middle", ""));
        out.append(HookupSymbols.words(said, x, Y + 64, "middle", "tq"));
    }

    private static String yes(Fact<Boolean> fact) {
        return fact.is(true) ? "fitted" : fact.isUnknown() ? "not known" : "none fitted";
    }

    private static String within(Regulator r) {
        return r.unionWithin().isNone()
                ? "none fitted"
                : r.unionWithin().findText().map(t -> t + " away").orElse("not known");
    }

    private static String vent(Regulator r) {
        return r.vent()
                .fold(
                        v -> switch (v) {
                            case OUTDOORS -> "outdoors";
                            case LIMITER -> "limiter";
                            case PIPED -> "piped outdoors";
                        },
                        () -> "there is none",
                        () -> "not known");
    }

    private static String path(String pen, String d) {
        return HookupSymbols.path(pen, d);
    }
}
