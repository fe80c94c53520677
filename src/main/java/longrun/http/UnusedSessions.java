package longrun.http;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import jakarta.servlet.http.HttpSessionEvent;
import jakarta.servlet.http.HttpSessionListener;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Limits the sessions that were used only once. A client that does not keep its cookie is given a new session with each
 * page; past the limit the oldest of these ends. A browser asks again at once for the rest of its page and is not
 * counted.
 */
@Component
class UnusedSessions extends OncePerRequestFilter implements HttpSessionListener {

    private final int most;
    private final Map<String, HttpSession> usedOnce = new LinkedHashMap<>();

    UnusedSessions(ServiceLimits limits) {
        this.most = limits.sessions();
    }

    @Override
    public void sessionCreated(HttpSessionEvent event) {
        List<HttpSession> ended = new ArrayList<>();
        synchronized (usedOnce) {
            usedOnce.put(event.getSession().getId(), event.getSession());
            var oldest = usedOnce.values().iterator();
            while (usedOnce.size() > most) {
                ended.add(oldest.next());
                oldest.remove();
            }
        }
        ended.forEach(UnusedSessions::end);
    }

    private static void end(HttpSession session) {
        try {
            session.invalidate();
        } catch (IllegalStateException e) {
            // it has ended by itself in the meantime
        }
    }

    @Override
    public void sessionDestroyed(HttpSessionEvent event) {
        markUsedAgain(event.getSession());
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        HttpSession session = request.getSession(false);
        if (session != null) {
            markUsedAgain(session);
        }
        chain.doFilter(request, response);
    }

    private void markUsedAgain(HttpSession session) {
        synchronized (usedOnce) {
            usedOnce.remove(session.getId());
        }
    }
}
