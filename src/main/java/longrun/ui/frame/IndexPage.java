package longrun.ui.frame;

import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.VaadinServiceInitListener;
import java.security.SecureRandom;
import java.util.Base64;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.springframework.stereotype.Component;

/** The first HTML page: its language, security policy and style sheet, and the light or dark theme at once, so that nothing flashes. */
@Component
class IndexPage implements VaadinServiceInitListener {

    private static final long serialVersionUID = 1L;

    private static final SecureRandom RANDOM = new SecureRandom();

    private static final String THEME_AT_ONCE = """
        (() => { let t = null; try { t = localStorage.getItem('longrun-theme'); } catch (e) { t = null; }
        t = t || (matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light');
        document.documentElement.setAttribute('theme', t); })();
        """;

    private static final String ICON =
            "data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg' viewBox='-1 -5 32 32'%3E"
                    + "%3Cpath d='M2 20V8l12 7L28 7' fill='none' stroke='%238A4318' stroke-width='3'/%3E%3C/svg%3E";

    /**
     * The content security policy: this program's own files, and scripts in the page that carry the nonce of this answer. The
     * framework compiles functions from text (unsafe-eval) and writes styles into the page (unsafe-inline).
     */
    private static String policy(String nonce) {
        return "default-src 'none'; script-src 'self' 'nonce-" + nonce + "' 'unsafe-eval'; style-src 'self'"
                + " 'unsafe-inline'; img-src 'self' data:; font-src 'self' data:; connect-src 'self'; manifest-src"
                + " 'self'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";
    }

    private static String nonce() {
        byte[] bytes = new byte[18];
        RANDOM.nextBytes(bytes);
        return Base64.getEncoder().encodeToString(bytes);
    }

    @Override
    public void serviceInit(ServiceInitEvent event) {
        event.addIndexHtmlRequestListener(response -> {
            Document page = response.getDocument();
            page.select("html").attr("lang", "en");
            Element head = page.head();
            head.prependElement("script").text(THEME_AT_ONCE);
            head.appendElement("link").attr("rel", "stylesheet").attr("href", "frontend/look.css");
            head.appendElement("link").attr("rel", "icon").attr("href", ICON);
            head.appendElement("meta").attr("name", "color-scheme").attr("content", "light dark");
            String nonce = nonce();
            page.select("script").forEach(script -> script.attr("nonce", nonce));
            response.getVaadinResponse().setHeader("Content-Security-Policy", policy(nonce));
        });
    }
}
