package longrun.ui.run;

import com.vaadin.flow.dom.Element;
import java.util.List;
import longrun.ui.frame.Dom;

/** The blanks at the foot of the printed run: whose it is, and for the fitter and the inspector to sign. */
public final class SignBlanks {

    private SignBlanks() {}

    static Element element() {
        Element signs = Dom.el("section", "signs").setAttribute("aria-label", "To sign");
        for (List<String> blanks : List.of(
                List.of("House and place", "Drawn up by", "Date"),
                List.of("Fitter, name and licence", "Signature", "Date"),
                List.of("Inspector, name and office", "Signature", "Date"))) {
            blanks.forEach(b -> signs.appendChild(Dom.el("div", "")));
            blanks.forEach(b -> signs.appendChild(Dom.text("span", "", b)));
        }
        return signs;
    }
}
