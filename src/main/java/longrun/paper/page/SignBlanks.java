package longrun.paper.page;

import java.util.List;
import org.jsoup.nodes.Element;

/** Blanks at the foot of the sizing sheet, for whoever did the work and whoever passed it. */
public final class SignBlanks {

    private SignBlanks() {}

    public static List<Element> elements() {
        return List.of(Html.el(
                "table",
                "sign",
                row("Fitter, name and licence", "Signature", "Test: pressure, minutes", "Date"),
                row("Inspector, name and office", "Signature", "Permit", "Date")));
    }

    private static Element row(String... words) {
        Element row = Html.el("tr", "");
        for (String w : words) {
            row.appendChild(Html.text("td", "", w));
        }
        return row;
    }
}
