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

/** Takes a plan and answers with its sheets, its drawing or its parts list. */
@RestController
class PapersController {

    private static final MediaType CSV = new MediaType("text", "csv", StandardCharsets.UTF_8);
    private static final MediaType SVG = MediaType.parseMediaType("image/svg+xml");

    private final Reviewer reviewer;
    private final Clock clock;
    private final PlanRequests requests;

    PapersController(Reviewer reviewer, Clock clock, PlanRequests requests) {
        this.reviewer = reviewer;
        this.clock = clock;
        this.requests = requests;
    }

    /**
     * The sheets of a plan as a PDF.
     *
     * @param sheet the name of one sheet; without it the file holds all of them
     * @param paper {@code letter} or {@code a4}
     * @param date the date on the sheets, year first; without it the earliest date of a tank's gauge reading, or today where
     *     there is none
     */
    @PostMapping(path = "/api/report.pdf", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<?> report(
            @RequestBody(required = false) byte @Nullable [] body,
            @RequestParam(required = false) Optional<String> sheet,
            @RequestParam(defaultValue = "letter") String paper,
            @RequestParam(required = false) Optional<String> date) {
        return requests.answer(body, (reading, text) -> papers(reading.plan().orElseThrow(), text, sheet, paper, date));
    }

    private ResponseEntity<?> papers(
            Plan plan, String text, Optional<String> sheet, String paper, Optional<String> date) {
        if (sheet.isPresent() && !Papers.listSlugs().contains(sheet.get())) {
            return Problems.notFound(
                    "There is no sheet of that name. The sheets are " + String.join(", ", Papers.listSlugs()) + ".");
        }
        Optional<PaperSize> size = findSize(paper);
        if (size.isEmpty()) {
            return Problems.badParameter("paper must be " + paperNames() + ".");
        }
        LocalDate day;
        try {
            day = date.map(LocalDate::parse)
                    .orElseGet(() ->
                            gaugeDate(plan).orElseGet(() -> LocalDate.now(clock.withZone(ZoneId.systemDefault()))));
        } catch (DateTimeParseException e) {
            return Problems.badParameter("date must be a date, year first, such as 2026-10-01.");
        }
        Printing printing = new Printing(reviewer.review(plan, ReviewParts.ALL), text, day, size.get());
        byte[] pdf = sheet.flatMap(s -> Papers.findPdf(s, printing)).orElseGet(() -> Papers.pdf(printing));
        return file(pdf, MediaType.APPLICATION_PDF, "longrun-" + sheet.orElse("papers") + ".pdf");
    }

    /** The isometric drawing of a plan's route. */
    @PostMapping(path = "/api/drawing.svg", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<?> drawing(@RequestBody(required = false) byte @Nullable [] body) {
        return requests.answer(body, (reading, text) -> isometric(reading.plan().orElseThrow()));
    }

    private ResponseEntity<?> isometric(Plan plan) {
        String svg = Papers.drawing(reviewer.review(plan, ReviewParts.PIPING));
        return file(svg.getBytes(StandardCharsets.UTF_8), SVG, "longrun-drawing.svg");
    }

    /** The parts list of a plan as CSV, for a spreadsheet. */
    @PostMapping(path = "/api/materials.csv", consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<?> materials(@RequestBody(required = false) byte @Nullable [] body) {
        return requests.answer(body, (reading, text) -> partsList(reading.plan().orElseThrow()));
    }

    private ResponseEntity<?> partsList(Plan plan) {
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

    private static String paperNames() {
        return Arrays.stream(PaperSize.values())
                .map(s -> s.name().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(" or "));
    }
}
