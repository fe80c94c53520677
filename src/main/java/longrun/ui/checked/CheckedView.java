package longrun.ui.checked;

import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.dom.Element;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import java.util.List;
import longrun.checked.report.Part;
import longrun.checked.report.Report;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Frame;

/** What it was checked against: in plain words first, then case by case and table by table, worked out as it runs. */
@Route("checked")
@PageTitle(Report.TITLE + " \u00b7 Longrun")
@StyleSheet("context://frontend/house.css")
@StyleSheet("context://frontend/checked.css")
public final class CheckedView extends Frame {

    public CheckedView() {
        super(Report.TITLE, "fuel gas code, 2018");
        noAnswer();
        noSheetActions();
        Report report = Report.live();
        Element lead = Dom.el("div", "");
        report.lead().forEach(words -> lead.appendChild(Dom.text("p", "checked-lead", words)));
        lead.appendChild(contents(report.parts()));
        work().appendChild(section("in-short", "In short", "", lead));
        report.parts().forEach(part -> work().appendChild(part(part)));
    }

    private static Element contents(List<Part> parts) {
        Element list = Dom.el("ul", "checked-contents");
        parts.forEach(p -> list.appendChild(
                Dom.el("li", "", Dom.text("a", "", p.heading()).setAttribute("href", "checked#" + p.id()))));
        return Dom.el("nav", "", list).setAttribute("aria-label", "On this page");
    }

    private static Element part(Part part) {
        Element content = Dom.el("div", "");
        part.says().forEach(words -> content.appendChild(Dom.text("p", "lede", words)));
        part.tables().forEach(table -> content.appendChild(CheckedTable.shown(table)));
        return section(part.id(), part.heading(), "", content);
    }
}
