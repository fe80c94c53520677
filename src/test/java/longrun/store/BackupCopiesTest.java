package longrun.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which dated copies of the houses are kept. */
class BackupCopiesTest {

    @TempDir
    Path folder;

    private List<BackupCopies.Copy> copies() {
        return new BackupCopies(new StoreFolder(folder)).list();
    }

    @Test
    void startMakesACopyOnlyWhereSomethingChanged() {
        TurnedClock clock = new TurnedClock(Instant.parse("2026-03-01T10:00:00Z"));
        try (OpenStore store = new OpenStore(folder, clock)) {
            assertThat(copies()).as("no houses yet").isEmpty();
            store.drafts.create("Mill", "{}");
        }
        for (int i = 0; i < 3; i++) {
            clock.turn(Duration.ofHours(25));
            new OpenStore(folder, clock).close();
        }
        assertThat(copies()).hasSize(1);
        assertThat(copies().get(0).changes()).isEqualTo(1);
    }

    @Test
    void lastTenDaysAndLastSixMonthsAreKept() throws Exception {
        TurnedClock clock = new TurnedClock(Instant.parse("2026-01-03T12:00:00Z"));
        try (OpenStore store = new OpenStore(folder, clock);
                Connection houses = store.context.getBean(DataSource.class).getConnection()) {
            BackupCopies copies = new BackupCopies(new StoreFolder(folder));
            for (int change = 1; change <= 2 * 250; change++) {
                copies.makeIfChanged(houses, change, clock);
                clock.turn(Duration.ofHours(change % 2 == 0 ? 22 : 2)); // two in a day
            }
        }
        List<BackupCopies.Copy> kept = copies();
        LocalDate last = kept.get(0).made().toLocalDate();
        assertThat(kept.stream().map(c -> c.made().toLocalDate()).distinct()).hasSize(kept.size());
        assertThat(kept)
                .filteredOn(c -> c.made().toLocalDate().isAfter(last.minusDays(10)))
                .hasSize(10)
                .allMatch(c -> c.changes() % 2 == 0, "the last of its day");
        assertThat(kept.stream().map(c -> YearMonth.from(c.made())).distinct()).hasSize(6);
    }
}
