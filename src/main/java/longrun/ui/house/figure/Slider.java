package longrun.ui.house.figure;

import com.vaadin.flow.dom.DebouncePhase;
import com.vaadin.flow.dom.Element;
import java.util.function.DoubleConsumer;
import java.util.function.DoubleFunction;
import longrun.ui.frame.Dom;

/** A native slider to play with: arrows, page keys, home and end move it, and each move is heard at once. */
public final class Slider {

    private final Element input;
    private final Element said;
    private final Element element;
    private final DoubleFunction<String> words;
    private double value;

    /**
     * @param words its value as it is read out and shown
     * @param moved hears of each move
     */
    public Slider(String id, String label, double from, double to, DoubleFunction<String> words, DoubleConsumer moved) {
        this.words = words;
        this.value = from;
        input = Dom.el("input", "slider")
                .setAttribute("id", id)
                .setAttribute("type", "range")
                .setAttribute("min", String.valueOf((int) from))
                .setAttribute("max", String.valueOf((int) to))
                .setAttribute("step", "1");
        said = Dom.text("output", "played", "").setAttribute("for", id);
        input.addEventListener("input", e -> {
                    value = Double.parseDouble(e.getEventData().getString("element.value"));
                    say();
                    moved.accept(value);
                })
                .addEventData("element.value")
                .debounce(60, DebouncePhase.LEADING, DebouncePhase.INTERMEDIATE, DebouncePhase.TRAILING);
        element = Dom.el("div", "play", Dom.text("label", "lab", label).setAttribute("for", id), said, input);
    }

    public Element element() {
        return element;
    }

    public double value() {
        return value;
    }

    public String said() {
        return said.getText();
    }

    /** Puts it somewhere without telling. */
    public void put(double at) {
        value = at;
        input.executeJs("this.value = $0", at);
        say();
    }

    private void say() {
        Dom.retext(said, words.apply(value));
        input.setAttribute("aria-valuetext", words.apply(value));
    }
}
