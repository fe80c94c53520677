package longrun.ui.frame;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.dom.Element;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A choice between a few values, as a scale or as pictures. It is made of native radio buttons, so the arrow keys work.
 *
 * @param <T> the values
 */
@Tag("div")
public final class Scale<T> extends Component {

    private final Map<T, Element> radios = new LinkedHashMap<>();
    private final Map<T, Element> notes = new LinkedHashMap<>();
    private @Nullable T value;

    /** A value as shown: its name, a smaller line under it, and its picture; empty where it has none. */
    public record Choice(String name, String note, Optional<String> svg) {
        /** A value without a picture. */
        public static Choice of(String name, String note) {
            return new Choice(name, note, Optional.empty());
        }
    }

    public Scale(String group, String labelledBy, Iterable<T> all, Function<T, Choice> choice, Consumer<T> chosen) {
        getElement().setAttribute("role", "radiogroup").setAttribute("aria-labelledby", labelledBy);
        // When a page is shown again the browser makes new elements, which are not checked.
        getElement()
                .addAttachListener(
                        e -> radios.forEach((each, radio) -> radio.executeJs("this.checked = $0", each.equals(value))));
        for (T each : all) {
            add(group, each, choice.apply(each), chosen);
        }
    }

    private void add(String group, T each, Choice choice, Consumer<T> chosen) {
        Element radio = Dom.el("input", "").setAttribute("type", "radio").setAttribute("name", group);
        radio.setAttribute("value", String.valueOf(each));
        radio.addEventListener("change", e -> {
            setValue(each);
            chosen.accept(each);
        });
        Element note = Dom.text("span", "", choice.note());
        Element label = Dom.el("label", choice.svg().isPresent() ? "pic" : "o", radio);
        choice.svg().ifPresent(svg -> label.appendChild(Dom.drawing(svg)));
        label.appendChild(Dom.text("b", "", choice.name()), note);
        getElement().setAttribute("class", choice.svg().isPresent() ? "pics" : "scale");
        getElement().appendChild(label);
        radios.put(each, radio);
        notes.put(each, note);
    }

    /** Chooses a value. Every radio button is set, since the browser unsets the others without reporting it. */
    public void setValue(T wanted) {
        if (wanted.equals(value)) {
            return;
        }
        value = wanted;
        radios.forEach((each, radio) -> {
            boolean on = each.equals(wanted);
            radio.executeJs("this.checked = $0", on);
            if (on) {
                radio.setAttribute("data-chosen", true);
            } else {
                radio.removeAttribute("data-chosen");
            }
        });
    }

    /** Clears the choice. */
    public void clear() {
        if (value != null) {
            value = null;
            radios.values().forEach(radio -> {
                radio.executeJs("this.checked = false");
                radio.removeAttribute("data-chosen");
            });
        }
    }

    /** Sets the line under a value. */
    public void note(T each, String text) {
        Element note = notes.get(each);
        if (note != null) {
            Dom.retext(note, text);
        }
    }
}
