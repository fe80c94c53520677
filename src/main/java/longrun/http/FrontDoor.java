package longrun.http;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.core.env.Environment;
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

    private final OwnNames names;

    FrontDoor(Environment environment) {
        names = OwnNames.of(environment);
    }

    @Override
    protected boolean shouldNotFilterAsyncDispatch() {
        return false;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        response.setHeader("Content-Security-Policy", NO_PAGE);
        OwnNames.HEADERS.forEach(response::setHeader);
        if (!isOwnName(request)) {
            refuse(response, OwnNames.MISDIRECTED, OwnNames.WHY);
        } else if (isForeign(request)) {
            refuse(
                    response,
                    HttpStatus.FORBIDDEN.value(),
                    "Longrun answers its own pages, not those of another origin.\n");
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
        response.getOutputStream().write(why.getBytes(StandardCharsets.UTF_8));
    }

    private boolean isOwnName(HttpServletRequest request) {
        return names.has(request.getHeader(HttpHeaders.HOST)) && names.has(request.getServerName());
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
