package longrun.store;

import java.nio.file.Path;
import java.time.Clock;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.autoconfigure.AutoConfigurationPackage;
import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.autoconfigure.data.jdbc.JdbcRepositoriesAutoConfiguration;
import org.springframework.boot.autoconfigure.flyway.FlywayAutoConfiguration;
import org.springframework.boot.autoconfigure.jdbc.DataSourceAutoConfiguration;
import org.springframework.boot.autoconfigure.jdbc.DataSourceTransactionManagerAutoConfiguration;
import org.springframework.boot.autoconfigure.jdbc.JdbcTemplateAutoConfiguration;
import org.springframework.boot.autoconfigure.transaction.TransactionAutoConfiguration;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Import;
import org.springframework.context.support.GenericApplicationContext;

/** The store alone, opened on a folder as the program opens it; closing it closes the database file. */
public final class OpenStore implements AutoCloseable {

    /** The store's own beans and what Spring needs to run them, no screens and no server. */
    @TestConfiguration(proxyBeanMethods = false)
    @AutoConfigurationPackage
    @ImportAutoConfiguration({
        DataSourceAutoConfiguration.class,
        DataSourceTransactionManagerAutoConfiguration.class,
        TransactionAutoConfiguration.class,
        JdbcTemplateAutoConfiguration.class,
        FlywayAutoConfiguration.class,
        JdbcRepositoriesAutoConfiguration.class
    })
    @Import({StoreConfiguration.class, DraftStore.class})
    static class StoreAlone {}

    public final DraftStore drafts;
    final ConfigurableApplicationContext context;

    OpenStore(Path folder, Clock clock) {
        context = new SpringApplicationBuilder(StoreAlone.class)
                .web(WebApplicationType.NONE)
                .properties("spring.main.banner-mode=off")
                .initializers(made -> ((GenericApplicationContext) made)
                        .registerBean("testClock", Clock.class, () -> clock, bean -> bean.setPrimary(true)))
                .run("--longrun.data=" + folder, "--logging.level.root=warn");
        drafts = context.getBean(DraftStore.class);
    }

    public OpenStore(Path folder) {
        this(folder, Clock.systemUTC());
    }

    @Override
    public void close() {
        context.close();
    }
}
