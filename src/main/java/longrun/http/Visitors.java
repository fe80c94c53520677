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
 * Forgets visitors that never came back: whoever does not keep its cookie makes a new session with each page. A browser
 * comes back at once, for what the page needs, and is not counted.
 */
@Component
class Visitors extends OncePerRequestFilter implements HttpSessionListener {

    private final int most;
    private final Map<String, HttpSession> once = new LinkedHashMap<>();

    Visitors(ServiceLimits limits) {
        this.most = limits.sessions();
    }

    @Override
    public void sessionCreated(HttpSessionEvent event) {
        List<HttpSession> forgotten = new ArrayList<>();
        synchronized (once) {
            once.put(event.getSession().getId(), event.getSession());
            var oldest = once.values().iterator();
            while (once.size() > most) {
                forgotten.add(oldest.next());
                oldest.remove();
            }
        }
        forgotten.forEach(Visitors::forget);
    }

    private static void forget(HttpSession session) {
        try {
            session.invalidate();
        } catch (IllegalStateException e) {
            // it ended by itself meanwhile
        }
    }

    @Override
    public void sessionDestroyed(HttpSessionEvent event) {
        cameBack(event.getSession());
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        HttpSession session = request.getSession(false);
        if (session != null) {
            cameBack(session);
        }
        chain.doFilter(request, response);
    }

    private void cameBack(HttpSession session) {
        synchronized (once) {
            once.remove(session.getId());
        }
    }
}
