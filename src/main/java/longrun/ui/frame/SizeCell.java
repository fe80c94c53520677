package longrun.ui.frame;

import com.vaadin.flow.dom.Element;

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
        String now = words + (note.isEmpty() ? "" : " " + note);
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        Element size = sized ? Dom.words(words) : Dom.text("span", "word", words);
        if (note.isEmpty()) {
            Dom.fill(cell, size);
        } else {
            Dom.fill(cell, size, Dom.text("span", "od", note));
        }
    }
}
