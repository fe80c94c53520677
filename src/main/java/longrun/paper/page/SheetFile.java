package longrun.paper.page;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import longrun.words.CautionWords;
import longrun.words.Program;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** Puts sheets together as one document: each begins on a page of its own under its head; every page bears the caution. */
public final class SheetFile {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.US);
    private static final String STYLE = SheetStyle.read();

    /** Points the margins take up beside a sheet, and above and below it, as the style sets them. */
    public static final double BESIDE = 2 * 13 / 25.4 * 72 + 0.5;

    public static final double ABOVE_AND_BELOW = (9 + 27) / 25.4 * 72;

    private SheetFile() {}

    public static byte[] pdf(Printing printing, List<Sheet> sheets) {
        return PdfFile.write(html(printing, sheets), printing.planJson(), printing.date());
    }

    public static Document html(Printing printing, List<Sheet> sheets) {
        Document document = Document.createShell("");
        boolean one = sheets.size() == sheets.get(0).printedWith(printing).size();
        String title = one ? sheets.get(0).title() : "Propane papers";
        document.select("html").attr("lang", "en");
        document.title(title + ": " + Html.printable(printing.house()));
        document.head().appendElement("meta").attr("name", "subject").attr("content", title);
        document.head()
                .appendElement("style")
                .append(STYLE.replace("PAPER", printing.size().css()));
        for (Sheet sheet : sheets) {
            Sheet.Pages pages = sheet.pages(printing);
            Element section = Html.el("section", pages.broad() ? "sheet broad" : "sheet");
            if (pages.broad()) {
                // a page laid broadside keeps the width of the first one else
                section.attr("style", "width:" + Math.floor(printing.size().heightPt() - BESIDE) + "pt");
            }
            section.appendChild(foot(printing, sheet));
            section.appendChild(head(printing, sheet));
            if (sheet.opensWithFacts()) {
                section.appendChild(HouseFacts.of(printing));
            }
            pages.body().forEach(section::appendChild);
            document.body().appendChild(section);
        }
        return document;
    }

    private static Element head(Printing printing, Sheet sheet) {
        return Html.el(
                "div",
                "ttl",
                Html.text("h1", "", sheet.title()),
                Html.el("div", "under", Html.text("p", "", sheet.under()), Html.text("p", "", day(printing.date()))));
    }

    /** Runs at the foot of each page of its sheet: the caution, the house, the sheet; the page's number is the style's. */
    private static Element foot(Printing printing, Sheet sheet) {
        Element caution = Html.el("div", "caution");
        caution.appendChild(Html.text("b", "", "Gas can kill."));
        caution.appendText(" " + CautionWords.CARE + " ");
        caution.appendChild(Html.text("b", "", "Smell gas?"));
        caution.appendText(" " + CautionWords.SMELL);
        return Html.el(
                "div",
                "foot",
                caution,
                Html.el(
                        "div",
                        "line",
                        Html.text("span", "house", SheetWords.shortened(printing.house(), 36)),
                        Html.text(
                                "span",
                                "made",
                                sheet.title() + ", " + day(printing.date()) + ", Longrun " + Program.version()
                                        + ", tables " + Program.tablesChecksum()),
                        Html.el("span", "page")));
    }

    /** A day as the sheets write it. */
    public static String day(LocalDate date) {
        return DAY.format(date);
    }
}
