package longrun.store;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What can be read of a database of saved houses, every house held against its sums. It is given a file nobody else
 * needs, since opening one already writes on it.
 *
 * @param version of the store, by the last migration it has been through; 0 where it has been through none
 * @param store the store's own name; blank where it is from before stores had one
 * @param changes how many changes of it were stored
 * @param houses how many it holds, deleted ones counted
 * @param sound the houses not deleted that are whole, the one changed last first
 * @param broken what is not, in words
 */
record StoreReading(int version, String store, long changes, long houses, List<SoundHouse> sound, List<String> broken) {

    /** A house as it stands, its text held against its sum. */
    record SoundHouse(String name, String json) {}

    /**
     * Reads a database.
     *
     * @throws SQLException where it cannot be read at all
     */
    static StoreReading of(String url) throws SQLException {
        try (Connection houses = DriverManager.getConnection(url, "sa", "")) {
            int version = version(houses);
            if (version == 0 || version > SumsTakenOver.VERSION) {
                return new StoreReading(version, "", 0, 0, List.of(), List.of());
            }
            boolean summed = version == SumsTakenOver.VERSION;
            Tally tally = version > 1 ? tally(houses) : new Tally("", one(houses, "select sum(version) from house"));
            List<SoundHouse> sound = new ArrayList<>();
            List<String> broken = new ArrayList<>();
            read(houses, summed, sound, broken);
            return new StoreReading(
                    version,
                    tally.store,
                    tally.changes,
                    one(houses, "select count(*) from house"),
                    List.copyOf(sound),
                    List.copyOf(broken));
        }
    }

    private record Tally(String store, long changes) {}

    private static Tally tally(Connection houses) throws SQLException {
        try (Statement ask = houses.createStatement();
                ResultSet row = ask.executeQuery("select store, changes from tally")) {
            if (!row.next()) {
                throw new SQLException("the store does not say which it is");
            }
            return new Tally(row.getString(1), row.getLong(2));
        }
    }

    private static int version(Connection houses) throws SQLException {
        try (ResultSet tables = houses.getMetaData().getTables(null, null, "%", new String[] {"BASE TABLE"})) {
            boolean any = false;
            while (tables.next()) {
                if (tables.getString("TABLE_NAME").equals("flyway_schema_history")) {
                    return (int) one(
                            houses,
                            "select max(cast(\"version\" as integer)) from \"flyway_schema_history\""
                                    + " where \"success\" and \"version\" is not null");
                }
                any |= tables.getString("TABLE_SCHEM").equals("PUBLIC");
            }
            if (any) {
                throw new SQLException("the tables are there, what was done to them is not told");
            }
            return 0;
        }
    }

    private static long one(Connection houses, String question) throws SQLException {
        try (Statement ask = houses.createStatement();
                ResultSet row = ask.executeQuery(question)) {
            return row.next() ? row.getLong(1) : 0;
        }
    }

    private static void read(Connection houses, boolean summed, List<SoundHouse> sound, List<String> broken)
            throws SQLException {
        String sums = summed ? "h.mark" : "null";
        String sum = summed ? "s.mark" : "null";
        try (Statement ask = houses.createStatement();
                PreparedStatement steps =
                        houses.prepareStatement("select count(*), min(number), max(number) from step where house = ?");
                ResultSet row = ask.executeQuery("select h.id, h.name, h.version, h.step, h.changed, h.deleted, " + sums
                        + ", s.body, " + sum
                        + " from house h left join step s on s.house = h.id and s.number = h.step"
                        + " order by h.changed desc, h.id desc")) {
            while (row.next()) {
                String name = row.getString(2);
                String why = fault(row, summed);
                if (why.isEmpty()) {
                    why = faultOfSteps(steps, row.getLong(1), row.getInt(4));
                }
                if (!why.isEmpty()) {
                    broken.add("\u201c" + (name == null || name.isBlank() ? "house without a name" : name) + "\u201d: "
                            + why);
                } else if (row.getObject(6) == null) {
                    sound.add(new SoundHouse(name, row.getString(8)));
                }
            }
        }
    }

    /** What is wrong with a house and its text; empty where nothing is. */
    private static String fault(ResultSet row, boolean summed) throws SQLException {
        String body = row.getString(8);
        if (body == null) {
            return "its text is not there";
        }
        if (!summed) {
            return isJson(body) ? "" : "its text cannot be read";
        }
        if (row.getLong(9) != Sum.of(body)) {
            return "its text is not as it was stored";
        }
        long kept = Sum.of(
                row.getString(2),
                row.getLong(3),
                row.getInt(4),
                row.getObject(5, OffsetDateTime.class),
                row.getObject(6, OffsetDateTime.class));
        return kept == row.getLong(7) ? "" : "its name, version or day is not as it was stored";
    }

    private static String faultOfSteps(PreparedStatement steps, long house, int at) throws SQLException {
        steps.setLong(1, house);
        try (ResultSet span = steps.executeQuery()) {
            boolean whole = span.next()
                    && span.getLong(1) == span.getLong(3) - span.getLong(2) + 1
                    && span.getLong(2) <= at
                    && at <= span.getLong(3);
            return whole ? "" : "steps of it are missing";
        }
    }

    private static boolean isJson(@Nullable String text) {
        try {
            DraftText.requireJson(String.valueOf(text));
            return true;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    boolean isWhole() {
        return broken.isEmpty();
    }
}
