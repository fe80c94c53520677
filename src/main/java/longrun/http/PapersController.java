package longrun.http;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import longrun.paper.Papers;
import longrun.paper.page.PaperSize;
import longrun.paper.page.Printing;
import longrun.plan.Plan;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** A plan goes in, its sheets and its drawing come out. */
@RestController
class PapersController {

    private static final MediaType CSV = new MediaType("text", "csv", StandardCharsets.UTF_8);
    private static final MediaType SVG = MediaType.parseMediaType("image/svg+xml");

    private final Reviewer reviewer;
    private final Clock clock;
    private final PlanDesk desk;

    PapersController(Reviewer reviewer, Clock clock, PlanDesk desk) {
        this.reviewer = reviewer;
        this.clock = clock;
        this.desk = desk;
    }

    /**
     * The sheets of a plan as a PDF.
     *
     * @param sheet one of the sheets; without it all come in one file
     * @param paper {@code letter} or {@code a4}
     * @param date the day on the sheets, year first; without it the day of the tank's gauge reading, else today
     */
    @PostMapping(path = "/api/report.pdf", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<?> report(
            @RequestBody(required = false) byte @Nullable [] body,
            @RequestParam(required = false) Optional<String> sheet,
            @RequestParam(defaultValue = "letter") String paper,
            @RequestParam(required = false) Optional<String> date) {
        return desk.answer(body, (reading, text) -> papers(reading.plan().orElseThrow(), text, sheet, paper, date));
    }

    private ResponseEntity<?> papers(
            Plan plan, String text, Optional<String> sheet, String paper, Optional<String> date) {
        if (sheet.isPresent() && !Papers.listSlugs().contains(sheet.get())) {
            return Problems.notFound(
                    "There is no such sheet; there are " + String.join(", ", Papers.listSlugs()) + ".");
        }
        Optional<PaperSize> size = findSize(paper);
        if (size.isEmpty()) {
            return Problems.wrongQuestion("paper is " + names() + ".");
        }
        LocalDate day;
        try {
            day = date.map(LocalDate::parse)
                    .orElseGet(() ->
                            gaugeDate(plan).orElseGet(() -> LocalDate.now(clock.withZone(ZoneId.systemDefault()))));
        } catch (DateTimeParseException e) {
            return Problems.wrongQuestion("date is a day, year first, such as 2026-10-01.");
        }
        Printing printing = new Printing(reviewer.review(plan, ReviewParts.ALL), text, day, size.get());
        byte[] pdf = sheet.flatMap(s -> Papers.findPdf(s, printing)).orElseGet(() -> Papers.pdf(printing));
        return file(pdf, MediaType.APPLICATION_PDF, "longrun-" + sheet.orElse("papers") + ".pdf");
    }

    /** The isometric drawing of a plan's route. */
    @PostMapping(path = "/api/drawing.svg", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<?> drawing(@RequestBody(required = false) byte @Nullable [] body) {
        return desk.answer(body, (reading, text) -> drawn(reading.plan().orElseThrow()));
    }

    private ResponseEntity<?> drawn(Plan plan) {
        String svg = Papers.drawing(reviewer.review(plan, ReviewParts.PIPING));
        return file(svg.getBytes(StandardCharsets.UTF_8), SVG, "longrun-drawing.svg");
    }

    /** The parts list of a plan for a spreadsheet. */
    @PostMapping(path = "/api/materials.csv", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<?> materials(@RequestBody(required = false) byte @Nullable [] body) {
        return desk.answer(body, (reading, text) -> listed(reading.plan().orElseThrow()));
    }

    private ResponseEntity<?> listed(Plan plan) {
        return file(
                Papers.materials(reviewer.review(plan, ReviewParts.PIPING)).getBytes(StandardCharsets.UTF_8),
                CSV,
                "longrun-materials.csv");
    }

    private static ResponseEntity<byte[]> file(byte[] content, MediaType type, String name) {
        return ResponseEntity.ok()
                .contentType(type)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment().filename(name).build().toString())
                .body(content);
    }

    private static Optional<LocalDate> gaugeDate(Plan plan) {
        return plan.allTanks().stream()
                .flatMap(t -> t.gaugeDate().findValue().stream())
                .min(Comparator.naturalOrder());
    }

    private static Optional<PaperSize> findSize(String name) {
        return Arrays.stream(PaperSize.values())
                .filter(s -> s.name().equals(name.toUpperCase(Locale.ROOT)))
                .findFirst();
    }

    private static String names() {
        return Arrays.stream(PaperSize.values())
                .map(s -> s.name().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(" or "));
    }
}
