package longrun;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import longrun.plan.Plan;
import longrun.plan.json.PlanReader;
import longrun.plan.json.Reading;

/** Plans that more than one test reads. */
public final class Samples {

    private Samples() {}

    /** The text of a test resource below longrun/. */
    public static String text(String name) {
        return resource("/longrun/" + name);
    }

    /** The text of a resource of the program or its tests. */
    public static String resource(String path) {
        try (InputStream in = Samples.class.getResourceAsStream(path)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The plan a text holds; fails with its errors where it can't be read. */
    public static Plan plan(String json) {
        Reading reading = PlanReader.read(json);
        return reading.plan()
                .orElseThrow(() -> new AssertionError(reading.errors().toString()));
    }

    /** The plan that documents the format. */
    public static Plan sample() {
        return plan(text("sample-plan.json"));
    }
}
