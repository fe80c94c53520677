package longrun.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.fuel.FuelReport;
import longrun.paper.page.Html;
import longrun.paper.page.OpenOnPaper;
import longrun.paper.page.PaperSize;
import longrun.paper.page.Printing;
import longrun.paper.page.Sheet;
import longrun.paper.page.SheetFile;
import longrun.paper.page.SheetWords;
import longrun.review.Review;
import longrun.tank.TankReport;
import org.jsoup.nodes.Element;

/**
 * For whoever sells and brings the gas: what is asked of him first, then what it rests on, on one page whatever the house.
 * Where a house has many appliances or regulators the bars give way first, then the smaller rows are gathered.
 */
final class SupplierSheet implements Sheet {

    /** Rows of loads and regulators together that fit under bars of full height, on the shorter paper. */
    private static final int ROWS_WITH_BARS = 5;

    /** Without bars. */
    private static final int ROWS = 10;

    private static final double BAR = 40;
    private static final double ROW = 12.7;
    private static final int REGULATORS = 5;

    /** Letters of what is not known that fit into three lines. */
    private static final int NOT_KNOWN = 330;

    @Override
    public String slug() {
        return "supplier";
    }

    @Override
    public String title() {
        return "Propane supply: supplier sheet";
    }

    @Override
    public String under() {
        return "for the gas supplier. No order, no approval.";
    }

    @Override
    public boolean opensWithFacts() {
        return false; // it has those a supplier needs
    }

    @Override
    public List<Sheet> printedWith(Printing printing) {
        List<Sheet> out = new ArrayList<>(List.of(this));
        if (!SupplierAsked.list(printing.review()).isEmpty()) {
            out.add(new SupplierAsked());
        }
        out.add(new DrawingSheet());
        return out;
    }

    @Override
    public String purpose() {
        return "For the gas supplier: what is asked first, then loads, pressures, regulators, tank and year.";
    }

    @Override
    public List<String> stillOpen(Review review) {
        return OpenOnPaper.supply(review);
    }

    @Override
    public List<Element> body(Printing printing) {
        Review review = printing.review();
        int more = (int) Math.floor((printing.size().heightPt() - PaperSize.LETTER.heightPt()) / ROW);
        int regulators =
                Math.max(1, Math.min(REGULATORS, review.pressures().regulators().size()));
        int loads = Math.max(1, Math.min(LoadTables.rows(review), ROWS + more - regulators));
        double bars = BAR - ROW * Math.max(0, loads + regulators - ROWS_WITH_BARS - more);
        List<Element> in = new ArrayList<>();
        in.add(SupplierAnswers.of(review));
        in.add(SupplierFacts.of(printing));
        in.add(Html.heading("What we ask you", ""));
        in.add(SupplierQuestions.of(review));
        in.add(new LoadTables(review, loads).element());
        in.addAll(RegulatorTable.forSupplier(review, REGULATORS));
        in.add(TankLines.element(review));
        in.addAll(YearLines.elements(review, printing.size().widthPt() - SheetFile.BESIDE, bars));
        in.add(notKnown(review));
        return List.of(Html.el("div", "sup", in.toArray(Element[]::new)));
    }

    /** What the figures lack, each once, as much as three lines hold. */
    private static Element notKnown(Review review) {
        List<String> lacking = new ArrayList<>();
        review.tank().map(TankReport::missing).orElse(List.of()).forEach(m -> lacking.add(m.words()));
        review.fuel().map(FuelReport::missing).orElse(List.of()).forEach(m -> lacking.add(m.words()));
        Optional<String> ignition = review.plan().allTanks().stream()
                .filter(t -> t.toIgnition().isUnknown())
                .findFirst()
                .map(t -> "how far the tank stands from a source of ignition");
        ignition.ifPresent(lacking::add);
        List<String> once =
                lacking.stream().filter(w -> !w.isBlank()).distinct().toList();
        if (once.isEmpty()) {
            return Html.led("Not known yet:", "nothing that these figures rest on.");
        }
        StringBuilder said = new StringBuilder();
        int told = 0;
        for (String w : once) {
            String one = "\u25CB " + SheetWords.shortened(w, 70) + "  ";
            if (said.length() + one.length() > NOT_KNOWN) {
                break;
            }
            said.append(one);
            told++;
        }
        int more = once.size() - told;
        return Html.led("Not known yet:", said.toString().strip() + (more > 0 ? "  and " + more + " more" : ""))
                .addClass("lack");
    }
}
