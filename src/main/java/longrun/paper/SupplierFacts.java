package longrun.paper;

import longrun.paper.page.Html;
import longrun.paper.page.Printing;
import longrun.paper.page.SheetWords;
import longrun.plan.Plan;
import longrun.plan.Site;
import longrun.plan.choice.CodeProfile;
import longrun.quantity.Show;
import longrun.review.Review;
import longrun.words.CodeNames;
import longrun.words.Program;
import longrun.words.Sentence;
import org.jsoup.nodes.Element;

/** What a supplier has to know of the house before anything else, in one row. */
final class SupplierFacts {

    private SupplierFacts() {}

    static Element of(Printing printing) {
        Review review = printing.review();
        return Html.el(
                "table",
                "row4",
                Html.el(
                        "tr",
                        "",
                        cell("House", SheetWords.shortened(printing.house(), 44)),
                        cell("Coldest morning, height", cold(review.plan())),
                        cell("Connected load", load(review)),
                        cell("Code; program", code(review.plan()))));
    }

    private static Element cell(String label, String words) {
        return Html.el("td", "", Html.text("p", "l", label), Html.text("p", "", words));
    }

    private static String cold(Plan plan) {
        String air = plan.site()
                .flatMap(s -> s.winterDesignTemp().findText())
                .map(SheetWords::degrees)
                .orElse(SheetWords.BLANK);
        String height = plan.site()
                .flatMap(s -> s.elevation().findText())
                .map(Sentence::units)
                .orElse(SheetWords.BLANK + " ft");
        String snow = plan.site()
                .flatMap(s -> s.snowDepth().findText())
                .map(t -> "; snow " + t)
                .orElse("");
        String people = plan.site()
                .map(Site::people)
                .flatMap(p -> p.findValue())
                .map(n -> "; " + Show.plain(n) + (n == 1 ? " person" : " people"))
                .orElse("");
        return SheetWords.shortened(air + ", " + height + snow + people, 60);
    }

    private static String load(Review review) {
        String undiluted = "; propane, undiluted";
        if (review.connectedLoad().btuh() <= 0) {
            return SheetWords.BLANK + " Btu/h" + undiluted;
        }
        String sum = Show.btuh(review.connectedLoad());
        if (!review.connectedLoadComplete()) {
            return sum + " so far, not every load is known" + undiluted;
        }
        return sum
                + review.plan()
                        .diversity()
                        .flatMap(d -> d.share().findText().map(s -> ", share " + SheetWords.shortened(s, 8)))
                        .orElse(", no diversity")
                + undiluted;
    }

    private static String code(Plan plan) {
        String profile = plan.code()
                .flatMap(c -> c.profile().findValue())
                .map(CodeProfile::written)
                .orElse("");
        return CodeNames.of(profile) + "; NFPA 58; Longrun " + Program.version() + ", plan format 1";
    }
}
