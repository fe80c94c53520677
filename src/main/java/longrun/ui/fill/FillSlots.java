package longrun.ui.fill;

import com.vaadin.flow.dom.Element;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import longrun.draft.fill.FillDraft;
import longrun.draft.fill.FillEntry;
import longrun.draft.fill.FillState;
import longrun.drawing.plot.MorningBar;
import longrun.finding.Severity;
import longrun.fuel.fill.FillRanges;
import longrun.fuel.fill.FillReport;
import longrun.fuel.fill.Narrowing;
import longrun.fuel.fill.Range;
import longrun.origin.Figure;
import longrun.plan.Plan;
import longrun.plan.Use;
import longrun.tank.Demand;
import longrun.tank.TankReport;
import longrun.ui.frame.Dom;
import longrun.ui.frame.FindingLine;
import longrun.ui.frame.WhereFrom;
import longrun.ui.house.figure.OriginSteps;
import longrun.words.FigureText;
import longrun.words.UnitSystem;

/** The figures under the day to call by: days of a fill, fills, cost, the coldest morning, and what would narrow it most. */
final class FillSlots {

    private final Slot fill = new Slot("fill", "tri");
    private final Slot fills = new Slot("fills", "");
    private final Slot cost = new Slot("cost", "");
    private final Slot morning = new Slot("morning", "");
    private final Slot narrow = new Slot("narrow", "");

    /** A place that shows something, and where it is from. */
    private static final class Slot {
        private final Element shows = Dom.el("div", "shows");
        private final WhereFrom from;
        private final Element slot;
        private String shown = "";

        Slot(String id, String css) {
            from = new WhereFrom("from-" + id);
            slot = Dom.el("div", "fslot " + css, shows, Dom.el("div", "asks", from.ask(), from.list()));
            from.show(List.of());
        }

        void show(Element... content) {
            Element all = Dom.el("div", "", content);
            String now = all.getOuterHTML();
            if (!now.equals(shown)) {
                shown = now;
                Dom.fill(shows, content);
            }
        }

        void from(List<Figure> figures) {
            from.show(figures.stream()
                    .filter(Figure::isKnown)
                    .flatMap(f -> OriginSteps.of(f.origin()).stream())
                    .distinct()
                    .toList());
        }
    }

    Element element() {
        return Dom.el("div", "slots", fill.slot, fills.slot, cost.slot, morning.slot, narrow.slot);
    }

    void show(FillDraft draft, FillState now, Optional<Plan> plan, Optional<FillReport> report, UnitSystem units) {
        showFill(report, units);
        showFills(report);
        showCost(plan, report, units);
        showMorning(draft, report, units);
        showNarrow(now, report);
    }

    private static Element head(String words) {
        return Dom.text("p", "t", words);
    }

    private static Element figure(String number, String small) {
        boolean none = number.equals("not known");
        Element f = Dom.el("p", none ? "f none" : "f", Dom.words(number));
        return small.isEmpty() ? f : f.appendChild(Dom.words(" "), Dom.text("small", "", small));
    }

    private static Element words(String words) {
        return Dom.text("p", "w", words);
    }

    private void showFill(Optional<FillReport> report, UnitSystem units) {
        String usable = report.map(r -> r.tank().usableGal())
                .filter(Figure::isKnown)
                .map(g -> ", " + FigureText.words(g, units))
                .orElse("");
        List<Element> three = new ArrayList<>();
        if (report.isPresent() && !report.get().isNoUse()) {
            FillReport r = report.get();
            Optional<FillRanges> range = r.ranges();
            var days = r.fuel().daysPerFill();
            three.add(third(
                    "in " + month(r.coldest()),
                    days.coldestMonth(),
                    range.map(FillRanges::coldest),
                    r.coldestPerDay(),
                    units));
            three.add(third(
                    "in " + month(r.warmest()),
                    days.warmestMonth(),
                    range.map(FillRanges::warmest),
                    r.warmestPerDay(),
                    units));
            three.add(third("on the mean", days.mean(), range.map(FillRanges::mean), r.warmestPerDay(), units));
        }
        fill.show(
                head("A fill lasts" + usable),
                three.isEmpty() ? figure("not known", "") : Dom.el("ul", "", three.toArray(Element[]::new)));
        fill.from(report.map(r -> List.of(
                        r.fuel().daysPerFill().coldestMonth(),
                        r.fuel().daysPerFill().warmestMonth(),
                        r.fuel().daysPerFill().mean()))
                .orElse(List.of()));
    }

    private static Element third(String when, Figure days, Optional<Range> range, Figure perDay, UnitSystem units) {
        boolean never = days.isKnown() && days.number() > 365;
        Element li = Dom.el("li", "", Dom.text("span", "", when));
        if (!days.isKnown()) {
            boolean noneBurns = perDay.isKnown() && perDay.number() == 0;
            return li.appendChild(Dom.text("b", "none", noneBurns ? "nothing burns" : "not known"));
        }
        li.appendChild(
                Dom.el("b", "", Dom.words(FillWords.fill(days, units)), Dom.text("small", "", never ? "" : " days")));
        String under = never && perDay.isKnown()
                ? FigureText.words(perDay.number() * 30, "gal", units) + " a month"
                : range.map(FillWords::days).orElse("");
        return li.appendChild(Dom.text("em", "", under));
    }

    static String month(int month) {
        return Month.of(month + 1).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    private void showFills(Optional<FillReport> report) {
        Optional<Figure> a = report.map(r -> r.fuel().deliveriesPerYear()).filter(Figure::isKnown);
        String range = report.flatMap(FillReport::ranges)
                .map(r -> FillWords.tenths(r.fills()))
                .orElse("");
        fills.show(
                head("Fills a year"),
                figure(
                        a.map(f -> String.format(Locale.ROOT, "%.1f", f.number()))
                                .orElse("not known"),
                        range));
        fills.from(List.of());
    }

    private void showCost(Optional<Plan> plan, Optional<FillReport> report, UnitSystem units) {
        Optional<Figure> gallons = report.map(r -> r.fuel().annualGal()).filter(Figure::isKnown);
        Optional<Range> range = report.flatMap(FillReport::ranges).map(FillRanges::gallons);
        Optional<Double> price = plan.flatMap(Plan::use).map(Use::pricePerGal).flatMap(f -> f.findValue());
        Optional<Figure> money = report.map(r -> r.fuel().cost()).filter(Figure::isKnown);
        String year = gallons.map(g -> FigureText.words(g, units)
                        + range.map(r -> FillWords.gallons(r, units))
                                .filter(w -> !w.isEmpty())
                                .map(w -> ", " + w)
                                .orElse(""))
                .orElse("");
        if (money.isPresent()) {
            String low =
                    range.flatMap(r -> price.map(p -> FillWords.money(r, p))).orElse("");
            cost.show(head("Cost a year"), figure(FillWords.whole(money.get().number()), low), words(year));
        } else {
            cost.show(
                    head("Gas a year"),
                    figure(
                            gallons.map(g -> FigureText.words(g, units)).orElse("not known"),
                            range.map(r -> FillWords.gallons(r, units)).orElse("")),
                    words(gallons.isPresent() ? "Type the price of a gallon for the cost." : ""));
        }
        cost.from(report.map(r ->
                        List.of(r.fuel().cost(), r.fuel().annualGal(), r.fuel().deliveriesPerYear()))
                .orElse(List.of()));
    }

    private void showMorning(FillDraft draft, Optional<FillReport> report, UnitSystem units) {
        Optional<TankReport> tank = report.map(FillReport::tank);
        Optional<Demand> all =
                tank.map(t -> t.demands().get(0)).filter(d -> d.btuh().isKnown());
        String heading = "Coldest morning"
                + (draft.text(FillEntry.DESIGN).isBlank()
                        ? ""
                        : ", "
                                + draft.text(FillEntry.DESIGN)
                                        .replace("degF", "\u00b0F")
                                        .replace("degC", "\u00b0C"));
        if (all.isEmpty() || all.get().status() == Demand.Status.UNKNOWN) {
            String why = tank.filter(t -> all.isPresent())
                    .flatMap(t -> t.plannedBtuh().missing().stream().findFirst())
                    .map(m -> "Needs " + m.words() + ".")
                    .orElse("Needs the input of each thing that burns.");
            morning.show(head(heading), figure("not known", ""), words(why));
            morning.from(List.of());
            return;
        }
        TankReport t = tank.orElseThrow();
        Demand d = all.get();
        String kept = "at " + FigureText.words(t.keptPsig(), units);
        boolean drawn =
                t.plannedBtuh().isKnown() && t.capacityAtDesignBtuh().isKnown() && units == UnitSystem.CUSTOMARY;
        Element bar = drawn
                ? Dom.drawing(new MorningBar(
                                t.plannedBtuh().number(),
                                t.capacityAtDesignBtuh().number(),
                                d.btuh().number(),
                                "keeping " + t.keptPsig().text())
                        .svg())
                : Dom.text("span", "", "");
        morning.show(head(heading), status(d.status()), words(says(d, t, kept, units)), Dom.el("div", "draw", bar));
        morning.from(List.of(t.plannedBtuh(), t.capacityAtDesignBtuh(), d.btuh(), d.holdMinutes()));
    }

    private static Element status(Demand.Status status) {
        return switch (status) {
            case CARRIES -> Dom.text("p", "f", "carries");
            case DOUBTFUL -> Dom.el("p", "f caut", FindingLine.shape(Severity.CAUTION), Dom.words(" doubtful"));
            case SHORT -> Dom.el("p", "f must", FindingLine.shape(Severity.MUST_FIX), Dom.words(" short"));
            case UNKNOWN -> Dom.text("p", "f none", "not known");
        };
    }

    private static String says(Demand d, TankReport t, String kept, UnitSystem units) {
        String planned = t.plannedBtuh().isKnown() ? FigureText.words(t.plannedBtuh(), units) + " " + kept : "";
        String lasts = d.lasts().map(w -> " It holds that for " + w + ".").orElse("");
        String ask = d.status() == Demand.Status.CARRIES ? "" : " Ask what the supplier counts on.";
        return "Everything firing, " + FigureText.words(d.btuh(), units) + ", tank at the refill gauge"
                + (planned.isEmpty() ? "." : "; to plan with " + planned + ".")
                + (d.status() == Demand.Status.CARRIES ? "" : lasts) + ask;
    }

    private void showNarrow(FillState now, Optional<FillReport> report) {
        List<Narrowing> all = report.map(FillReport::narrowing).orElse(List.of()).stream()
                .filter(n -> n.saved() > 0)
                .toList();
        Dom.show(narrow.slot, !all.isEmpty() && now.days().isPresent());
        if (all.isEmpty()) {
            return;
        }
        double most = all.get(0).saved();
        List<Element> lines = new ArrayList<>();
        for (int i = 0; i < Math.min(4, all.size()); i++) {
            Narrowing n = all.get(i);
            double wide = Double.isInfinite(most) ? 100 : 100 * n.saved() / most;
            lines.add(Dom.el(
                    "li",
                    i == 0 ? "on" : "",
                    Dom.text("span", "", n.doubt().entry()),
                    Dom.el("span", "nbar", Dom.el("i", "").setAttribute("style", "width:" + Math.round(wide) + "%")),
                    Dom.text("b", "", days(n.saved()))));
        }
        Narrowing first = all.get(0);
        Range then = first.then();
        String left = then.isWide() ? days(then.width()) + " would be left" : "nothing would be left of it";
        narrow.show(
                head("What would narrow it most"),
                words("The range is " + days(first.saved() + then.width()) + "; with "
                        + first.doubt().counting() + ", " + left + "."),
                Dom.el("ul", "nar", lines.toArray(Element[]::new)));
    }

    private static String days(double days) {
        double whole = Math.rint(days);
        return Double.isInfinite(days) ? "years" : FillWords.whole(whole) + (whole == 1 ? " day" : " days");
    }
}
