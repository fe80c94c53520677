package longrun.checked.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import longrun.checked.SecondWay;
import longrun.quantity.Show;

/** What is worked out a second way, with what a build compares or what one has found. */
final class WayPart {

    private WayPart() {}

    static Part of(Map<String, Found> found) {
        boolean live = found.isEmpty();
        List<List<Cell>> rows = new ArrayList<>();
        for (SecondWay w : SecondWay.listAll()) {
            Found f = found.get(w.id());
            List<Cell> row = new ArrayList<>();
            row.add(Cell.of(
                    Character.toUpperCase(w.what().charAt(0)) + w.what().substring(1), "The second way: " + w.way()));
            row.add(Cell.of(w.agree()));
            row.add(Cell.of(
                    Lead.number(f == null ? w.count() : f.count()) + " " + w.compared(),
                    w.isRandom() ? "from seed " + (f == null ? w.seed() : f.seed()) : ""));
            row.add(Cell.of(
                    w.within() == 0 ? "the same" : Show.decimals(w.within(), decimals(w.within())) + " " + w.unit()));
            if (!live) {
                row.add(f == null ? Cell.of("not run in this build") : Cell.of(worst(w, f), f.when()));
            }
            rows.add(row);
        }
        List<String> headings = new ArrayList<>(List.of("What", "What must agree", "Compared", "How near"));
        if (!live) {
            headings.add("Farthest apart in this build");
        }
        return new Part(
                "second-way",
                "Worked out a second way",
                List.of(
                        "Two pieces of code that share nothing seldom make the same slip. What a program that runs cannot do"
                                + " while one waits, its build does: it makes random houses, the same each time, works each out"
                                + " both ways and fails where they part. Where the second way is somebody else's library,"
                                + " nothing is left to chance."
                                + (live ? " Count and first seed are those the build's test reads." : "")),
                List.of(new Grid(
                        live ? "What each build compares" : "What this build compared",
                        rows.size() + " things",
                        headings,
                        rows)));
    }

    private static String worst(SecondWay w, Found f) {
        if (w.within() == 0) {
            return f.worst() == 0 ? "all the same" : Show.plain(f.worst());
        }
        return f.worst() < w.within() / 20 ? "under a twentieth of that" : Show.plain(f.worst()) + " " + w.unit();
    }

    private static int decimals(double value) {
        int places = 0;
        for (double v = value; places < 9 && Math.abs(v - Math.rint(v)) > 1e-9; v *= 10) {
            places++;
        }
        return places;
    }
}
