package longrun.http;

import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.core.env.Environment;

/**
 * The names this computer is asked by, the same wherever Longrun answers: localhost, 127.0.0.1, [::1] and what {@code
 * longrun.hosts} names; and what every answer tells a browser.
 */
public final class OwnNames {

    /** Said to whoever asks by another name. */
    public static final String WHY =
            "Longrun answers to localhost, 127.0.0.1 and [::1] alone. Another name of this computer is given at the"
                    + " start: --longrun.hosts=NAME\n";

    /** RFC 9110 section 15.5.20. */
    public static final int MISDIRECTED = 421;

    /** Header lines of every answer, whatever it is. */
    public static final Map<String, String> HEADERS = Map.of(
            "X-Content-Type-Options", "nosniff",
            "X-Frame-Options", "DENY",
            "Referrer-Policy", "no-referrer",
            "Cross-Origin-Opener-Policy", "same-origin",
            "Cross-Origin-Resource-Policy", "same-origin");

    private final Set<String> names = new HashSet<>(Set.of("localhost", "127.0.0.1", "[::1]"));

    private OwnNames(String... more) {
        for (String name : more) {
            if (!name.isBlank()) {
                names.add(name.strip().toLowerCase(Locale.ROOT));
            }
        }
    }

    public static OwnNames of(Environment environment) {
        return new OwnNames(environment.getProperty("longrun.hosts", String[].class, new String[0]));
    }

    /** Whether a request's {@code Host} is one of them, in any case; its port is left off: who reaches it has it right. */
    public boolean has(@Nullable String host) {
        return host != null && names.contains(host.replaceFirst(":\\d*$", "").toLowerCase(Locale.ROOT));
    }
}
