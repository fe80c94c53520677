package longrun.draft;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import longrun.draft.entry.DraftValue;
import longrun.plan.Plan;
import longrun.plan.json.PlanReader;

/** Reads and names plan files, and packs many of them into one zip. */
public final class PlanFiles {

    /** The largest plan file that is read, in bytes. */
    static final int MOST_BYTES = 1 << 20;

    /** The most plan files that are read from one zip. */
    static final int MOST_FILES = 500;

    private static final int LONGEST_NAME = 80;

    private PlanFiles() {}

    /**
     * A plan file.
     *
     * @param name its file name
     * @param text its content
     */
    public record PlanFile(String name, String text) {}

    /** A zip cannot be opened. The message says why, as a clause without a full stop. */
    public static final class NotAZip extends Exception {
        private static final long serialVersionUID = 1L;

        public NotAZip(String why) {
            super(why);
        }
    }

    /**
     * Reads a plan file.
     *
     * @throws NotAPlan where the text is not JSON or not a plan
     */
    public static DraftValue read(String text) throws NotAPlan {
        JsonNode node;
        try {
            node = PlanReader.tree(text);
        } catch (JsonProcessingException e) {
            throw new NotAPlan("it is not a plan file: it cannot be read as JSON");
        }
        if (node instanceof ObjectNode plan && plan.path("format").asText().equals(Plan.FORMAT)) {
            return DraftValue.of(plan);
        }
        throw new NotAPlan("it is not a plan file: a plan says \"format\": \"" + Plan.FORMAT + "\"");
    }

    /** A file name made of a house's name, without characters that some file systems refuse. */
    public static String fileName(String house) {
        String plain = house.replaceAll("[\\p{Cntrl}\\\\/:*?\"<>|\\p{Cf}]", " ")
                .replaceAll("\\s+", " ")
                .strip();
        plain = plain.replaceAll("^\\.+|\\.+$", "").strip();
        if (plain.codePointCount(0, plain.length()) > LONGEST_NAME) {
            plain = plain.substring(0, plain.offsetByCodePoints(0, LONGEST_NAME))
                    .strip();
        }
        return (plain.isEmpty() ? "house" : plain) + ".json";
    }

    /** Packs files into one zip; where two have the same name, the later gets a number. */
    public static byte[] zip(List<PlanFile> files) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Set<String> taken = new HashSet<>();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            for (PlanFile each : files) {
                zip.putNextEntry(new ZipEntry(unlike(taken, each.name())));
                zip.write(each.text().getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a zip in memory", e);
        }
        return bytes.toByteArray();
    }

    private static String unlike(Set<String> taken, String name) {
        String free = name;
        for (int i = 2; !taken.add(free.toLowerCase(Locale.ROOT)); i++) {
            free = name.substring(0, name.length() - ".json".length()) + " " + i + ".json";
        }
        return free;
    }

    /**
     * Reads the plan files in a zip and ignores other files.
     *
     * @throws NotAZip where it is no zip, holds no plan file, or more or larger ones than allowed
     */
    public static List<PlanFile> unzip(byte[] bytes) throws NotAZip {
        List<PlanFile> files = new ArrayList<>();
        boolean any = false;
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes), StandardCharsets.UTF_8)) {
            for (ZipEntry each = zip.getNextEntry(); each != null; each = zip.getNextEntry()) {
                any = true;
                String name = each.getName().substring(each.getName().lastIndexOf('/') + 1);
                if (each.isDirectory() || !name.toLowerCase(Locale.ROOT).endsWith(".json") || name.startsWith(".")) {
                    continue;
                }
                byte[] text = zip.readNBytes(MOST_BYTES + 1);
                if (text.length > MOST_BYTES) {
                    throw new NotAZip(name + " in it is over 1 MiB, and no plan is");
                }
                if (files.size() == MOST_FILES) {
                    throw new NotAZip("it holds more than " + MOST_FILES + " plan files");
                }
                files.add(new PlanFile(name, new String(text, StandardCharsets.UTF_8)));
            }
        } catch (IOException | IllegalArgumentException e) {
            throw new NotAZip("it cannot be read as a zip");
        }
        if (files.isEmpty()) {
            throw new NotAZip(any ? "it holds no plan file, a name ending in .json" : "it cannot be read as a zip");
        }
        return files;
    }
}
