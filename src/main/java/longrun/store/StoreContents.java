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
 * What a database of saved houses holds, every house compared with its checksums. It must be read from a duplicate, since
 * opening a database already writes to its file.
 *
 * @param version of the store, by its last migration; 0 where it had none
 * @param store the store's random name; blank where the store was made without one
 * @param changes how many changes were stored in it
 * @param houses how many houses it holds, deleted ones included
 * @param sound the undamaged houses that are not deleted, the one changed last first
 * @param damaged for each damaged house its name and what is wrong, in words
 */
record StoreContents(
        int version, String store, long changes, long houses, List<SoundHouse> sound, List<String> damaged) {

    /** An undamaged house: its text agrees with its checksum. */
    record SoundHouse(String name, String json) {}

    /**
     * Reads a database.
     *
     * @throws SQLException where it cannot be read at all
     */
    static StoreContents of(String url) throws SQLException {
        try (Connection houses = DriverManager.getConnection(url, "sa", "")) {
            int version = version(houses);
            if (version == 0 || version > ChecksumMigration.VERSION) {
                return new StoreContents(version, "", 0, 0, List.of(), List.of());
            }
            boolean hasChecksums = version == ChecksumMigration.VERSION;
            Tally tally = version > 1 ? tally(houses) : new Tally("", one(houses, "select sum(version) from house"));
            List<SoundHouse> sound = new ArrayList<>();
            List<String> damaged = new ArrayList<>();
            read(houses, hasChecksums, sound, damaged);
            return new StoreContents(
                    version,
                    tally.store,
                    tally.changes,
                    one(houses, "select count(*) from house"),
                    List.copyOf(sound),
                    List.copyOf(damaged));
        }
    }

    private record Tally(String store, long changes) {}

    private static Tally tally(Connection houses) throws SQLException {
        try (Statement ask = houses.createStatement();
                ResultSet row = ask.executeQuery("select store, changes from tally")) {
            if (!row.next()) {
                throw new SQLException("the store has no name");
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
                throw new SQLException("its tables are there, but no record of their version");
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

    private static void read(Connection houses, boolean hasChecksums, List<SoundHouse> sound, List<String> damaged)
            throws SQLException {
        String houseSum = hasChecksums ? "h.mark" : "null";
        String stepSum = hasChecksums ? "s.mark" : "null";
        try (Statement ask = houses.createStatement();
                PreparedStatement steps =
                        houses.prepareStatement("select count(*), min(number), max(number) from step where house = ?");
                ResultSet row =
                        ask.executeQuery("select h.id, h.name, h.version, h.step, h.changed, h.deleted, " + houseSum
                                + ", s.body, " + stepSum
                                + " from house h left join step s on s.house = h.id and s.number = h.step"
                                + " order by h.changed desc, h.id desc")) {
            while (row.next()) {
                String name = row.getString(2);
                String why = fault(row, hasChecksums);
                if (why.isEmpty()) {
                    why = faultOfSteps(steps, row.getLong(1), row.getInt(4));
                }
                if (!why.isEmpty()) {
                    damaged.add("\u201c" + (name == null || name.isBlank() ? "house without a name" : name) + "\u201d: "
                            + why);
                } else if (row.getObject(6) == null) {
                    sound.add(new SoundHouse(name, row.getString(8)));
                }
            }
        }
    }

    /** What is wrong with a house and its text, as a clause; empty where nothing is. */
    private static String fault(ResultSet row, boolean hasChecksums) throws SQLException {
        String body = row.getString(8);
        if (body == null) {
            return "its text is missing";
        }
        if (!hasChecksums) {
            return isJson(body) ? "" : "its text cannot be read";
        }
        if (row.getLong(9) != Checksum.of(body)) {
            return "its text is not as it was stored";
        }
        long kept = Checksum.of(
                row.getString(2),
                row.getLong(3),
                row.getInt(4),
                row.getObject(5, OffsetDateTime.class),
                row.getObject(6, OffsetDateTime.class));
        return kept == row.getLong(7) ? "" : "its name, version or date is not as it was stored";
    }

    private static String faultOfSteps(PreparedStatement steps, long house, int at) throws SQLException {
        steps.setLong(1, house);
        try (ResultSet span = steps.executeQuery()) {
            boolean whole = span.next()
                    && span.getLong(1) == span.getLong(3) - span.getLong(2) + 1
                    && span.getLong(2) <= at
                    && at <= span.getLong(3);
            return whole ? "" : "some of its undo steps are missing";
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

    boolean isSound() {
        return damaged.isEmpty();
    }
}
