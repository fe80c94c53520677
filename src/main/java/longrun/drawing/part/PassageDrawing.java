package longrun.drawing.part;

import longrun.plan.Section.Pass;

/** A wall cut through where a pipe passes it: the sleeve, its seal, above or below the ground. Not to scale. */
public final class PassageDrawing {

    private PassageDrawing() {}

    /** The passage with what was entered of it. */
    public static String of(String section, Pass pass) {
        String what = pass.what().findText().map(t -> t.replace('-', ' ')).orElse("what it passes is not known");
        String sleeve = EntryText.yesNo(pass.sleeved(), "in a sleeve", "no sleeve");
        String seal = EntryText.yesNo(pass.sealed(), "sealed", "not sealed");
        boolean below = pass.belowGrade().is(true);
        StringBuilder out = new StringBuilder(
                "<svg class='draw passage' viewBox='0 0 420 200' style='width:420px' role='img' aria-label='");
        out.append(HookupSymbols.safe("Section " + section + " passes: " + what + ". Sleeve: " + sleeve
                + "; ends of the" + " sleeve: " + seal + (below ? "; below the ground" : "") + "."));
        out.append("'>");
        StringBuilder hatch = new StringBuilder();
        for (int y = 8; y < 186; y += 14) {
            if (y < 74 || y > 112) {
                hatch.append("M176 ").append(y + 10).append("l48 -10");
            }
        }
        out.append(path("pt", "M176 8V80h48V8M176 192V116h48V192"));
        out.append(path("ld", hatch.toString()));
        if (below) {
            out.append(path("ld", "M0 40H176")).append(HookupSymbols.words("ground", 0, 32, "start", "tq"));
        }
        if (pass.sleeved().is(true)) {
            out.append(path("pn", "M164 82h72M164 114h72"));
        }
        if (pass.sealed().is(true)) {
            out.append(path("pt", "M164 84h10v28h-10zM226 84h10v28h-10z"));
        }
        out.append(path("p", "M40 98H380"));
        out.append(HookupSymbols.words("outside", 40, 150, "start", "tq"));
        out.append(HookupSymbols.words("inside", 380, 150, "end", "tq"));
        out.append(HookupSymbols.words("sleeve: " + sleeve, 252, 60, "start", "halo"));
        out.append(HookupSymbols.words("ends: " + seal, 252, 78, "start", "halo"));
        out.append(HookupSymbols.words(what, 252, 186, "start", "tq"));
        return out.append("</svg>").toString();
    }

    private static String path(String pen, String d) {
        return HookupSymbols.path(pen, d);
    }
}
