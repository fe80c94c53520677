package longrun.ui.house.papers;

import com.vaadin.flow.dom.Element;
import com.vaadin.flow.server.StreamResource;
import java.util.Optional;
import longrun.paper.file.PagePictures;
import longrun.ui.frame.Dom;
import longrun.ui.house.figure.DeferredWork;

/** A sheet as it will be printed, page for page as pictures. */
final class SheetPreview {

    private static final String LARGER = "Show the pages larger";

    private final HousePapers papers;
    private final Element heading = Dom.text("h3", "", "").setAttribute("tabindex", "-1");
    private final Element says = Dom.text("p", "s q", "").setAttribute("role", "status");
    private final Element pages = Dom.el("div", "pages");
    private final Element size = Dom.button("act", LARGER);
    private final Element element =
            Dom.el("section", "preview", heading, Dom.el("div", "papers-head", says, size), pages);
    private final DeferredWork later = new DeferredWork(element, this::draw);
    private String slug = "";
    private String title = "";
    private boolean large;

    SheetPreview(HousePapers papers) {
        this.papers = papers;
        size.addEventListener("click", e -> resize());
    }

    Element element() {
        return element;
    }

    /** Pages side by side are for a glance, one page wide for reading. */
    private void resize() {
        large = !large;
        Dom.setClass(pages, "large", large);
        Dom.retext(size, large ? "Show the pages side by side" : LARGER);
    }

    /** Shows a sheet once the page has had its answer. */
    void show(String ofSlug, String called) {
        slug = ofSlug;
        title = called;
        Dom.retext(heading, title);
        Dom.retext(says, "Its pages are being laid out.");
        pages.removeAllChildren();
        later.soon();
    }

    /** Goes to the pictures, by eye and by keyboard. */
    void goThere() {
        heading.executeJs("this.focus(); this.scrollIntoView({block: 'start'})");
    }

    /** Lays the sheet out; each picture is then made when the browser asks for it. */
    void draw() {
        pages.removeAllChildren();
        Optional<byte[]> pdf = papers.sheet(slug);
        if (pdf.isEmpty()) {
            Dom.retext(says, "");
            return;
        }
        int count = PagePictures.count(pdf.get());
        for (int page = 0; page < count; page++) {
            pages.appendChild(page(pdf.get(), page, count));
        }
        Dom.retext(says, count == 1 ? "1 page, as it will be printed" : count + " pages, as they will be printed");
    }

    private Element page(byte[] pdf, int page, int count) {
        String words = "page " + (page + 1) + " of " + count;
        StreamResource picture =
                HousePapers.file(slug + "-" + (page + 1) + ".png", "image/png", () -> PagePictures.png(pdf, page));
        Element image = Dom.el("img", "")
                .setAttribute("alt", title + ", " + words + "; its words can be read in the PDF")
                .setAttribute("loading", "lazy");
        image.setAttribute("src", picture);
        Element frame = Dom.el("div", "page", image)
                .setAttribute("tabindex", "0")
                .setAttribute("role", "group")
                .setAttribute("aria-label", title + ", " + words);
        return Dom.el("figure", "", frame, Dom.text("figcaption", "s q", words));
    }
}
