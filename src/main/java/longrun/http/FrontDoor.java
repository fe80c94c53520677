package longrun.http;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Lets in what asks for this computer by its own name and comes from Longrun's own pages or from no page at all. A page
 * of another origin may have a name that resolves to this computer (421), or send something here (403); it neither
 * reads nor changes. Every answer says how a browser has to treat it.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
class FrontDoor extends OncePerRequestFilter {

    /** What no page is may load nothing and stand in no frame; a page says itself what it needs. */
    private static final String NO_PAGE =
            "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'; base-uri 'none'; form-action"
                    + " 'none'";

    /** RFC 9110 section 15.5.20. */
    private static final int MISDIRECTED = 421;

    private final Set<String> hosts = new HashSet<>(Set.of("localhost", "127.0.0.1", "[::1]"));

    FrontDoor(@Value("${longrun.hosts:}") List<String> more) {
        more.forEach(h -> hosts.add(h.strip().toLowerCase(Locale.ROOT)));
    }

    @Override
    protected boolean shouldNotFilterAsyncDispatch() {
        return false;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        response.setHeader("Content-Security-Policy", NO_PAGE);
        response.setHeader("X-Content-Type-Options", "nosniff");
        response.setHeader("X-Frame-Options", "DENY");
        response.setHeader("Referrer-Policy", "no-referrer");
        response.setHeader("Cross-Origin-Opener-Policy", "same-origin");
        response.setHeader("Cross-Origin-Resource-Policy", "same-origin");
        if (!isOwnName(request)) {
            refuse(
                    response,
                    MISDIRECTED,
                    "Longrun answers to localhost, 127.0.0.1 and [::1] alone. Another name of this computer is given at"
                            + " the start: --longrun.hosts=NAME");
        } else if (isForeign(request)) {
            refuse(
                    response,
                    HttpStatus.FORBIDDEN.value(),
                    "Longrun answers its own pages, not those of another origin.");
        } else if (isErrorPageAsked(request)) {
            response.sendError(HttpStatus.NOT_FOUND.value());
        } else {
            try {
                chain.doFilter(request, response);
            } catch (Throwable t) {
                OutOfMemory.end(t);
                throw t;
            }
        }
    }

    private static void refuse(HttpServletResponse response, int status, String why) throws IOException {
        response.setStatus(status);
        response.setContentType("text/plain;charset=UTF-8");
        response.setHeader(HttpHeaders.CONNECTION, "close");
        response.getOutputStream().write((why + "\n").getBytes(StandardCharsets.UTF_8));
    }

    /** The name is compared with its port left off: who reaches this port has it right. */
    private boolean isOwnName(HttpServletRequest request) {
        String host = request.getHeader(HttpHeaders.HOST);
        return host != null
                && hosts.contains(host(host))
                && hosts.contains(request.getServerName().toLowerCase(Locale.ROOT));
    }

    private static String host(String authority) {
        return authority.replaceFirst(":\\d*$", "").toLowerCase(Locale.ROOT);
    }

    private static boolean isForeign(HttpServletRequest request) {
        String origin = request.getHeader(HttpHeaders.ORIGIN);
        if (origin != null) {
            return !authority(origin).equals(authority("//" + request.getHeader(HttpHeaders.HOST)));
        }
        String site = request.getHeader("Sec-Fetch-Site");
        return site != null && !site.equals("same-origin") && !site.equals("none") && !isOpenedAsAPage(request);
    }

    /** A link from anywhere may open a page of its own, which the other page cannot read. */
    private static boolean isOpenedAsAPage(HttpServletRequest request) {
        return request.getMethod().equals("GET")
                && "navigate".equals(request.getHeader("Sec-Fetch-Mode"))
                && "document".equals(request.getHeader("Sec-Fetch-Dest"));
    }

    /** Host and port, the port left off where it is the usual one. */
    private static String authority(String origin) {
        String rest = origin.substring(origin.indexOf("//") + 2).toLowerCase(Locale.ROOT);
        return origin.contains("//") ? rest.replaceFirst(":(80|443)?$", "") : "";
    }

    /** The container asks for the error page itself; nobody else has an error to be told. */
    private static boolean isErrorPageAsked(HttpServletRequest request) {
        return request.getDispatcherType() == DispatcherType.REQUEST
                && request.getServletPath().equals("/error");
    }
}
