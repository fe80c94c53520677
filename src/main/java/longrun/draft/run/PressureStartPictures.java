package longrun.draft.run;

/** The drawings of where the pressure is reduced: pipe outdoors in long dashes, buried pipe in dash-dot. */
public final class PressureStartPictures {

    private static final String GROUND = ground();
    private static final String TANK = "<rect class='pt' x='8' y='46' width='78' height='30' rx='15'/>"
            + "<path class='pn' d='M24 75v11M70 75v11M40 46v-5h14v5'/>";
    private static final String HOUSE = "<path class='pn' d='M150 86V36l44-24 44 24v50'/>";
    private static final String BURIED = "<path class='p bur' d='M98 84V95H138V84'/>";

    private PressureStartPictures() {}

    /** The drawing as SVG. */
    public static String of(PressureStart start) {
        String inside = switch (start) {
            case WALL ->
                path("p out", "M54 36H98V86")
                        + BURIED
                        + path("p out", "M138 86V62")
                        + path("p", "M138 56H206V74M172 56V74")
                        + regulator(54, 36)
                        + regulator(138, 60);
            case TANK ->
                path("p out", "M60 36H98V86")
                        + BURIED
                        + path("p out", "M138 86V56")
                        + path("p", "M137 56H206V74M172 56V74")
                        + regulator(48, 36)
                        + regulator(62, 36);
            case TWO_PSI ->
                path("p out", "M54 36H98V86")
                        + BURIED
                        + path("p out", "M138 86V56")
                        + path("p", "M137 56H218V74M194 56V74")
                        + regulator(54, 36)
                        + regulator(170, 56);
        };
        return "<svg viewBox='0 0 240 104' aria-hidden='true'>" + GROUND + TANK + HOUSE + inside + "</svg>";
    }

    private static String ground() {
        StringBuilder out = new StringBuilder("<path class='ld' d='M0 86H240");
        for (int x = 12; x < 240; x += 24) {
            out.append('M').append(x).append(" 86l-5 6");
        }
        return out.append("'/>").toString();
    }

    private static String path(String pen, String d) {
        return "<path class='" + pen + "' d='" + d + "'/>";
    }

    private static String regulator(int x, int y) {
        return "<path class='pn' d='M" + x + " " + (y - 6) + "v-5'/><circle class='pt' cx='" + x + "' cy='" + y
                + "' r='6'/><path class='pn' d='M" + (x - 7) + " " + (y - 11) + "h14'/>";
    }
}
