package longrun.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.OffsetDateTime;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.migration.Context;
import org.flywaydb.core.api.migration.JavaMigration;
import org.jspecify.annotations.Nullable;

/** Adds the missing checksums to the texts and rows of a store that was made without them; it changes nothing else. */
final class ChecksumMigration implements JavaMigration {

    /** The version of the store that this Longrun reads and writes: that of its last migration. */
    static final int VERSION = 3;

    @Override
    public MigrationVersion getVersion() {
        return MigrationVersion.fromVersion(Integer.toString(VERSION));
    }

    @Override
    public String getDescription() {
        return "sums of stored texts";
    }

    @Override
    public @Nullable Integer getChecksum() {
        return null;
    }

    @Override
    public boolean canExecuteInTransaction() {
        return true;
    }

    @Override
    public void migrate(Context context) throws SQLException {
        Connection houses = context.getConnection();
        try (Statement all = houses.createStatement();
                ResultSet rows = all.executeQuery("select id, body from step where mark is null");
                PreparedStatement set = houses.prepareStatement("update step set mark = ? where id = ?")) {
            while (rows.next()) {
                set.setLong(1, Checksum.of(rows.getString(2)));
                set.setLong(2, rows.getLong(1));
                set.executeUpdate();
            }
        }
        try (Statement all = houses.createStatement();
                ResultSet rows = all.executeQuery(
                        "select id, name, version, step, changed, deleted from house where mark is null");
                PreparedStatement set = houses.prepareStatement("update house set mark = ? where id = ?")) {
            while (rows.next()) {
                set.setLong(
                        1,
                        Checksum.of(
                                rows.getString(2),
                                rows.getLong(3),
                                rows.getInt(4),
                                rows.getObject(5, OffsetDateTime.class),
                                rows.getObject(6, OffsetDateTime.class)));
                set.setLong(2, rows.getLong(1));
                set.executeUpdate();
            }
        }
        try (Statement all = houses.createStatement()) {
            all.execute("alter table step alter column mark set not null");
            all.execute("alter table house alter column mark set not null");
        }
    }
}
