package longrun.ui.house.papers;

import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longrun.paper.Papers;
import longrun.paper.page.PaperSize;
import longrun.paper.page.Printing;
import longrun.ui.frame.Dom;
import longrun.ui.place.HousePage;
import longrun.ui.place.Place;
import longrun.words.UnitSystem;

/** What to put in front of supplier, fitter and inspector: each sheet with what is open in it, looked at and saved. */
public final class PapersPlace implements Place {

    private static final String PDF = "application/pdf";

    private final HousePage desk;
    private final HousePapers papers;
    private final Element says = Dom.text("p", "lede", "");
    private final Element choose = Dom.el("select", "in").setAttribute("id", "paper-size");
    private final Element list = Dom.el("ul", "sheets");
    private final SheetPreview preview;
    private final Element whole;
    private final Element element;
    private final Map<String, Element> looks = new LinkedHashMap<>();
    private String looked = "supplier";

    public PapersPlace(HousePage desk) {
        this.desk = desk;
        papers = new HousePapers(desk.units() == UnitSystem.METRIC ? PaperSize.A4 : PaperSize.LETTER);
        preview = new SheetPreview(papers);
        whole = Dom.el(
                "p",
                "acts",
                save("act main", "Save all in one PDF", "all papers.pdf", PDF, papers::all),
                save("act", "Save all in one zip, with the plan file", "papers.zip", "application/zip", papers::zip));
        Map<String, String> sizes = new LinkedHashMap<>();
        sizes.put("LETTER", "Letter, 8-1/2 x 11 in.");
        sizes.put("A4", "A4, 210 x 297 mm");
        choose.setProperty("innerHTML", Dom.options(sizes))
                .setProperty("value", papers.size().name());
        choose.addEventListener("change", e -> paper(e.getEventData().getString("element.value")))
                .addEventData("element.value");
        element = Dom.el(
                "div",
                "place-body papers",
                says,
                Dom.el(
                        "div",
                        "papers-head",
                        Dom.el(
                                "div",
                                "fld paper-size",
                                Dom.text("label", "lab", "Paper").setAttribute("for", "paper-size"),
                                choose),
                        whole),
                list,
                preview.element());
    }

    @Override
    public Element element() {
        return element;
    }

    private static Element save(String classes, String words, String name, String type, HousePapers.Made made) {
        Element link = Dom.text("a", classes, words);
        link.setAttribute("href", HousePapers.file(name, type, made));
        return link.setAttribute("download", name);
    }

    /** Prints on another paper from now on. */
    void paper(String name) {
        for (PaperSize each : PaperSize.values()) {
            if (each.name().equals(name)) {
                papers.size(each);
            }
        }
        show(false);
    }

    @Override
    public void show(boolean write) {
        boolean changed = papers.take(desk.session());
        boolean there = papers.printing().isPresent();
        Dom.retext(says, words(there));
        Dom.show(whole, there);
        Dom.show(list, there);
        if (changed || looks.isEmpty()) {
            papers.printing().ifPresent(this::sheets);
            Dom.show(preview.element(), there);
            preview.show(looked, title(looked));
        }
    }

    private String words(boolean there) {
        if (!there) {
            return "The house cannot be worked out at the moment, so there is nothing to print.";
        }
        int wrong = desk.session().errors().size();
        return wrong == 0
                ? "Made from the house as it stands, and dated today; their questions take in what is not entered yet. Each PDF holds the plan as well: on the page of"
                        + " houses, Open a plan file reads the house back from it."
                : (wrong == 1 ? "1 entry is" : wrong + " entries are")
                        + " not understood and left out of these papers. Mend that first; Findings says where.";
    }

    private String title(String slug) {
        return papers.printing()
                .flatMap(p -> Papers.list(p.review()).stream()
                        .filter(k -> k.slug().equals(slug))
                        .findFirst())
                .map(Papers.Kind::title)
                .orElse(slug);
    }

    private void sheets(Printing printing) {
        list.removeAllChildren();
        looks.clear();
        for (Papers.Kind kind : Papers.list(printing.review())) {
            list.appendChild(sheet(kind));
        }
        look(looked, false);
    }

    private Element sheet(Papers.Kind kind) {
        Element look = Dom.button("act", "Look at it");
        look.setAttribute("aria-label", "Look at: " + kind.title());
        look.addEventListener("click", e -> look(kind.slug(), true));
        looks.put(kind.slug(), look);
        Element acts = Dom.el("p", "acts", look);
        acts.appendChild(named(
                save(
                        "ask",
                        "Save the PDF",
                        papers.fileName(kind.slug() + ".pdf"),
                        PDF,
                        () -> papers.sheet(kind.slug()).orElse(new byte[0])),
                "Save the PDF of: " + kind.title()));
        if (kind.slug().equals("drawing")) {
            acts.appendChild(save(
                    "ask",
                    "Save the drawing as SVG",
                    papers.fileName("drawing.svg"),
                    "image/svg+xml",
                    papers::drawing));
        }
        if (kind.slug().equals("parts")) {
            acts.appendChild(save(
                    "ask",
                    "Save the list for a spreadsheet",
                    papers.fileName("materials.csv"),
                    "text/csv;charset=utf-8",
                    papers::materials));
        }
        return Dom.el(
                "li",
                "",
                Dom.el(
                        "div",
                        "",
                        Dom.text("h3", "", kind.title()),
                        Dom.text("p", "s", kind.purpose()),
                        Dom.text("p", "s q open", open(kind.stillOpen()))),
                acts);
    }

    private static Element named(Element link, String name) {
        return link.setAttribute("aria-label", name);
    }

    private static String open(List<String> open) {
        return open.isEmpty()
                ? "Nothing of what it shows is open; it is sized, not approved."
                : "Still open: " + String.join(", ", open) + ".";
    }

    /** Shows a sheet below the list. */
    void look(String slug, boolean goThere) {
        looked = slug;
        looks.forEach((each, button) -> {
            button.setAttribute("aria-pressed", String.valueOf(each.equals(slug)));
            Dom.setClass(button, "on", each.equals(slug));
        });
        if (goThere) {
            preview.show(slug, title(slug));
            preview.goThere();
        }
    }

    SheetPreview preview() {
        return preview;
    }

    HousePapers papers() {
        return papers;
    }

    @Override
    public void focus(String pointer) {
        choose.executeJs("this.focus()");
    }

    @Override
    public Map<String, String> heard() {
        return Map.of();
    }
}
