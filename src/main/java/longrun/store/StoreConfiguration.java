package longrun.store;

import java.time.Clock;
import org.springframework.boot.autoconfigure.flyway.FlywayMigrationStrategy;
import org.springframework.boot.autoconfigure.jdbc.JdbcConnectionDetails;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.env.Environment;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;

/** Where saved houses live: the embedded database {@code longrun} in the folder that {@code longrun.data} names. */
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
    StoreKeeping storeKeeping(StoreFolder folder, Clock clock) {
        return new StoreKeeping(folder, clock);
    }

    /**
     * The database's address; whoever asks for it has the houses looked through before. One Longrun at a time has them:
     * sharing would mean a listening port on every network of the computer.
     */
    @Bean
    JdbcConnectionDetails savedHouses(StoreFolder folder, StoreKeeping keeping) {
        keeping.lookThrough();
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
    SumsTakenOver sumsTakenOver() {
        return new SumsTakenOver();
    }

    @Bean
    FlywayMigrationStrategy bringToThisVersion(StoreKeeping keeping) {
        return keeping::bringToThisVersion;
    }

    @Bean
    MarkFile markFile(StoreFolder folder) {
        return new MarkFile(folder.mark());
    }

    @Bean
    Durably durably(StoreFolder folder, MarkFile mark, TransactionTemplate transaction, JdbcTemplate jdbc) {
        return new Durably(folder, mark, transaction, jdbc);
    }
}
