package longrun.checked.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import longrun.checked.SecondWay;
import longrun.quantity.Show;

/** The part of the report on what is worked out a second way: what each build compares, or what one build found. */
final class SecondWayPart {

    private SecondWayPart() {}

    static Part of(Map<String, BuildResult> found) {
        boolean live = found.isEmpty();
        List<List<Cell>> rows = new ArrayList<>();
        for (SecondWay w : SecondWay.listAll()) {
            BuildResult f = found.get(w.id());
            List<Cell> row = new ArrayList<>();
            row.add(Cell.of(
                    Character.toUpperCase(w.what().charAt(0)) + w.what().substring(1), "The second way: " + w.way()));
            row.add(Cell.of(w.agree()));
            row.add(Cell.of(
                    Summary.number(f == null ? w.count() : f.count()) + " " + w.compared(),
                    w.isRandom() ? "from seed " + (f == null ? w.seed() : f.seed()) : ""));
            row.add(Cell.of(
                    w.within() == 0 ? "the same" : Show.decimals(w.within(), decimals(w.within())) + " " + w.unit()));
            if (!live) {
                row.add(f == null ? Cell.of("not run in this build") : Cell.of(worst(w, f), f.when()));
            }
            rows.add(row);
        }
        List<String> headings = new ArrayList<>(List.of("What", "What must agree", "Compared", "Allowed difference"));
        if (!live) {
            headings.add("Largest difference in this build");
        }
        return new Part(
                "second-way",
                "Worked out a second way",
                List.of(
                        "Two pieces of code that share nothing seldom make the same mistake. The build of the program makes"
                                + " random houses, the same each time, works out each of them both ways and fails where the results"
                                + " differ. Where the second way is somebody else's library, fixed cases are compared instead."
                                + (live ? " The number and the first seed are those used by the build's tests." : "")),
                List.of(new ReportTable(
                        live ? "What each build compares" : "What this build compared",
                        rows.size() + " things",
                        headings,
                        rows)));
    }

    private static String worst(SecondWay w, BuildResult f) {
        if (w.within() == 0) {
            return f.worst() == 0 ? "all the same" : Show.plain(f.worst());
        }
        return f.worst() < w.within() / 20
                ? "less than a twentieth of what is allowed"
                : Show.plain(f.worst()) + " " + w.unit();
    }

    private static int decimals(double value) {
        int places = 0;
        for (double v = value; places < 9 && Math.abs(v - Math.rint(v)) > 1e-9; v *= 10) {
            places++;
        }
        return places;
    }
}
