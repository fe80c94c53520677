package longrun.ui.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.dom.Element;
import java.util.stream.Stream;
import longrun.store.DraftStore;
import longrun.store.ListedHouse;
import longrun.ui.Fired;
import longrun.ui.house.OpenHouses;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The list of houses, and its page without a browser. */
class HouseShelfTest extends OpenHouses {

    @Autowired
    HouseShelf shelf;

    @Autowired
    DraftStore store;

    @BeforeEach
    void emptyTheList() {
        shelf.list().forEach(h -> shelf.delete(h.id()));
    }

    private static Element page() {
        UI.getCurrent().navigate("houses");
        return UI.getCurrent().getCurrentView().getElement();
    }

    private static Stream<Element> all(Element in) {
        return Stream.concat(Stream.of(in), in.getChildren().flatMap(HouseShelfTest::all));
    }

    private static void press(Element page, String says) {
        Element button = all(page)
                .filter(e -> !e.isTextNode()
                        && e.getTag().equals("button")
                        && e.getText().equals(says))
                .findFirst()
                .orElseThrow();
        Fired.click(button);
    }

    @Test
    void aHouseDeletedComesBackAfterAReloadToo() {
        shelf.begin();
        Element page = page();
        press(page, "Delete");
        press(page, "Keep it");
        assertThat(shelf.list()).hasSize(1);
        press(page, "Delete");
        press(page, "Delete it");
        assertThat(shelf.list()).isEmpty();
        press(page(), "Bring it back");
        assertThat(shelf.list()).hasSize(1);
        page = page();
        press(page, "Delete");
        press(page, "Delete it");
        press(page(), "Undo");
        assertThat(shelf.list()).hasSize(1);
    }

    @Test
    void aHouseDeletedComesBackWithUndo() {
        shelf.begin();
        Element page = page();
        press(page, "Delete");
        assertThat(shelf.list()).as("it asks first").isNotEmpty();
        press(page, "Delete it");
        assertThat(shelf.list()).isEmpty();
        assertThat(page.getTextRecursively()).contains("undo brings it back");
        press(page, "Undo");
        assertThat(shelf.list()).hasSize(1);
        press(page, "Redo");
        assertThat(shelf.list()).isEmpty();
    }

    @Test
    void aCopyIsAHouseOfItsOwn() {
        long id = shelf.begin();
        shelf.rename(id, "Orchard");
        press(page(), "Make a copy");
        assertThat(shelf.list()).extracting(ListedHouse::name).containsExactlyInAnyOrder("Orchard", "Orchard (copy)");
    }

    @Test
    void aNewNameStandsInTheListAndInThePlan() {
        long id = shelf.begin();
        assertThat(shelf.rename(id, "Mill & \"Pond\"")).isTrue();
        assertThat(store.find(id).orElseThrow().name()).isEqualTo("Mill & \"Pond\"");
        assertThat(store.find(id).orElseThrow().json()).contains("Mill & \\\"Pond\\\"");
    }

    @Test
    void theDemoHouseOpens() {
        press(page(), "Show the demo house");
        assertThat(shelf.list()).extracting(ListedHouse::name).containsExactly("Orchard house");
        assertThat(UI.getCurrent().getCurrentView().getClass().getSimpleName()).isEqualTo("HouseView");
        long first = shelf.demo();
        assertThat(shelf.list()).as("shown once more, it is the same house").hasSize(1);
        store.find(first).ifPresent(d -> store.save(first, d.json().replace("500 gal", "320 gal"), d.version()));
        assertThat(shelf.demo()).as("one that was changed stays its owner's").isNotEqualTo(first);
    }

    @Test
    void aFileThatIsNoPlanIsSaidToBeNone() {
        assertThatThrownBy(() -> shelf.open("{]")).hasMessageContaining("cannot be read as JSON");
        assertThatThrownBy(() -> shelf.open("[]")).hasMessageContaining("longrun-plan/1");
        assertThat(shelf.list()).isEmpty();
    }

    @Test
    void aPlanWithAWrongEntryOpensWithTheEntryAsWritten() throws Exception {
        long id = shelf.open("{\"format\":\"longrun-plan/1\",\"site\":{\"elevation\":\"high\"}}");
        assertThat(store.find(id).orElseThrow().json()).contains("\"high\"");
    }

    @Test
    void theStartHasThreeDoors() {
        UI.getCurrent().navigate("");
        Element page = UI.getCurrent().getCurrentView().getElement();
        assertThat(all(page)
                        .filter(e -> !e.isTextNode() && "door".equals(e.getAttribute("class")))
                        .map(e -> e.getAttribute("href")))
                .containsExactly("run", "fill", "houses");
    }
}
