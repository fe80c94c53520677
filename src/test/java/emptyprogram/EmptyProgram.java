package emptyprogram;

import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.Route;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.boot.autoconfigure.flyway.FlywayAutoConfiguration;
import org.springframework.boot.autoconfigure.jdbc.DataSourceAutoConfiguration;

/** One heading on one page with the same framework and nothing else: what start and weight are compared with. */
@SpringBootApplication(exclude = {DataSourceAutoConfiguration.class, FlywayAutoConfiguration.class})
public class EmptyProgram {

    public static void main(String[] args) {
        SpringApplication.run(EmptyProgram.class, args);
    }

    /** Its only page. */
    @Route("")
    public static class Only extends H1 {
        private static final long serialVersionUID = 1L;

        public Only() {
            super("Empty");
        }
    }
}
