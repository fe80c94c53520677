package longrun.ui.fill;

import com.vaadin.flow.dom.Element;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.draft.fill.FillDraft;
import longrun.draft.fill.FillEntry;
import longrun.draft.fill.FillState;
import longrun.drawing.plot.FillDateBar;
import longrun.drawing.plot.LevelPlot;
import longrun.finding.Finding;
import longrun.fuel.TankLevel;
import longrun.fuel.fill.FillReport;
import longrun.fuel.fill.Range;
import longrun.plan.Plan;
import longrun.ui.frame.AnswerHead;
import longrun.ui.frame.Dom;
import longrun.ui.frame.FindingLine;
import longrun.words.UnitSystem;

/** Beside the entries, always in view: days to the refill gauge, the day to call by, and what hangs on it. */
final class FillAnswerPanel {

    private final AnswerHead head = new AnswerHead();
    private final Element bar = Dom.el("div", "bar-box");
    private final FillSlots slots = new FillSlots();
    private final Element findings = Dom.el("div", "finds");
    private List<Finding> findingsShown = List.of();
    private String barShown = "";

    FillAnswerPanel(Element panel) {
        Element print = Dom.button("act main", "Print, one page").setAttribute("data-do", "print");
        head.addTo(panel, bar);
        panel.appendChild(slots.element(), findings, Dom.el("p", "acts", print));
    }

    /** Shows the answer as far as there is one. */
    void show(
            FillDraft draft,
            FillState now,
            Optional<Plan> plan,
            Optional<FillReport> report,
            LocalDate today,
            UnitSystem units) {
        Optional<Range> range = report.flatMap(r -> r.ranges()).flatMap(r -> r.days());
        Optional<LocalDate> read = plan.flatMap(TankLevel::gaugeDate);
        Optional<Range> fromToday = range.flatMap(r -> read.map(d -> {
            long gone = today.toEpochDay() - d.toEpochDay();
            return new Range(Math.max(0, r.low() - gone), Math.max(0, r.high() - gone));
        }));
        head.title("From today, " + FillState.spoken(today) + ", to the refill gauge"
                + report.filter(r -> now.days().isPresent())
                        .flatMap(r -> r.fuel().nextRefill())
                        .map(d -> ", " + FillState.spoken(d))
                        .orElse(""));
        showHand(now, fromToday);
        showBar(now, report, read, range);
        String calls = now.kind() == FillState.Kind.DATED ? calls(report, read, range) : "";
        head.state(now.words(), (calls + " " + now.because()).strip());
        slots.show(draft, now, plan, report, units);
    }

    private void showHand(FillState now, Optional<Range> fromToday) {
        String big = now.days().map(d -> d <= 0 ? "0" : FillWords.whole(d)).orElseGet(() -> switch (now.kind()) {
            case NO_USE -> "no use entered";
            case NEVER -> "over ten years";
            case WAITING -> "waiting";
            default -> "not yet";
        });
        String beside = now.days().isPresent()
                ? (big.equals("1") ? "day" : "days")
                        + fromToday
                                .map(FillWords::days)
                                .filter(w -> !w.isEmpty())
                                .map(w -> "\n" + w)
                                .orElse("")
                : "";
        head.selected(big + beside, () -> new Element[] {big(big, beside)});
    }

    private static Element big(String big, String beside) {
        if (beside.isEmpty()) {
            return Dom.text("span", "big word", big);
        }
        Element small = Dom.el("small", "");
        for (String line : beside.split("\n")) {
            if (small.getChildCount() > 0) {
                small.appendChild(Dom.el("br", ""));
            }
            small.appendChild(Dom.words(line));
        }
        return Dom.el("span", "big", Dom.text("span", "whole", big), small);
    }

    private void showBar(FillState now, Optional<FillReport> report, Optional<LocalDate> read, Optional<Range> range) {
        String svg = "";
        Optional<LocalDate> refill = report.flatMap(r -> r.fuel().nextRefill());
        Optional<LocalDate> call = report.flatMap(r -> r.fuel().callBy());
        if (now.days().isPresent() && refill.isPresent() && call.isPresent() && read.isPresent() && range.isPresent()) {
            Optional<LocalDate> high = FillWords.after(read.get(), range.get().high());
            if (high.isPresent()) {
                LocalDate low = read.get().plusDays((long) range.get().low());
                svg = new FillDateBar(low, refill.get(), high.get(), call.get()).svg();
            }
        }
        if (!svg.equals(barShown)) {
            barShown = svg;
            bar.setProperty("innerHTML", svg);
        }
    }

    /** "12 to 30 November. This is worked out, not measured: read the gauge again on 1 November." */
    private static String calls(Optional<FillReport> report, Optional<LocalDate> read, Optional<Range> range) {
        Optional<LocalDate> call = report.flatMap(r -> r.fuel().callBy());
        Optional<LocalDate> refill = report.flatMap(r -> r.fuel().nextRefill());
        if (call.isEmpty() || read.isEmpty() || range.isEmpty() || refill.isEmpty()) {
            return "";
        }
        long lead = refill.get().toEpochDay() - call.get().toEpochDay();
        LocalDate early = read.get().plusDays((long) range.get().low()).minusDays(lead);
        String between = "";
        if (range.get().isWide()) {
            String late = FillWords.after(read.get(), range.get().high())
                    .map(d -> LevelPlot.day(d.minusDays(lead)))
                    .orElse("years later");
            between = "It may be " + LevelPlot.day(early) + " to " + late + ". ";
        }
        long half = Math.max(1, (early.toEpochDay() - read.get().toEpochDay()) / 2);
        return between + "This is worked out, not measured: read the gauge again on "
                + LevelPlot.day(read.get().plusDays(half)) + ".";
    }

    void findings(List<Finding> all, FillDraft draft) {
        if (all.equals(findingsShown)) {
            return;
        }
        findingsShown = all;
        List<Element> lines = new ArrayList<>();
        for (Finding f : all) {
            Optional<String> field = draft.lineAt(f.field())
                    .map(c -> c.column().name().toLowerCase(java.util.Locale.ROOT) + "-" + c.line())
                    .or(() -> FillEntry.at(f.field()).map(FactField::id));
            lines.add(FindingLine.of(f, field));
        }
        Dom.fill(findings, lines.toArray(Element[]::new));
    }
}
