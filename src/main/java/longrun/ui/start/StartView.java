package longrun.ui.start;

import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.dom.Element;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import longrun.checked.report.Report;
import longrun.ui.frame.CheckedLink;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Frame;

/** Three doors, in the order people come: one run, how long a fill lasts, a whole house. */
@Route("")
@PageTitle("Longrun")
@StyleSheet("context://frontend/house.css")
public final class StartView extends Frame {

    private static final String RUN = "<svg viewBox='0 0 360 120' aria-hidden='true'><circle class='pt' cx='30' cy='60'"
            + " r='9'/><path class='pn' d='M30 51v-8M20 43h20'/><path class='p' d='M39 60H180V96H330M180 60H330'/>"
            + "<path class='pt' d='M330 50h18v20h-18zM330 86h18v20h-18z'/><circle class='pf' cx='180' cy='60' r='4'/></svg>";
    private static final String FILL = "<svg viewBox='0 0 360 120' aria-hidden='true'><path class='ld' d='M0 96H120'/>"
            + "<rect class='pt' x='8' y='46' width='104' height='40' rx='20'/><path class='pn' d='M28 85v11M92 85v11M52 46v-6h16v6'/>"
            + "<path class='ld' d='M20 70H100'/><path class='pn' d='M152 14V96H352'/><path class='ld' d='M152 30H352M152 74H352'/>"
            + "<path class='p' d='M152 44L188 74V30L226 74V30C240 52 268 60 300 62L352 66'/>"
            + "<path class='pf' d='M183 20h10l-5 9zM221 20h10l-5 9z'/></svg>";
    private static final String HOUSE = "<svg viewBox='0 0 360 120' aria-hidden='true'><path class='ld' d='M0 96H360'/>"
            + "<rect class='pt' x='8' y='54' width='92' height='32' rx='16'/><path class='pn' d='M26 85v11M82 85v11'/>"
            + "<path class='p out' d='M54 54V44H120V96'/><path class='p bur' d='M120 96V112H196V96'/><path class='p out' d='M196 96V70'/>"
            + "<circle class='pt' cx='196' cy='66' r='7'/><path class='pn' d='M210 96V40l62-32 62 32v56'/>"
            + "<path class='p' d='M203 66H310V84M250 66V84'/></svg>";

    public StartView() {
        super("Propane pipe, sized and checked", "fuel gas code, 2018");
        noAnswer();
        noSheetActions();
        work().appendChild(
                        Dom.el(
                                "div",
                                "doors",
                                door(
                                        "run",
                                        RUN,
                                        "Size a run",
                                        "One regulator, a few lines, one answer. Nothing about tank, weather or people.",
                                        "feet of pipe, and the INPUT of each rating plate",
                                        "each line\u2019s size with the row it was read in, on one page"),
                                door(
                                        "fill",
                                        FILL,
                                        "How long does a fill last",
                                        "The tank, its gauge and what burns; how sure the answer is, and why.",
                                        "the gauge\u2019s reading, and a bill or the plates",
                                        "the days left, the day to call, the tank to ask for, on one page"),
                                door(
                                        "houses",
                                        HOUSE,
                                        "A whole house",
                                        "Appliances, the pipe\u2019s way through the house, tank, year and hot water.",
                                        "a tape measure and an evening",
                                        "sizes, findings, and what must be asked of whom before the tank valve is opened")),
                        Dom.el(
                                "p",
                                "doors-foot",
                                Dom.words(
                                        "Nothing leaves this computer: a run and a fill are kept in this browser, a house in"
                                                + " a folder of its own. Why trust a figure: "),
                                Dom.text("a", "", Report.TITLE)
                                        .setAttribute("href", CheckedLink.TO)
                                        .setAttribute("router-link", true),
                                Dom.words(".")));
    }

    private static Element door(String to, String picture, String name, String says, String inHand, String gives) {
        Element facts = Dom.el(
                "span",
                "needs",
                Dom.el("span", "", Dom.text("i", "", "You need"), Dom.text("span", "", inHand)),
                Dom.el("span", "", Dom.text("i", "", "You get"), Dom.text("span", "", gives)));
        return Dom.el("a", "door", Dom.drawing(picture), Dom.text("b", "", name), Dom.text("span", "", says), facts)
                .setAttribute("href", to)
                .setAttribute("router-link", true);
    }
}
