package longrun.store;

import java.time.Clock;
import org.springframework.boot.autoconfigure.flyway.FlywayMigrationStrategy;
import org.springframework.boot.autoconfigure.jdbc.JdbcConnectionDetails;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.env.Environment;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;

/** The store of saved houses: the embedded database {@code longrun} in the folder that {@code longrun.data} names. */
@Configuration(proxyBeanMethods = false)
class StoreConfiguration {

    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }

    @Bean
    StoreFolder storeFolder(Environment environment) {
        return StoreFolder.of(environment);
    }

    @Bean
    StoreStartup storeKeeping(StoreFolder folder, Clock clock) {
        return new StoreStartup(folder, clock);
    }

    /**
     * The database's address. The houses are checked before it is given out. Only one Longrun at a time can open them:
     * to share them the database would have to listen on a network port.
     */
    @Bean
    JdbcConnectionDetails savedHouses(StoreFolder folder, StoreStartup startup) {
        startup.openOrCreate();
        String url = folder.url(StoreFolder.NAME);
        return new JdbcConnectionDetails() {
            @Override
            public String getJdbcUrl() {
                return url;
            }

            @Override
            public String getUsername() {
                return "sa";
            }

            @Override
            public String getPassword() {
                return "";
            }
        };
    }

    @Bean
    ChecksumMigration sumsTakenOver() {
        return new ChecksumMigration();
    }

    @Bean
    FlywayMigrationStrategy migrate(StoreStartup startup) {
        return startup::migrate;
    }

    @Bean
    MarkFile markFile(StoreFolder folder) {
        return new MarkFile(folder.mark());
    }

    @Bean
    DurableTransactions durably(StoreFolder folder, MarkFile mark, TransactionTemplate transaction, JdbcTemplate jdbc) {
        return new DurableTransactions(folder, mark, transaction, jdbc);
    }
}
