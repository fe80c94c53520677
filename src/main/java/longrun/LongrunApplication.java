package longrun;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts Longrun on this computer alone. */
@SpringBootApplication
public class LongrunApplication {

    public static void main(String[] args) {
        SpringApplication.run(LongrunApplication.class, args);
    }
}
