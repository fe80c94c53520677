package longrun.ui.house.fuel;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import longrun.draft.PlaceKind;
import longrun.draft.PlaceStatus;
import longrun.draft.entry.MonthlyMeans;
import longrun.fuel.FuelReport;
import longrun.review.Review;
import longrun.ui.field.FieldList;
import longrun.ui.frame.Dom;
import longrun.ui.house.figure.FiguresPlace;
import longrun.ui.house.figure.PlacePart;
import longrun.ui.house.findings.FindingLines;
import longrun.ui.place.HousePage;

/** The place of the year's fuel. Its figures are worked out a moment after a key, which only stores the entry. */
public final class FuelView extends FiguresPlace {

    private final HousePage desk;
    private final ClimateFields climate;
    private final UseFields uses;
    private final DeliveryFields deliveries;
    private final FuelAnswers answers;
    private final GallonsTable gallons;
    private final TicketsTable tickets;
    private final FindingLines findings;
    private final Element spell;
    private final Element doubts;
    private final Element level;
    private final Element year;
    private final Element months;

    public FuelView(HousePage desk) {
        this.desk = desk;
        climate = new ClimateFields(desk);
        uses = new UseFields(desk, fields());
        deliveries = new DeliveryFields(desk, fields());
        answers = new FuelAnswers(desk);
        gallons = new GallonsTable(desk);
        tickets = new TicketsTable(desk);
        findings = new FindingLines(desk, f -> PlaceKind.FUEL.holds(f.field()));
        spell = PlacePart.of("spell", "A cold spell and a power cut", "", answers.spell());
        doubts = PlacePart.of("doubts", "Doubts", "", answers.doubts());
        level = PlacePart.of(
                "level",
                "Level through the year",
                "From the gauge\u2019s reading on, filled again at the refill gauge.",
                answers.level(),
                answers.when(),
                findings.element());
        year = PlacePart.of("year", "The year", "", answers.year());
        months = PlacePart.of("months", "Gas by month and use", "", gallons.element());
        Element entries = PlacePart.beside(
                Dom.el(
                        "div",
                        "",
                        PlacePart.of("heating", "Heating", "", uses.heating()),
                        PlacePart.of("truck", "Supplier", "", deliveries.supplier())),
                Dom.el("div", "", year, spell));
        boolean begun = isStarted(); // what draws nothing yet stands behind the entries that it needs
        holds(begun ? level : entries, begun ? entries : level);
        holds(
                PlacePart.of(
                        "others",
                        "Other uses",
                        "Range, dryer, fireplace, grill, pool, generator: gallons a year, or hours a day.",
                        uses.others()),
                PlacePart.of(
                        "climate",
                        "Climate",
                        "Mean temperature of each month; the weather office has them.",
                        climate.element()),
                months,
                PlacePart.of("tickets", "Delivery tickets", "", deliveries.tickets(), tickets.element()),
                doubts);
        showParts();
    }

    @Override
    protected boolean drawEntries() {
        boolean fresh = uses.draw();
        fresh |= deliveries.draw();
        return fresh;
    }

    @Override
    protected void showEntries(boolean write) {
        climate.show(write);
    }

    @Override
    protected void work() {
        Optional<Review> review = desk.session().review();
        if (review.isEmpty()) {
            showParts();
            tickets.show(Optional.empty());
            return;
        }
        FuelReport fuel = review.get().fuel().orElseThrow();
        answers.show(review.get(), review.get().tank().orElseThrow(), fuel);
        gallons.show(review.get(), fuel);
        showParts();
        findings.show();
        tickets.show(fuel.calibration());
    }

    private boolean isStarted() {
        return PlaceStatus.isStarted(desk.session(), PlaceKind.FUEL);
    }

    /** A heading stands only over something; figures only while there is a review of what is entered. */
    private void showParts() {
        boolean known = desk.session().review().isPresent() && isStarted();
        Dom.show(level, known);
        Dom.show(year, known);
        Dom.show(months, known);
        Dom.show(spell, known && answers.hasSpell());
        Dom.show(doubts, known && !answers.doubted().isEmpty());
    }

    @Override
    public void focus(String pointer) {
        if (pointer.startsWith(MonthlyMeans.AT)) {
            FieldList.focus(climate.months().entry(0).getElement());
        } else {
            super.focus(pointer);
        }
    }

    @Override
    public Map<String, String> heard() {
        Map<String, String> out = new LinkedHashMap<>(super.heard());
        out.putAll(climate.months().heard());
        return out;
    }
}
