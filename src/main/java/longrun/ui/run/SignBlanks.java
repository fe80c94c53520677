package longrun.ui.run;

import com.vaadin.flow.dom.Element;
import java.util.List;
import longrun.ui.frame.Dom;

/** The blanks at the foot of the printed run, for the fitter and the inspector to sign. */
final class SignBlanks {

    private SignBlanks() {}

    static Element element() {
        Element signs = Dom.el("section", "signs").setAttribute("aria-label", "To sign");
        for (String who : List.of("Fitter, name and licence", "Inspector, name and office")) {
            signs.appendChild(Dom.el("div", ""), Dom.el("div", ""), Dom.el("div", ""));
            for (String blank : List.of(who, "Signature", "Date")) {
                signs.appendChild(Dom.text("span", "", blank));
            }
        }
        return signs;
    }
}
