package longrun;

import java.io.IOException;
import longrun.http.OutOfMemory;
import longrun.store.StoreTrouble;
import longrun.ui.start.TroublePage;
import org.jspecify.annotations.Nullable;
import org.slf4j.LoggerFactory;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.boot.context.event.ApplicationEnvironmentPreparedEvent;
import org.springframework.context.ApplicationListener;
import org.springframework.core.env.ConfigurableEnvironment;
import org.springframework.data.jdbc.repository.config.EnableJdbcRepositories;

/** Starts Longrun on this computer alone. Only rooms that hold what is started are looked through for it. */
@SpringBootApplication(scanBasePackages = {"longrun.http", "longrun.store", "longrun.ui"})
@EnableJdbcRepositories("longrun.store")
public class LongrunApplication {

    /** Where the saved houses are not opened, a page says why in place of all others, until the person has chosen. */
    public static void main(String[] args) {
        OutOfMemory.watch();
        while (!isStarted(args)) {
            LoggerFactory.getLogger(LongrunApplication.class).info("Longrun starts again.");
        }
    }

    private static boolean isStarted(String[] args) {
        Settings settings = new Settings();
        SpringApplication program = new SpringApplication(LongrunApplication.class);
        program.addListeners(settings);
        try {
            program.run(args);
            return true;
        } catch (RuntimeException e) {
            StoreTrouble trouble = StoreTrouble.in(e);
            if (trouble == null || settings.environment == null) {
                throw e;
            }
            try {
                TroublePage.showUntilChosen(trouble, settings.environment);
                return false;
            } catch (IOException noPage) {
                throw e;
            }
        }
    }

    /** The settings of a program, also where it did not start. */
    private static final class Settings implements ApplicationListener<ApplicationEnvironmentPreparedEvent> {

        private @Nullable ConfigurableEnvironment environment;

        @Override
        public void onApplicationEvent(ApplicationEnvironmentPreparedEvent event) {
            environment = event.getEnvironment();
        }
    }
}
