package longrun.drawing.svg;

/** The strokes of a drawing: pipe 2.5, parts 1.25, leaders 0.75. */
public final class Pens {

    private Pens() {}

    public static String css(Palette p) {
        return rule("text", "font:400 14px \"Segoe UI\",Roboto,\"Liberation Sans\",Arial,sans-serif;fill:" + p.ink())
                + rule(".tq,.schematic .ti", "fill:" + p.quiet())
                + rule(".ti", "font-size:16px")
                + rule(".ts", "font-weight:600;font-size:16px")
                + rule(".tb", "font-weight:600;font-size:20px")
                + rule(".tm,.schematic .must", "fill:" + p.must())
                + rule(".ta", "fill:" + p.accent())
                + rule(".halo", "paint-order:stroke;stroke:" + p.paper() + ";stroke-width:5px;stroke-linejoin:round")
                + rule(".p", "fill:none;stroke:" + p.ink() + ";stroke-width:2.5;stroke-linejoin:round")
                + rule(".out", "stroke-dasharray:14 5")
                + rule(".bur", "stroke-dasharray:14 4 2.5 4")
                + rule(".con", "stroke-dasharray:2.5 3")
                + rule(".mcu", "fill:none;stroke:" + p.paper() + ";stroke-width:1;stroke-linejoin:round")
                + rule(".mcs", "fill:none;stroke:" + p.ink() + ";stroke-width:7;stroke-dasharray:1 7")
                + rule(".mpe", "fill:none;stroke:" + p.ink() + ";stroke-width:5.5;stroke-dasharray:2.5 17")
                + rule(".sel", "stroke:" + p.accent())
                + rule(".pt", "fill:" + p.paper() + ";stroke:" + p.ink() + ";stroke-width:1.25;stroke-linejoin:round")
                + rule(".pn", "fill:none;stroke:" + p.ink() + ";stroke-width:1.25;stroke-linejoin:round")
                + rule(".thick,.schematic .cap", "stroke-width:2.5")
                + rule(".pf", "fill:" + p.ink())
                + rule(".gap", "fill:" + p.paper())
                + rule(".ld", "fill:none;stroke:" + p.quiet() + ";stroke-width:.75")
                + rule(".hit", "fill:none;stroke:none;stroke-width:16;pointer-events:stroke");
    }

    private static String rule(String selector, String declarations) {
        return ".schematic " + selector + "{" + declarations + "}";
    }
}
