package longrun.ui.house.fuel;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Optional;
import longrun.draft.Climate;
import longrun.draft.entry.MonthlyMeans;
import longrun.fuel.DailyTemperatures;
import longrun.ui.frame.Dom;
import longrun.ui.frame.TextFile;
import longrun.ui.place.HousePage;

/** The climate: twelve means typed, begun with, or made from a file of daily highs and lows. */
final class ClimateFields {

    private static final int SHOWN_ERRORS = 40;
    private static final int LONGEST = 2_000_000;

    private final HousePage desk;
    private final MonthCells months;
    private final Element days = Dom.el("textarea", "in csv")
            .setAttribute("id", "climate-days")
            .setAttribute("rows", "4")
            .setAttribute("spellcheck", "false")
            .setAttribute("placeholder", "date,high,low\n2025-01-01,34,18");
    private final Element errors = Dom.el("ul", "errors");
    private final Element said = Dom.text("p", "said", "").setAttribute("role", "status");
    private final Element element;

    ClimateFields(HousePage desk) {
        this.desk = desk;
        months = new MonthCells(desk);
        Element begin = Dom.button("act", "Begin with a cold inland climate");
        begin.addEventListener("click", e -> begin());
        Element take = Dom.button("act", "Make the means from these days");
        days.addPropertyChangeListener("value", "change", e -> {});
        take.addEventListener("click", e -> take("pasted", days.getProperty("value", "")));
        TextFile file = new TextFile("climate-file", ".csv,text/csv,text/plain", (name, text, tooLong) -> {
            if (tooLong) {
                errors.removeAllChildren();
                Dom.retext(said, "Nothing was taken: " + name + " is over 1 MiB. Give it in parts of some years.");
            } else {
                take(name, text);
            }
        });
        Element own = Dom.el(
                "details",
                "own-days",
                Dom.text("summary", "", "From daily temperatures of your own"),
                Dom.text(
                        "p",
                        "lede",
                        "Lines of date, high, low in °F, such as 2025-01-31,34,18. Half of high plus low is the day’s mean."),
                Dom.el(
                        "div",
                        "grid",
                        Dom.el(
                                "div",
                                "fld",
                                Dom.text("label", "lab", "Days, pasted").setAttribute("for", "climate-days"),
                                days),
                        Dom.el(
                                "div",
                                "fld",
                                Dom.text("label", "lab", "or a file").setAttribute("for", "climate-file"),
                                file.element())),
                Dom.el("div", "acts", take),
                errors);
        element = Dom.el("div", "", Dom.el("div", "acts", begin), said, months.element(), own);
    }

    Element element() {
        return element;
    }

    MonthCells months() {
        return months;
    }

    void begin() {
        desk.session().change(d -> MonthlyMeans.OF_HOUSE.write(d, Climate.coldInland()));
        Dom.retext(said, "Begun with " + Climate.SOURCE + ". Write your own over them.");
    }

    /** Takes a file of days, or shows everything that is wrong with it. */
    void take(String name, String csv) {
        errors.removeAllChildren();
        DailyTemperatures read = DailyTemperatures.read(name, csv.substring(0, Math.min(csv.length(), LONGEST)));
        read.errors().stream().limit(SHOWN_ERRORS).forEach(e -> errors.appendChild(Dom.text("li", "", e)));
        if (read.errors().size() > SHOWN_ERRORS) {
            errors.appendChild(Dom.text("li", "", "and " + (read.errors().size() - SHOWN_ERRORS) + " more"));
        }
        Optional<List<Double>> means = read.monthlyMeans();
        if (!read.errors().isEmpty()) {
            Dom.retext(said, "Nothing was taken: mend the lines named below.");
        } else if (means.isEmpty()) {
            Dom.retext(said, "Nothing was taken: some month has no day in " + name + ".");
        } else {
            desk.session().change(d -> MonthlyMeans.OF_HOUSE.write(d, Climate.written(means.get())));
            Dom.retext(said, "The means are made from " + read.days().size() + " days of " + name + ".");
        }
    }

    void show(boolean write) {
        months.show(write);
    }
}
