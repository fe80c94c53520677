package longrun.drawing.route;

/**
 * One part of a drawing that is too wide for one sheet.
 *
 * @param name such as "B2"; empty for the whole, "key" for the key
 * @param goesOn which parts it goes on in, in words; empty where there are none
 * @param svg the picture
 */
public record SheetPart(String name, String goesOn, String svg) {

    /** A picture that is not parted. */
    public static SheetPart whole(String svg) {
        return new SheetPart("", "", svg);
    }

    /** Pixels. */
    public double width() {
        return size("width");
    }

    /** Pixels. */
    public double height() {
        return size("height");
    }

    private double size(String what) {
        int at = svg.indexOf(what + "=\"") + what.length() + 2;
        return Double.parseDouble(svg.substring(at, svg.indexOf('"', at)));
    }
}
