package longrun.review.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import longrun.finding.Finding;
import longrun.origin.Confidence;
import longrun.origin.Origin;
import longrun.piping.Outlet;
import longrun.piping.Stage;
import longrun.plan.PlanPath;
import longrun.plan.choice.Named;
import longrun.plan.choice.PartKind;
import longrun.review.Review;
import longrun.sizing.SectionSize;
import longrun.sizing.StageSize;

/** Writes a review as the document {@code longrun-review/1}. */
public final class ReviewJson {

    /** The format this program writes. */
    public static final String FORMAT = "longrun-review/1";

    private final Review review;
    private final SizingOrigins sizingOrigins;
    private final PressureJson pressure;
    private final Map<String, Supplier<Origin>> origins = new LinkedHashMap<>();

    private ReviewJson(Review review) {
        this.review = review;
        this.sizingOrigins = new SizingOrigins(review);
        this.pressure = new PressureJson(review);
    }

    /**
     * The review as a document.
     *
     * @param unread JSON pointers of the plan's entries that this program does not know
     * @param withOrigin whether each number's origin is written too, under "origin" by the number's JSON pointer
     */
    public static ObjectNode write(Review review, List<String> unread, boolean withOrigin) {
        ReviewJson json = new ReviewJson(review);
        ReviewObject root = json.document(unread);
        if (withOrigin) {
            ObjectNode all = root.node().putObject("origin");
            json.origins.forEach((pointer, origin) -> all.set(pointer, OriginJson.write(origin.get())));
        }
        return root.node();
    }

    /** Where each number of a review comes from, by the number's JSON pointer, in the order the document has them. */
    public static Map<String, Origin> origins(Review review) {
        ReviewJson json = new ReviewJson(review);
        json.document(List.of());
        Map<String, Origin> all = new LinkedHashMap<>();
        json.origins.forEach((pointer, origin) -> all.put(pointer, origin.get()));
        return Collections.unmodifiableMap(all);
    }

    /**
     * A number of a review with its origin.
     *
     * @param number as the document has it
     * @param arrangement the hot-water arrangement it belongs to; blank where it belongs to none
     * @param origin where it comes from
     */
    public record Numbered(double number, String arrangement, Origin origin) {}

    /** Every number of a review with its origin, by its JSON pointer, in the order the document has them. */
    public static Map<String, Numbered> numbers(Review review) {
        ReviewJson json = new ReviewJson(review);
        ObjectNode root = json.document(List.of()).node();
        Map<String, Numbered> all = new LinkedHashMap<>();
        json.origins.forEach((pointer, origin) ->
                all.put(pointer, new Numbered(root.at(pointer).asDouble(), arrangement(root, pointer), origin.get())));
        return Collections.unmodifiableMap(all);
    }

    private static String arrangement(ObjectNode root, String pointer) {
        PlanPath at = PlanPath.of(pointer);
        if (at.step(1).equals("events")) {
            return root.at("/hotWater/events/" + at.step(2) + "/arrangement").asText("");
        }
        return at.step(1).equals("arrangements") ? at.step(2) : "";
    }

    private ReviewObject document(List<String> unread) {
        ReviewObject root = ReviewObject.root(origins);
        root.text("format", FORMAT);
        root.btuh("connectedLoadBtuh", Optional.of(review.connectedLoad()), sizingOrigins::connectedLoad);
        root.bool("connectedLoadComplete", review.connectedLoadComplete());
        ReviewObject.Items stages = root.list("stages");
        for (int i = 0; i < review.piping().stages().size(); i++) {
            stage(stages.add(), i);
        }
        ReviewObject.Items sections = root.list("sections");
        for (int i = 0; i < review.piping().sectionCount(); i++) {
            section(sections.add(), i);
        }
        pressure.write(root);
        review.tank().ifPresent(t -> TankJson.write(t, root.child("tank")));
        review.fuel().ifPresent(f -> FuelJson.write(f, root.child("fuel")));
        review.fuel().ifPresent(f -> HotWaterJson.write(review, f, root.child("hotWater")));
        ReviewObject.Items findings = root.list("findings");
        review.findings().forEach(f -> finding(findings.add(), f));
        if (!unread.isEmpty()) {
            ReviewObject.Items list = root.list("unread");
            unread.forEach(list::add);
        }
        return root;
    }

    private void stage(ReviewObject out, int i) {
        Stage stage = review.piping().stages().get(i);
        StageSize size = review.sizing().stage(i);
        out.text("regulator", stage.id());
        out.text("side", stage.side().written());
        out.btuh("loadBtuh", review.piping().load(stage).whole(), () -> sizingOrigins.stageLoad(stage));
        out.bool("complete", review.piping().isComplete(i));
        out.feet("longestRunFt", size.longestRun(), () -> sizingOrigins.longestRun(i));
        out.feet("measuredFt", size.measured(), () -> sizingOrigins.measuredRun(i));
        out.feet("allowanceFt", size.allowance(), () -> sizingOrigins.allowance(i));
        review.sizing()
                .withoutAssumedParts()
                .map(s -> s.stage(i).longestRun())
                .filter(run -> !run.equals(size.longestRun()))
                .ifPresent(run ->
                        out.feet("longestRunWithoutAssumedFt", run, () -> sizingOrigins.longestRunWithoutAssumed(i)));
        out.text("longestRunTo", size.longestRunTo().map(Outlet::id));
        pressure.stage(out, i);
    }

    private void section(ReviewObject out, int i) {
        SectionSize size = review.sizing().section(i);
        out.text("id", review.piping().section(i).id());
        out.btuh("loadBtuh", review.piping().load(i).whole(), () -> sizingOrigins.sectionLoad(i));
        out.feet("measuredFt", review.piping().measured(i), () -> sizingOrigins.measured(i));
        out.feet("rowFt", size.rowRun(), () -> sizingOrigins.row(i));
        out.text("size", size.size());
        out.text("sizeOd", size.sizeOd());
        out.text("neededSize", size.neededSize());
        out.btuh("capacityBtuh", size.capacity(), () -> sizingOrigins.capacity(i));
        out.number(
                "usedPercent",
                size.shareUsed().isPresent()
                        ? java.util.OptionalDouble.of(size.shareUsed().getAsDouble() * 100)
                        : java.util.OptionalDouble.empty(),
                () -> sizingOrigins.shareUsed(i));
        out.text("status", size.status().written());
        if (size.size().isPresent() && review.piping().isProvisional(i)) {
            out.bool("provisional", true);
        }
        if (review.piping().section(i).isAssumed()) {
            out.bool("assumed", true);
        }
        assumed(out, i, size);
        out.text(
                "noSizeBecause",
                size.noSize()
                        .map(r -> r.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-')));
        out.text("table", size.table().filter(t -> size.row().isPresent()).map(t -> t.id()));
        out.text("confidence", size.confidence().map(Confidence::written));
        pressure.section(out, i);
    }

    /** The parts counted at the section's end that nobody has entered or seen, and the size without them if it differs. */
    private void assumed(ReviewObject out, int i, SectionSize size) {
        List<PartKind> assumed = review.sizing().assumedParts(i);
        if (!assumed.isEmpty()) {
            ReviewObject.Items parts = out.list("assumedParts");
            assumed.forEach(p -> parts.add(p.written()));
        }
        Optional<String> without =
                review.sizing().withoutAssumedParts().flatMap(s -> s.section(i).neededSize());
        if (without.isPresent() && !without.equals(size.neededSize())) {
            out.text("neededSizeWithoutAssumed", without);
        }
    }

    private static void finding(ReviewObject out, Finding f) {
        out.text("rule", f.rule());
        out.text("severity", f.severity().written());
        out.text("at", f.at());
        out.text("found", f.found());
        out.text("required", f.required());
        out.text("reference", f.reference());
        out.text("edition", f.edition());
        out.text("confidence", f.confidence().written());
        out.text("remedy", f.remedy());
        out.text("ask", f.ask());
        out.text("askWhom", Optional.of(f).flatMap(Finding::askWhom).map(Named::written));
        out.text("field", f.field());
        f.answer().ifPresent(a -> {
            ReviewObject answer = out.child("answer");
            answer.text("says", a.says().written());
            answer.text("who", a.who());
            answer.text("date", a.date());
        });
    }
}
