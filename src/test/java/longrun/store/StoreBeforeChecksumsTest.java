package longrun.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.Statement;
import java.time.Clock;
import java.util.List;
import longrun.store.Outcome.Saved;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A store from before texts had checksums is migrated with everything in it, and copied before. */
class StoreBeforeChecksumsTest {

    private static final String ODD = "{ \"note\" : \"caf\u00e9 \ud83d\udd25\",\n\t\"a\":1.0 }\n";

    @TempDir
    Path folder;

    @BeforeEach
    void keepHousesAsTheFirstVersionDid() throws Exception {
        String url = "jdbc:h2:file:" + folder.resolve("longrun");
        Flyway.configure()
                .dataSource(url, "sa", "")
                .locations("classpath:db/migration/h2")
                .target("1")
                .load()
                .migrate();
        try (Connection houses = DriverManager.getConnection(url, "sa", "");
                Statement change = houses.createStatement();
                PreparedStatement step =
                        houses.prepareStatement("insert into step (house, number, body) values (1, ?, ?)")) {
            change.execute("insert into house (name, version, step, changed) values ('Old & \"odd\"', 7, 2,"
                    + " timestamp with time zone '2026-03-01 10:11:12.345+00:00')");
            change.execute("insert into house (name, version, step, changed, deleted) values ('Gone', 1, 0,"
                    + " current_timestamp, current_timestamp)");
            change.execute("insert into step (house, number, body) values (2, 0, '{}')");
            for (int number = 0; number < 4; number++) {
                step.setInt(1, number);
                step.setString(2, number == 2 ? ODD : Texts.ofLength(9_000, number));
                step.executeUpdate();
            }
        }
    }

    @Test
    void everythingInItIsTakenOver() {
        try (OpenStore store = new OpenStore(folder)) {
            Draft draft = store.drafts.find(1).orElseThrow();
            assertThat(draft.name()).isEqualTo("Old & \"odd\"");
            assertThat(draft.json()).isEqualTo(ODD);
            assertThat(draft.version()).isEqualTo(7);
            assertThat(draft.changed()).isEqualTo("2026-03-01T10:11:12.345Z");
            assertThat(draft.undos()).isEqualTo(2);
            assertThat(draft.redos()).isEqualTo(1);
            Draft before = ((Saved) store.drafts.undo(1, 7)).draft();
            assertThat(before.json()).isEqualTo(Texts.ofLength(9_000, 1));
            assertThat(store.drafts.undelete(2)).isTrue();
        }
        assertThat(Damage.trouble(folder)).isEmpty();
    }

    @Test
    void aCopyOfItIsMadeBeforeAndCanBeGoneBackTo() throws Exception {
        assertThat(Damage.trouble(folder)).isEmpty();
        List<BackupCopies.Copy> before = new BackupCopies(new StoreFolder(folder))
                .list().stream().filter(BackupCopies.Copy::beforeVersion).toList();
        assertThat(before).hasSize(1);

        new StoreRecovery(new StoreFolder(folder), Clock.systemUTC())
                .open(before.get(0).file().getFileName().toString());

        try (OpenStore store = new OpenStore(folder)) {
            assertThat(store.drafts.find(1).orElseThrow().json()).isEqualTo(ODD);
        }
    }

    @Test
    void takingOverThatWasCutOffIsBegunOnceMore() throws Exception {
        Damage.sql(folder, "alter table step add column mark bigint");
        try (OpenStore store = new OpenStore(folder)) {
            assertThat(store.drafts.find(1).orElseThrow().json()).isEqualTo(ODD);
        }
    }
}
