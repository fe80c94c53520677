package longrun.ui.lines;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import longrun.ui.frame.Dom;

/** The cell of a line that tells its size, or the word that stands where no size can. */
public final class SizeCell {

    private final Element cell = Dom.text("td", "size", "").setAttribute("data-fig", "");
    private String shown = "";

    public Element element() {
        return cell;
    }

    /** What it says now: the size or word, and its note. */
    public String shown() {
        return shown;
    }

    /**
     * Shows a size or a word.
     *
     * @param sized whether the words are a size
     * @param note a second name of the size, or empty
     */
    public void show(String words, boolean sized, String note) {
        show(words, "", sized, note);
    }

    /** @param unit what the size is counted in, where its column holds more than one; else empty */
    public void show(String words, String unit, boolean sized, String note) {
        String now = Stream.of(words, unit, note).filter(s -> !s.isEmpty()).collect(Collectors.joining(" "));
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        List<Element> parts = new ArrayList<>();
        parts.add(sized ? Dom.words(words) : Dom.text("span", "word", words));
        if (!unit.isEmpty()) {
            parts.add(Dom.text("small", "", " " + unit));
        }
        if (!note.isEmpty()) {
            parts.add(Dom.text("span", "od", note));
        }
        Dom.fill(cell, parts.toArray(Element[]::new));
    }
}
