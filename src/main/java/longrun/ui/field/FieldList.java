package longrun.ui.field;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The fields of one place. */
public final class FieldList {

    private final List<Field> fields = new ArrayList<>();

    /** Adds a field and returns it. */
    public <F extends Field> F add(F field) {
        fields.add(field);
        return field;
    }

    /** Removes every field. */
    public void clear() {
        fields.clear();
    }

    /** Removes the fields below a pointer, whose block is drawn again. */
    public void removeBelow(String pointer) {
        fields.removeIf(f -> f.pointer().startsWith(pointer + "/"));
    }

    /** Shows every field; see {@link Field#show}. */
    public void show(boolean write) {
        fields.forEach(f -> f.show(write));
    }

    /** How many there are. */
    public int count() {
        return fields.size();
    }

    /** Shows the fields from an index on, which are new. */
    public void showFrom(int index) {
        fields.subList(index, fields.size()).forEach(f -> f.show(true));
    }

    /** The field of an entry, else the first field below it, else the nearest field above it; empty where there is none. */
    public Optional<Field> find(String pointer) {
        return fields.stream()
                .filter(f -> f.pointer().equals(pointer))
                .findFirst()
                .or(() -> fields.stream()
                        .filter(f -> f.pointer().startsWith(pointer + "/"))
                        .findFirst())
                .or(() -> {
                    String above = pointer.substring(0, Math.max(0, pointer.lastIndexOf('/')));
                    return above.isEmpty() ? Optional.empty() : find(above);
                });
    }

    /** Moves the focus to the field of an entry. */
    public void focus(String pointer) {
        find(pointer).map(Field::target).ifPresent(FieldList::focus);
    }

    /** Opens the folds around an element, scrolls to it and gives it the focus. */
    public static void focus(Element target) {
        target.executeJs(
                "setTimeout(() => { for (let d = this.closest('details'); d; d = d.parentElement.closest('details'))"
                        + " d.open = true; this.focus(); this.scrollIntoView({block: 'center'});"
                        + " this.dispatchEvent(new CustomEvent('arrived', {bubbles: true})); })");
    }

    /** The text of each text field as last received from the browser, by the address of its entry. */
    public Map<String, String> heard() {
        Map<String, String> heard = new LinkedHashMap<>();
        for (Field f : fields) {
            f.entry().ifPresent(e -> heard.put(e.getElement().getAttribute("data-at"), e.text()));
        }
        return heard;
    }
}
