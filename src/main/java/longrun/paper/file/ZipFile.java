package longrun.paper.file;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Many files in one. */
public final class ZipFile {

    private ZipFile() {}

    /**
     * Writes files into a zip.
     *
     * @param files by name, in their order
     * @param date the day all of them bear, so that the same files give the same bytes
     */
    public static byte[] write(Map<String, byte[]> files, LocalDate date) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                ZipEntry entry = new ZipEntry(file.getKey());
                entry.setTimeLocal(date.atStartOfDay());
                zip.putNextEntry(entry);
                zip.write(file.getValue());
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a zip in memory", e);
        }
        return bytes.toByteArray();
    }
}
