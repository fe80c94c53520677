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
 * Lets through requests that address this computer by an allowed host name and come from Longrun's own pages or from a
 * program. A page of another origin may use a host name that resolves to this computer (answered 421) or send a request
 * here (answered 403); it can neither read nor change anything. Every answer carries the security headers.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
class HostAndOriginFilter extends OncePerRequestFilter {

    /** For answers that are no pages: nothing is loaded, no frame shows them. Pages set a policy of their own. */
    private static final String NOT_A_PAGE =
            "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'; base-uri 'none'; form-action"
                    + " 'none'";

    private final AllowedHosts hosts;

    HostAndOriginFilter(Environment environment) {
        hosts = AllowedHosts.of(environment);
    }

    @Override
    protected boolean shouldNotFilterAsyncDispatch() {
        return false;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        response.setHeader("Content-Security-Policy", NOT_A_PAGE);
        AllowedHosts.SECURITY_HEADERS.forEach(response::setHeader);
        if (!isAllowedHost(request)) {
            refuse(response, AllowedHosts.MISDIRECTED_REQUEST, AllowedHosts.REFUSAL);
        } else if (isCrossOrigin(request)) {
            refuse(
                    response,
                    HttpStatus.FORBIDDEN.value(),
                    "Longrun answers requests from its own pages, not from those of another origin.\n");
        } else if (isErrorPageRequested(request)) {
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

    private boolean isAllowedHost(HttpServletRequest request) {
        return hosts.has(request.getHeader(HttpHeaders.HOST)) && hosts.has(request.getServerName());
    }

    private static boolean isCrossOrigin(HttpServletRequest request) {
        String origin = request.getHeader(HttpHeaders.ORIGIN);
        if (origin != null) {
            return !authority(origin).equals(authority("//" + request.getHeader(HttpHeaders.HOST)));
        }
        String site = request.getHeader("Sec-Fetch-Site");
        return site != null && !site.equals("same-origin") && !site.equals("none") && !isTopLevelNavigation(request);
    }

    /** A link on any page may open Longrun in a page of its own, which the linking page cannot read. */
    private static boolean isTopLevelNavigation(HttpServletRequest request) {
        return request.getMethod().equals("GET")
                && "navigate".equals(request.getHeader("Sec-Fetch-Mode"))
                && "document".equals(request.getHeader("Sec-Fetch-Dest"));
    }

    /** Host and port, the port left off where it is the usual one. */
    private static String authority(String origin) {
        String rest = origin.substring(origin.indexOf("//") + 2).toLowerCase(Locale.ROOT);
        return origin.contains("//") ? rest.replaceFirst(":(80|443)?$", "") : "";
    }

    /** The servlet container fetches the error page itself; to a client it does not exist. */
    private static boolean isErrorPageRequested(HttpServletRequest request) {
        return request.getDispatcherType() == DispatcherType.REQUEST
                && request.getServletPath().equals("/error");
    }
}
