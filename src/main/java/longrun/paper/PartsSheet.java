package longrun.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import longrun.paper.page.Html;
import longrun.paper.page.OpenOnPaper;
import longrun.paper.page.Printing;
import longrun.paper.page.Sheet;
import longrun.paper.page.SheetWords;
import longrun.parts.CuttingList;
import longrun.parts.PartGroup;
import longrun.parts.PartLine;
import longrun.parts.PipeNeed;
import longrun.parts.Straight;
import longrun.parts.TakeOff;
import longrun.quantity.Show;
import longrun.review.Review;
import org.jsoup.nodes.Element;

/** What to buy: pipe with the lengths to cut it from, fittings, what stands at each appliance and regulator. */
final class PartsSheet implements Sheet {

    @Override
    public String slug() {
        return "parts";
    }

    @Override
    public String title() {
        return "Propane piping: parts list";
    }

    @Override
    public String under() {
        return "for whoever buys and cuts. Sized, not approved.";
    }

    @Override
    public String purpose() {
        return "For whoever buys and cuts: pipe with a cutting list, fittings, what stands at each appliance.";
    }

    @Override
    public List<String> stillOpen(Review review) {
        List<String> open = new ArrayList<>(OpenOnPaper.sizes(review));
        long uncounted = TakeOff.of(review.sizing()).lines().stream()
                .filter(l -> l.count().isEmpty())
                .count();
        if (uncounted > 0) {
            open.add(OpenOnPaper.count(uncounted, "kind of part", "kinds of parts") + " to count at the house");
        }
        return open;
    }

    @Override
    public List<Element> body(Printing printing) {
        TakeOff parts = TakeOff.of(printing.review().sizing());
        List<Element> out = new ArrayList<>();
        out.add(Html.text(
                "p",
                "src",
                "Listed is what the plan shows, each with how it was counted. A line without a count is one that the"
                        + " plan cannot tell: fill it in. Nipples, thread sealant, fasteners and whatever else a plan"
                        + " does not show are not listed."));
        pipe(parts, out);
        cutting(parts, out);
        for (PartGroup group : PartGroup.values()) {
            List<PartLine> lines = parts.lines(group);
            if (!lines.isEmpty()) {
                out.add(Html.heading(group.label(), ""));
                out.add(Html.table(
                                group.label(),
                                List.of("Part", "Size", "Count", "How counted"),
                                List.of("z s", "size", "count", "why"),
                                lines.stream().map(PartsSheet::row).toList())
                        .addClass("parts")
                        .addClass("list"));
            }
        }
        if (!parts.inPlace().isEmpty()) {
            out.add(Html.led(
                    "In place, not listed:",
                    "the pipe of " + String.join(", ", parts.inPlace()) + ", which is there and large enough."));
        }
        return out;
    }

    private static List<String> row(PartLine line) {
        return List.of(
                line.item(), line.size(), line.counted().isEmpty() ? SheetWords.BLANK : line.counted(), line.basis());
    }

    private static void pipe(TakeOff parts, List<Element> out) {
        out.add(Html.heading("Pipe", "by material and size"));
        if (parts.pipe().isEmpty()) {
            out.add(Html.text("p", "", "No pipe to buy is entered yet."));
            return;
        }
        boolean priced = parts.pricedSum().isPresent();
        List<String> headings =
                new ArrayList<>(List.of("Pipe", "Size", "Measured, ft", "With waste, ft", "To buy", "How counted"));
        List<String> classes = new ArrayList<>(List.of("z s", "size", "r", "r", "buy", "why"));
        if (priced) {
            headings.addAll(List.of("Price a foot", "In all"));
            classes.addAll(List.of("r", "r"));
        }
        List<List<String>> rows = new ArrayList<>();
        for (PipeNeed p : parts.pipe()) {
            List<String> row = new ArrayList<>(List.of(
                    p.item(),
                    p.size(),
                    SheetWords.feet(p.measuredFt()),
                    SheetWords.feet(p.toBuyFt()),
                    toBuy(p),
                    p.basis()));
            if (priced) {
                row.add(p.price().map(x -> Show.decimals(x.aFoot(), 2)).orElse(SheetWords.BLANK));
                row.add(p.price()
                        .filter(x -> x.inAll().isPresent())
                        .map(x -> Show.decimals(x.inAll().getAsDouble(), 2))
                        .orElse(SheetWords.BLANK));
            }
            rows.add(row);
        }
        out.add(Html.table("Pipe by material and size", headings, classes, rows)
                .addClass("parts")
                .addClass("pipe"));
        if (priced) {
            out.add(Html.led(
                    "The priced pipe comes to",
                    Show.decimals(parts.pricedSum().orElse(0), 2)
                            + ", in the money its prices were entered in. Pipe without a price, fittings and parts are"
                            + " not in it."));
        }
    }

    private static String toBuy(PipeNeed p) {
        if (p.lengths().isPresent()) {
            return p.lengths().getAsInt() + " x " + Show.plain(p.stockFt().orElse(0)) + " ft";
        }
        if (p.toBuyFt().isEmpty()) {
            return SheetWords.BLANK;
        }
        return p.longestPieceFt().isPresent()
                ? "from a coil of " + Show.plain(p.longestPieceFt().getAsDouble()) + " ft or more"
                : SheetWords.BLANK;
    }

    private static void cutting(TakeOff parts, List<Element> out) {
        List<List<String>> rows = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (PipeNeed p : parts.pipe()) {
            if (p.cutting().isEmpty()) {
                continue;
            }
            CuttingList list = p.cutting().get(0);
            for (int k = 0; k < list.lengths().size(); k++) {
                CuttingList.Cut cut = list.lengths().get(k);
                rows.add(List.of(
                        p.size(),
                        (k + 1) + " of " + list.lengths().size(),
                        cut.pieces().stream().map(PartsSheet::piece).collect(Collectors.joining(" + ")),
                        Show.decimals(cut.restFt(), 1)));
            }
            notes.add(note(p));
        }
        if (rows.isEmpty()) {
            return;
        }
        double stock = parts.pipe().stream()
                .filter(p -> !p.cutting().isEmpty())
                .mapToDouble(p -> p.stockFt().orElse(0))
                .max()
                .orElse(0);
        out.add(Html.heading("Cutting list", "threaded pipe, from lengths of " + Show.plain(stock) + " ft"));
        out.add(Html.table(
                        "What to cut from each length of pipe",
                        List.of("Size", "Length", "Cut, ft", "Left, ft"),
                        List.of("z s", "size", "cut", "r"),
                        rows)
                .addClass("parts")
                .addClass("cuts"));
        notes.forEach(n -> out.add(Html.text("p", "src", n)));
        out.add(Html.text(
                "p",
                "src",
                "Pieces are as paced, from the middle of one fitting to the middle of the next; the take-up of the"
                        + " fittings and the saw come off that. Measure before cutting. ? marks a length whose turns are"
                        + " not described: it may be made of shorter pieces, which need no more pipe."));
    }

    private static String piece(Straight s) {
        return s.where() + " " + Show.plain(s.feet()) + (s.turnsKnown() ? "" : "?");
    }

    private static String note(PipeNeed p) {
        CuttingList list = p.cutting().get(0);
        StringBuilder said =
                new StringBuilder(p.size() + ": " + count(list.lengths().size(), "length") + ", ");
        said.append(
                list.exact()
                        ? "the fewest there can be"
                        : "by first-fit decreasing (the longest piece first, into the first length with room), since"
                                + " there are more than " + CuttingList.EXACT_UP_TO + " pieces; fewer may be possible");
        p.cutting().stream()
                .skip(1)
                .forEach(c -> said.append("; or ")
                        .append(count(c.lengths().size(), "length"))
                        .append(" of ")
                        .append(Show.plain(c.stockFt()))
                        .append(" ft")
                        .append(c.couplings() == 0 ? "" : " with " + count(c.couplings(), "coupling")));
        if (p.lengths().orElse(0) > list.lengths().size()) {
            said.append("; ").append(p.lengths().getAsInt()).append(" are bought, for the waste share");
        }
        return said.append('.').toString();
    }

    private static String count(int n, String what) {
        return n + " " + what + (n == 1 ? "" : "s");
    }
}
