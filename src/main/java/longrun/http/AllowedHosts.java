package longrun.http;

import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.core.env.Environment;

/**
 * The host names under which Longrun answers: localhost, 127.0.0.1, [::1] and those listed in {@code longrun.hosts}; and
 * the security headers of every answer.
 */
public final class AllowedHosts {

    /** The text of the answer to a request for another host. */
    public static final String REFUSAL =
            "Longrun answers only to localhost, 127.0.0.1 and [::1]. To allow another name of this computer, give it"
                    + " at the start: --longrun.hosts=NAME\n";

    /** Status 421 Misdirected Request (RFC 9110 section 15.5.20). */
    public static final int MISDIRECTED_REQUEST = 421;

    /** Security headers of every answer, whatever it is. */
    public static final Map<String, String> SECURITY_HEADERS = Map.of(
            "X-Content-Type-Options", "nosniff",
            "X-Frame-Options", "DENY",
            "Referrer-Policy", "no-referrer",
            "Cross-Origin-Opener-Policy", "same-origin",
            "Cross-Origin-Resource-Policy", "same-origin");

    private final Set<String> names = new HashSet<>(Set.of("localhost", "127.0.0.1", "[::1]"));

    private AllowedHosts(String... more) {
        for (String name : more) {
            if (!name.isBlank()) {
                names.add(name.strip().toLowerCase(Locale.ROOT));
            }
        }
    }

    /** The hosts allowed by default and those of the property {@code longrun.hosts}. */
    public static AllowedHosts of(Environment environment) {
        return new AllowedHosts(environment.getProperty("longrun.hosts", String[].class, new String[0]));
    }

    /** Whether a request's {@code Host} is allowed, in capitals or not; the port is ignored, since the request has reached it. */
    public boolean has(@Nullable String host) {
        return host != null && names.contains(host.replaceFirst(":\\d*$", "").toLowerCase(Locale.ROOT));
    }
}
