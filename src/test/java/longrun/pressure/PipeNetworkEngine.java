package longrun.pressure;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.util.List;
import java.util.Map;

/**
 * A general engine for networks of pipes under pressure, which solves all flows and heads at once by the gradient
 * method and knows nothing of trees: OWA-EPANET 2.3 as published for browsers. It runs in a page; its files are this
 * package's test resources, with their licence.
 */
final class PipeNetworkEngine {

    private static final String SITE = "http://pipe-network.test/";

    private final Page page;

    /** @param page an empty one */
    PipeNetworkEngine(Page page) {
        this.page = page;
        page.route(SITE + "**", PipeNetworkEngine::serve);
        page.navigate(SITE);
    }

    /**
     * Solves networks one after the other.
     *
     * @param networks each as {@link PipeNetwork#text} gives it
     * @param times how often each is solved anew
     */
    @SuppressWarnings("unchecked")
    List<Solved> solve(List<Map<String, Object>> networks, int times) {
        List<Map<String, Object>> found = (List<Map<String, Object>>) page.evaluate(
                "async ([networks, times]) => (await import('./solve.mjs')).solve(networks, times)",
                List.of(networks, times));
        return found.stream().map(Solved::of).toList();
    }

    /**
     * What the engine found.
     *
     * @param heads at the junctions, in their order
     * @param millis of one solution, the network being open
     */
    record Solved(List<Double> heads, double millis) {

        private static Solved of(Map<String, Object> found) {
            return new Solved(
                    ((List<?>) found.get("heads")).stream().map(Solved::number).toList(), number(found.get("took")));
        }

        private static double number(Object value) {
            return ((Number) value).doubleValue();
        }
    }

    private static void serve(Route route) {
        String name = URI.create(route.request().url()).getPath().substring(1);
        try (InputStream in = PipeNetworkEngine.class.getResourceAsStream("network/" + name)) {
            Route.FulfillOptions answer = new Route.FulfillOptions()
                    .setContentType(
                            name.endsWith(".mjs")
                                    ? "text/javascript"
                                    : name.endsWith(".wasm") ? "application/wasm" : "text/html");
            if (name.isEmpty() || in == null) {
                route.fulfill(answer.setBody(""));
            } else {
                route.fulfill(answer.setBodyBytes(in.readAllBytes()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
