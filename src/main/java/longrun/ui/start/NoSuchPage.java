package longrun.ui.start;

import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.dom.Element;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.router.HasErrorParameter;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.PageTitle;
import jakarta.servlet.http.HttpServletResponse;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Frame;

/** What stands at an address that is none: where a person may have meant to go. */
@PageTitle("No such page \u00b7 Longrun")
@StyleSheet("context://frontend/house.css")
public final class NoSuchPage extends Frame implements HasErrorParameter<NotFoundException> {

    public NoSuchPage() {
        super("No such page", "fuel gas code, 2018");
        noAnswer();
        noSheetActions();
        work().appendChild(Dom.el(
                "section",
                "",
                Dom.text("h2", "place", "There is no page at this address"),
                Dom.text(
                        "p",
                        "lede",
                        "A house has a number in its address, such as house/3/route. Nothing you typed is lost by"
                                + " coming here."),
                Dom.el(
                        "p",
                        "acts",
                        link("houses", "The houses kept here"),
                        link("run", "Size a run"),
                        link(".", "First page"))));
    }

    private static Element link(String to, String says) {
        return Dom.text("a", "act", says).setAttribute("href", to).setAttribute("router-link", true);
    }

    @Override
    public int setErrorParameter(BeforeEnterEvent event, ErrorParameter<NotFoundException> parameter) {
        return HttpServletResponse.SC_NOT_FOUND;
    }
}
