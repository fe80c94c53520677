package longrun.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * The dated backup copies of the saved houses, each made by the database's own backup command. Kept are the last copy of
 * each of the last ten days that have one, the last copy of each of the last six months, and the last three made before
 * a change of version.
 */
final class BackupCopies {

    static final int DAYS = 10;
    static final int MONTHS = 6;
    private static final int BEFORE_VERSIONS = 3;

    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmmss", Locale.ROOT);
    private static final Pattern NAME =
            Pattern.compile("longrun-(\\d{4}-\\d\\d-\\d\\d-\\d{6})-change-(\\d{1,18})(-before-version-\\d+)?\\.zip");

    private final StoreFolder folder;

    BackupCopies(StoreFolder folder) {
        this.folder = folder;
    }

    /**
     * One backup copy.
     *
     * @param file the zip that holds the database
     * @param made when it was made, by the clock of this computer
     * @param changes how many changes had been stored when it was made
     * @param beforeVersion whether it was made before the store was brought to a later version
     */
    record Copy(Path file, LocalDateTime made, long changes, boolean beforeVersion) {}

    /** All copies in the folder, the newest first; empty where the folder is missing or cannot be read. */
    List<Copy> list() {
        if (!Files.isDirectory(folder.copies())) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder.copies())) {
            return files.flatMap(f -> copy(f).stream())
                    .sorted(Comparator.comparing(Copy::made).reversed())
                    .toList();
        } catch (IOException | UncheckedIOException e) {
            return List.of();
        }
    }

    private static Optional<Copy> copy(Path file) {
        Matcher name = NAME.matcher(file.getFileName().toString());
        if (!name.matches()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Copy(
                    file,
                    LocalDateTime.parse(name.group(1), MOMENT),
                    Long.parseLong(name.group(2)),
                    name.group(3) != null));
        } catch (java.time.DateTimeException e) {
            return Optional.empty();
        }
    }

    /** Makes a copy of the open database, unless the last copy already holds as many changes; then deletes old copies. */
    void makeIfChanged(Connection houses, long changes, Clock clock) throws IOException, SQLException {
        List<Copy> before = list();
        if (before.isEmpty() || before.get(0).changes() != changes) {
            make(houses, changes, "", clock);
        }
        deleteOld();
    }

    /** Makes a copy before the store is brought to a later version. */
    void makeBeforeVersion(Connection houses, long changes, String version, Clock clock)
            throws IOException, SQLException {
        make(houses, changes, "-before-version-" + version, clock);
    }

    private void make(Connection houses, long changes, String why, Clock clock) throws IOException, SQLException {
        StoreFolder.makePrivate(folder.copies());
        LocalDateTime now =
                LocalDateTime.ofInstant(clock.instant(), ZoneId.systemDefault()).truncatedTo(ChronoUnit.SECONDS);
        Path unfinished = folder.copies().resolve("begun.zip.part");
        try {
            Files.deleteIfExists(unfinished);
            Files.createFile(unfinished);
            StoreFolder.restrictToOwner(unfinished);
            try (Statement backup = houses.createStatement()) {
                backup.execute("backup to '" + unfinished.toString().replace("'", "''") + "'");
            }
            StoreFolder.restrictToOwner(unfinished);
            Files.move(
                    unfinished,
                    folder.copies().resolve("longrun-" + MOMENT.format(now) + "-change-" + changes + why + ".zip"),
                    StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(unfinished);
        }
    }

    private void deleteOld() throws IOException {
        Set<LocalDate> days = new HashSet<>();
        Set<YearMonth> months = new HashSet<>();
        int beforeVersions = 0;
        for (Copy each : list()) {
            LocalDate day = each.made().toLocalDate();
            boolean kept;
            if (each.beforeVersion()) {
                kept = ++beforeVersions <= BEFORE_VERSIONS;
            } else {
                boolean lastOfDay = days.size() < DAYS && !days.contains(day);
                boolean lastOfMonth = months.size() < MONTHS && !months.contains(YearMonth.from(day));
                kept = lastOfDay || lastOfMonth;
                days.add(day);
                months.add(YearMonth.from(day));
            }
            if (!kept) {
                Files.deleteIfExists(each.file());
            }
        }
    }

    /**
     * Unpacks the database in a copy to a file.
     *
     * @throws IOException where the copy holds no database or the disk fails
     */
    static void unpack(Copy copy, Path to) throws IOException {
        try (InputStream in = Files.newInputStream(copy.file());
                ZipInputStream zip = new ZipInputStream(in)) {
            for (ZipEntry each = zip.getNextEntry(); each != null; each = zip.getNextEntry()) {
                if (each.getName().endsWith(StoreFolder.NAME + ".mv.db")) {
                    Files.copy(zip, to, StandardCopyOption.REPLACE_EXISTING);
                    StoreFolder.restrictToOwner(to);
                    return;
                }
            }
        }
        throw new IOException("the copy holds no saved houses");
    }
}
