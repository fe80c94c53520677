package longrun.store;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import longrun.store.Outcome.Saved;

/** A program of its own that saves without end and tells each save it was told of, until it is killed. */
final class SavingProgram {

    private SavingProgram() {}

    public static void main(String[] args) {
        OpenStore store = new OpenStore(Path.of(args[0]));
        List<ListedHouse> houses = store.drafts.list();
        Draft draft = houses.isEmpty()
                ? store.drafts.create("killed", text(0))
                : store.drafts.find(houses.get(0).id()).orElseThrow();
        while (true) {
            int next = (int) draft.version();
            draft = ((Saved) store.drafts.save(draft.id(), text(next), draft.version())).draft();
            System.out.println("saved " + next);
        }
    }

    static String text(int number) {
        return Texts.ofLength(8_000, number);
    }

    static Process start(Path folder) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        SavingProgram.class.getName(),
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    /** The number that the line tells, -1 where it tells none or was cut off. */
    static int told(BufferedReader lines) throws IOException {
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            if (line.startsWith("saved ")) {
                return Integer.parseInt(line.substring(6));
            }
        }
        return -1;
    }
}
