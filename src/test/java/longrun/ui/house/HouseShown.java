package longrun.ui.house;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.dom.Element;
import elemental.json.Json;
import elemental.json.JsonObject;
import longrun.draft.PlaceKind;
import longrun.ui.Fired;
import longrun.ui.Shown;
import longrun.ui.field.Field;
import longrun.ui.frame.Entry;

/** What the page of a house says, read from the page itself. */
public final class HouseShown {

    private HouseShown() {}

    /** State and reason of the answer. */
    public static String state(Component page) {
        return Shown.text(page.getElement(), ".state") + ": " + Shown.text(page.getElement(), ".because");
    }

    /** The figure of a slot of the answer, with its unit. */
    public static String figure(Component page, String slot) {
        return Shown.text(page.getElement(), "#slot-" + slot + " .f");
    }

    /** The note under the figure of a slot of the answer. */
    public static String note(Component page, String slot) {
        return Shown.text(page.getElement(), "#slot-" + slot + " .w > span:first-child");
    }

    /** The figure of a slot in a place, with its unit. */
    public static String inPlace(Component page, String slot) {
        return Shown.text(page.getElement(), "#fig-" + slot + " .f");
    }

    /** The note under the figure of a slot in a place. */
    public static String besideInPlace(Component page, String slot) {
        return Shown.text(page.getElement(), "#fig-" + slot + " .w > span:first-child");
    }

    /** A drawing, by what it says it is. */
    public static String drawing(Component page, String says) {
        return Shown.markUp(page.getElement(), "[aria-label='" + says + "'] .draw-box");
    }

    /** What stands under a heading of that id. */
    public static String part(Component page, String heading) {
        return Shown.text(page.getElement(), "[aria-labelledby=h-" + heading + "]");
    }

    /** Slides a slider to a value, as the browser tells it. */
    public static void slide(Component page, String slider, String value) {
        JsonObject data = Json.createObject();
        data.put("element.value", value);
        data.put("for", "trailing");
        Fired.event(Shown.first(page.getElement(), "#" + slider), "input", data);
    }

    /** What to do next. */
    public static String next(Component page) {
        return Shown.text(page.getElement(), ".next > span");
    }

    /** What a place still lacks, as the thread says it. */
    public static String status(Component page, PlaceKind place) {
        return Shown.text(page.getElement(), ".thread a[href$=/" + place.slug() + "] .lack");
    }

    /** What is told over the places; nothing where there is nothing to tell. */
    public static String notice(Component page) {
        return Shown.wordsInSight(page.getElement(), ".notice");
    }

    /** What the walk through the demo says; nothing where it is put away. */
    public static String walk(Component page) {
        return Shown.wordsInSight(page.getElement(), ".walk > span");
    }

    /** What undo took back elsewhere. */
    public static String step(Component page) {
        return Shown.text(page.getElement(), ".said.step > span");
    }

    /** What the findings say, all groups. */
    public static String findings(Component page) {
        return Shown.text(page.getElement(), ".groups");
    }

    /** The field of an entry, wherever it stands on the page. */
    public static Entry entry(Component page, String pointer) {
        return entry(page.getElement(), pointer);
    }

    /** Chooses of the list of an entry, as the browser tells it. */
    public static void choose(Component page, String pointer, String value) {
        changed(Shown.first(page.getElement(), "select[id=" + Field.id(pointer) + "]"), value);
    }

    /** Tells what was chosen of a list. */
    public static void changed(Element select, String value) {
        JsonObject data = Json.createObject();
        data.put("element.value", value);
        Fired.event(select, "change", data);
    }

    static Entry entry(Element place, String pointer) {
        return Shown.all(place, "[id=" + Field.id(pointer) + "]").stream()
                .flatMap(e -> e.getComponent().stream())
                .filter(Entry.class::isInstance)
                .map(Entry.class::cast)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no field of " + pointer));
    }
}
