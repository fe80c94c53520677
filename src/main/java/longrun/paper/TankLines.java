package longrun.paper;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import longrun.drawing.plot.VapourBar;
import longrun.drawing.tank.TankPlan;
import longrun.origin.Figure;
import longrun.paper.page.Html;
import longrun.paper.page.SheetFile;
import longrun.paper.page.SheetWords;
import longrun.piping.Piping;
import longrun.plan.Plan;
import longrun.plan.Section;
import longrun.plan.Tank;
import longrun.plan.choice.Placement;
import longrun.plan.choice.Setting;
import longrun.quantity.Length;
import longrun.quantity.Show;
import longrun.review.Review;
import longrun.tank.Demand;
import longrun.tank.TankReport;
import org.jsoup.nodes.Element;

/** The tank: its place from above with the distances entered, and the two figures for its vapour with their doubt. */
final class TankLines {

    private TankLines() {}

    static Element element(Review review) {
        Optional<Tank> tank = review.plan().allTanks().stream().findFirst();
        Optional<Section> line = line(review);
        String plan = TankPlan.svg(
                tank,
                size(review.plan()),
                line.map(s -> words(review, s)).orElse(""),
                line.filter(s -> s.setting().is(Setting.UNDERGROUND)).isPresent());
        List<Element> place = List.of(
                Html.heading("Tank and its place", "not to scale, sides drawn freely"),
                Html.picture(plan, Html.titleOf(plan), 246, 117));
        return Html.besideEachOther(place, vapour(review)).addClass("tank");
    }

    /** "500 gal", "2 x 120 gal"; a blank where none is entered. */
    static String size(Plan plan) {
        List<Tank> tanks = plan.allTanks();
        if (tanks.isEmpty()) {
            return SheetWords.BLANK + " gal";
        }
        Tank t = tanks.get(0);
        String one = t.waterCapacity()
                .findText()
                .or(() -> t.propaneWeight().findText().map(w -> w + " of propane"))
                .map(w -> SheetWords.shortened(w, 16))
                .orElse(SheetWords.BLANK + " gal");
        double count = t.count().findValue().orElse(1.0);
        String several = count > 1 ? Show.plain(count) + " of " + one : one;
        return tanks.size() > 1 ? several + " and " + (tanks.size() - 1) + " more" : several;
    }

    /** Above ground or under it. */
    static String placement(Tank t) {
        return t.placement().findValue().map(TankLines::written).orElse("place not said");
    }

    private static String written(Placement p) {
        return p.written().replace('-', ' ');
    }

    /** Where it stands and what its gauge read. */
    static String stands(Tank t) {
        return placement(t)
                + t.gauge()
                        .findText()
                        .map(g -> ", gauge " + SheetWords.shortened(g, 10))
                        .orElse("")
                + t.gaugeDate().findValue().map(d -> " on " + SheetFile.day(d)).orElse("");
    }

    /** The pipe that leaves the regulator at the tank, where there is one alone. */
    private static Optional<Section> line(Review review) {
        Piping piping = review.piping();
        return review.plan().regulators().stream()
                .filter(r -> r.fedBy().is("tank"))
                .findFirst()
                .flatMap(r -> {
                    List<Section> leaving = review.plan().sections().stream()
                            .filter(s -> s.from().is(r.id()))
                            .toList();
                    return leaving.size() == 1 && piping.sectionCount() > 0
                            ? Optional.of(leaving.get(0))
                            : Optional.empty();
                });
    }

    private static String words(Review review, Section s) {
        Optional<Length> length =
                review.piping().measured(review.plan().sections().indexOf(s));
        String how = s.setting()
                .findValue()
                .map(p -> p == Setting.UNDERGROUND ? "buried" : p.written())
                .orElse("");
        return length.map(l -> Show.plain(Math.rint(l.feet()))).orElse("____") + " ft"
                + (how.isEmpty() ? "" : ", " + how);
    }

    private static List<Element> vapour(Review review) {
        String at = SupplierQuestions.air(review.plan()).map(t -> "at " + t).orElse("on the coldest morning")
                + SupplierQuestions.refill(review.plan())
                        .map(g -> ", tank at " + g)
                        .orElse(", at the refill gauge");
        Element heading = Html.heading("Vapour", at);
        Optional<TankReport> report = review.tank();
        if (report.isEmpty() || !report.get().capacityAtDesignBtuh().isKnown()) {
            return List.of(
                    heading,
                    Html.led(
                            "Not known yet:",
                            SheetWords.BLANK + " Btu/h kept up, " + SheetWords.BLANK
                                    + " at most for a short time. Your own figure is asked for in question 2."));
        }
        TankReport t = report.get();
        OptionalDouble asked = firing(t);
        if (!t.plannedBtuh().isKnown() || t.capacityAtDesignBtuh().number() <= 0) {
            return List.of(heading, doubt(t, asked));
        }
        String bar = VapourBar.svg(
                t.plannedBtuh().number(), t.capacityAtDesignBtuh().number(), text(t.keptPsig()), asked, mean(t));
        return List.of(heading, Html.picture(bar, Html.titleOf(bar), 254, 68), doubt(t, asked));
    }

    private static OptionalDouble firing(TankReport t) {
        return t.demands().stream()
                .findFirst()
                .map(Demand::btuh)
                .map(Figure::value)
                .orElse(OptionalDouble.empty());
    }

    private static OptionalDouble mean(TankReport t) {
        return t.demands().stream()
                .filter(Demand::mean)
                .reduce((a, b) -> b)
                .map(Demand::btuh)
                .map(Figure::value)
                .orElse(OptionalDouble.empty());
    }

    /** What the two figures come to, in one sentence. */
    private static Element doubt(TankReport t, OptionalDouble asked) {
        String figures = btuh(t.plannedBtuh()) + " while it keeps " + text(t.keptPsig()) + ", "
                + btuh(t.capacityAtDesignBtuh()) + " at most for a short time";
        String whose = t.supplier()
                ? "your own figure decides"
                : t.derived()
                        ? "both derived from heat through the soil, so yours is asked for (question 2)"
                        : "printed tables for one tank differ up to twofold, so the lower figure is planned with and"
                                + " yours is asked for (question 2)";
        String lead = t.demands().isEmpty() || asked.isEmpty()
                ? "What is asked is not known:"
                : switch (t.demands().get(0).status()) {
                    case CARRIES -> "All firing is carried:";
                    case DOUBTFUL -> "All firing is in doubt:";
                    case SHORT -> "All firing is more than it gives:";
                    case UNKNOWN -> "Not known:";
                };
        return Html.led(lead, figures + "; " + whose + ".");
    }

    private static String btuh(Figure f) {
        return (f.isKnown() ? SheetWords.roughly(f.number()) : SheetWords.BLANK) + " Btu/h";
    }

    private static String text(Figure f) {
        return f.isKnown() ? f.text() : SheetWords.BLANK;
    }
}
