package longrun.paper.page;

import java.util.ArrayList;
import java.util.List;
import longrun.piping.Stage;
import longrun.plan.FittingAllowance;
import longrun.plan.Plan;
import longrun.plan.choice.CodeProfile;
import longrun.quantity.Show;
import longrun.review.Review;
import longrun.words.CodeNames;
import longrun.words.Program;
import org.jsoup.nodes.Element;

/** The facts under a sheet's head: what the house is, by which code it was sized, by which method. */
public final class HouseFacts {

    /** Facts side by side. */
    private static final int COLUMNS = 3;

    private record Fact(String label, String words) {}

    private HouseFacts() {}

    static Element of(Printing printing) {
        Review review = printing.review();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("House", printing.house()));
        facts.add(new Fact("Connected load", load(review)));
        facts.add(new Fact("Gas", "propane, undiluted"));
        facts.add(new Fact("Code", code(review.plan())));
        facts.add(
                new Fact("Method", "longest length; " + fittings(review.sizing().allowance())));
        facts.add(new Fact(
                "Program and tables",
                "Longrun " + Program.version() + ", tables " + Program.tablesChecksum() + ", plan format 1"));
        for (Stage stage : review.piping().stages()) {
            if (facts.size() < 4 * COLUMNS) {
                facts.add(new Fact(SheetWords.regulator(stage.regulator()), pressures(stage)));
            }
        }
        return grid(facts);
    }

    private static Element grid(List<Fact> facts) {
        Element grid = Html.el("table", "facts");
        for (int i = 0; i < facts.size(); i += COLUMNS) {
            Element row = Html.el("tr", "");
            for (Fact fact : facts.subList(i, Math.min(i + COLUMNS, facts.size()))) {
                row.appendChild(Html.el("td", "", Html.text("p", "l", fact.label()), Html.text("p", "", fact.words())));
            }
            while (row.childrenSize() < COLUMNS) {
                row.appendChild(Html.el("td", ""));
            }
            grid.appendChild(row);
        }
        return grid;
    }

    private static String pressures(Stage stage) {
        return stage.regulator().outlet().findText().orElse("outlet not known")
                + ", drop allowed "
                + stage.regulator().allowedDrop().findText().orElse("not known");
    }

    /** The sum of all inputs, and whether it is all of them. */
    public static String load(Review review) {
        if (review.connectedLoad().btuh() <= 0) {
            return "not known yet";
        }
        String sum = Show.btuh(review.connectedLoad());
        if (!review.connectedLoadComplete()) {
            return sum + " so far: not every load is known";
        }
        return sum
                + review.plan()
                        .diversity()
                        .flatMap(d -> d.share()
                                .findText()
                                .map(s -> ", share " + s + ": "
                                        + d.reason().findText().orElse("no reason entered")))
                        .orElse(", no diversity");
    }

    private static String code(Plan plan) {
        String profile = plan.code()
                .flatMap(c -> c.profile().findValue())
                .map(CodeProfile::written)
                .orElse("");
        return CodeNames.of(profile) + "; tank side NFPA 58; adopted here: "
                + plan.code().flatMap(c -> c.adopted().findText()).orElse("not known");
    }

    private static String fittings(FittingAllowance allowance) {
        if (allowance instanceof FittingAllowance.Counted) {
            return "fittings counted";
        }
        return allowance instanceof FittingAllowance.Share share
                ? Show.plain(share.share().percent()) + " % added for fittings"
                : "nothing added for fittings";
    }
}
