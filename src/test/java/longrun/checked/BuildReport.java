package longrun.checked;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Map;
import longrun.checked.report.BuildResult;
import longrun.checked.report.Report;
import longrun.paper.checked.CheckedFile;

/** Writes the report on what was checked, with what the tests of this build found; the build runs it after all tests. */
public final class BuildReport {

    private BuildReport() {}

    /** @param folder where the page and the print go */
    public static void main(String[] folder) throws IOException {
        write(Path.of(folder[0]));
    }

    static Report report() {
        Map<String, BuildResult> found = new LinkedHashMap<>();
        for (SecondWay way : SecondWay.listAll()) {
            Ran.find(way.id())
                    .ifPresent(r -> found.put(way.id(), new BuildResult(r.count(), r.seed(), r.worst(), r.when())));
        }
        return Report.of(found);
    }

    static void write(Path folder) throws IOException {
        Report report = report();
        LocalDate made = LocalDate.now(ZoneOffset.UTC);
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("checked.html"), CheckedFile.html(report, made));
        Files.write(folder.resolve("checked.pdf"), CheckedFile.pdf(report, made));
    }
}
