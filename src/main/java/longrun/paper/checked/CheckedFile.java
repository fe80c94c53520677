package longrun.paper.checked;

import java.time.LocalDate;
import java.util.List;
import longrun.checked.report.Cell;
import longrun.checked.report.Part;
import longrun.checked.report.Report;
import longrun.checked.report.ReportTable;
import longrun.paper.page.Html;
import longrun.paper.page.PdfFile;
import longrun.paper.page.SheetFile;
import longrun.paper.page.SheetStyle;
import longrun.words.CautionWords;
import longrun.words.Program;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** The report on what was checked as one page that needs nothing beside it, and as a PDF of the same. */
public final class CheckedFile {

    private CheckedFile() {}

    /** One HTML page, its style in it; light and dark as the reader has it. */
    public static String html(Report report, LocalDate made) {
        Document document = document(report, made, "page.css");
        document.head().appendElement("meta").attr("name", "viewport").attr("content", "width=device-width");
        return document.outerHtml();
    }

    /** A PDF on letter paper, laid broadside; the caution stands on every page. */
    public static byte[] pdf(Report report, LocalDate made) {
        return PdfFile.write(document(report, made, "print.css"), made);
    }

    private static Document document(Report report, LocalDate made, String style) {
        Document document = Document.createShell("");
        document.select("html").attr("lang", "en");
        document.title(Report.TITLE);
        document.head().appendElement("meta").attr("charset", "utf-8");
        document.head().appendElement("meta").attr("name", "subject").attr("content", Report.TITLE);
        document.head().appendElement("style").append(SheetStyle.read("checked/" + style));
        Element body = document.body();
        String under = "Longrun " + Program.version() + ", tables " + Program.tablesChecksum() + ", made "
                + SheetFile.day(made);
        body.appendChild(foot(under));
        Element main = Html.el("main", "");
        main.appendChild(Html.text("h1", "", Report.TITLE));
        main.appendChild(Html.text("p", "q", under));
        report.lead().forEach(p -> main.appendChild(Html.text("p", "lead", p)));
        report.parts().forEach(p -> main.appendChild(part(p)));
        body.appendChild(main);
        return document;
    }

    /** At the foot of each printed page; on a screen at the head of the page. */
    private static Element foot(String under) {
        Element caution = Html.el("p", "caution");
        caution.appendChild(Html.text("b", "", "Gas can kill."));
        caution.appendText(" " + CautionWords.CARE + " ");
        caution.appendChild(Html.text("b", "", "Smell gas?"));
        caution.appendText(" " + CautionWords.SMELL);
        Element line =
                Html.el("p", "line", Html.text("span", "", Report.TITLE + ", " + under), Html.el("span", "page"));
        return Html.el("div", "foot", caution, line);
    }

    private static Element part(Part part) {
        Element section = Html.el("section", "").attr("id", part.id());
        section.appendChild(Html.text("h2", "", part.heading()));
        part.says().forEach(p -> section.appendChild(Html.text("p", "", p)));
        for (ReportTable table : part.tables()) {
            if (part.tables().size() > 1) {
                section.appendChild(Html.text("h3", "", table.caption() + ": " + table.sum()));
            }
            section.appendChild(table(table));
        }
        return section;
    }

    private static Element table(ReportTable table) {
        Element head = Html.el("tr", "");
        table.headings().forEach(h -> head.appendChild(Html.text("th", "", h).attr("scope", "col")));
        Element body = Html.el("tbody", "");
        for (List<Cell> cells : table.rows()) {
            Element row = Html.el("tr", "");
            for (int c = 0; c < cells.size(); c++) {
                row.appendChild(cell(cells.get(c), c == 0, table.headings().get(c)));
            }
            body.appendChild(row);
        }
        return Html.el("table", "t c" + table.headings().size(), Html.el("thead", "", head), body)
                .attr("title", table.caption());
    }

    private static Element cell(Cell cell, boolean names, String heading) {
        Element e = Html.el(names ? "th" : "td", "", unbroken(cell.text()));
        cell.under().forEach(u -> e.appendChild(Html.text("div", "u", u)));
        if (names) {
            e.attr("scope", "row");
        }
        return e.attr("data-of", heading);
    }

    /** A list of figures breaks between them, never within a fraction. */
    private static Element unbroken(String text) {
        List<String> figures = List.of(text.split(", "));
        if (figures.stream().anyMatch(f -> f.contains(" "))) {
            return Html.text("div", "t", text);
        }
        Element line = Html.el("div", "t");
        for (int i = 0; i < figures.size(); i++) {
            String comma = i < figures.size() - 1 ? "," : "";
            line.appendChild(Html.text("span", "nb", figures.get(i) + comma)).appendText(comma.isEmpty() ? "" : " ");
        }
        return line;
    }
}
