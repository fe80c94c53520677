package longrun.store;

import java.nio.file.Path;
import java.time.Clock;
import org.springframework.boot.autoconfigure.jdbc.JdbcConnectionDetails;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.env.Environment;

/** Where saved houses live: the embedded database {@code longrun} in the folder that {@code longrun.data} names. */
@Configuration(proxyBeanMethods = false)
class StoreConfiguration {

    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }

    /**
     * The database's address. The folder may be relative to where Longrun was started; it is made where missing. One
     * Longrun at a time has it: sharing would mean a listening port on every network of the computer.
     */
    @Bean
    JdbcConnectionDetails savedHouses(Environment environment) {
        Path folder = Path.of(environment.getRequiredProperty("longrun.data"))
                .toAbsolutePath()
                .normalize();
        // Spring closes the database after the last save; a hook of its own could be sooner. Whole texts pack well.
        String url = "jdbc:h2:file:" + folder.resolve("longrun")
                + ";DB_CLOSE_ON_EXIT=FALSE;COMPRESS=TRUE;TRACE_LEVEL_FILE=0";
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
}
