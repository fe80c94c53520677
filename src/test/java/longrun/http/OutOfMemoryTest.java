package longrun.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A program without memory ends and says so; it never lives on and answers nothing. */
class OutOfMemoryTest {

    /** A program that fills its memory. */
    static final class Greedy {

        private static final List<byte[]> KEPT = new ArrayList<>();

        private Greedy() {}

        public static void main(String[] how) throws InterruptedException {
            OutOfMemory.watch();
            Thread other = new Thread(how[0].equals("thrown") ? Greedy::fill : Greedy::fillOnAndOn, "worker");
            other.start();
            other.join();
            Thread.sleep(600_000); // what is left of the program would wait for requests
        }

        private static void fill() {
            while (true) {
                KEPT.add(new byte[1 << 16]);
            }
        }

        /** As a library does that catches whatever comes. */
        private static void fillOnAndOn() {
            while (true) {
                try {
                    fill();
                } catch (OutOfMemoryError e) {
                    Thread.yield();
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"thrown", "swallowed"})
    void theProgramEndsWithAMessage(String how) throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx16m",
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Greedy.class.getName(),
                        how)
                .redirectErrorStream(true)
                .start();
        try {
            assertThat(process.waitFor(120, TimeUnit.SECONDS)).as("ended").isTrue();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(said).contains("Longrun ran out of memory and has ended.");
            assertThat(process.exitValue()).isEqualTo(3);
        } finally {
            process.destroyForcibly();
        }
    }
}
