package longrun.ui.start;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.dom.Element;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import longrun.draft.HouseSession;
import longrun.review.Reviewer;
import longrun.store.DraftStore;
import longrun.store.ListedHouse;
import longrun.store.StoreFolder;
import longrun.ui.Fired;
import longrun.ui.house.OpenHouses;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;

/** The store fails while a page is open: the page says so, and goes on once it is mended. */
class StoreFailsTest extends OpenHouses {

    @Autowired
    HouseShelf shelf;

    @Autowired
    DraftStore store;

    @Autowired
    StoreFolder folder;

    private Path file;
    private Path away;
    private long house;

    @BeforeEach
    void keepOneHouse() {
        file = folder.path().resolve("longrun.mv.db");
        away = folder.path().resolve("taken-away");
        shelf.list().forEach(h -> shelf.delete(h.id()));
        house = shelf.begin();
    }

    @AfterEach
    void mend() throws IOException {
        if (Files.exists(away)) {
            Files.move(away, file);
        }
    }

    private static Stream<Element> all(Element in) {
        return Stream.concat(Stream.of(in), in.getChildren().flatMap(StoreFailsTest::all));
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

    /** A button that asks first is pressed before the store fails, the one that answers it after. */
    @ParameterizedTest
    @ValueSource(strings = {"Begin a new house", "Show the demo house", "Make a copy", "Delete, Delete it"})
    void buttonOfHousesSaysThatTheStoreFailed(String buttons) throws IOException {
        List<String> asks = List.of(buttons.split(", "));
        String button = asks.get(asks.size() - 1);
        UI.getCurrent().navigate("houses");
        Element page = UI.getCurrent().getCurrentView().getElement();
        List<Long> before = shelf.list().stream().map(ListedHouse::id).toList();
        asks.subList(0, asks.size() - 1).forEach(b -> press(page, b));
        Files.move(file, away);

        press(page, button);

        assertThat(page.getTextRecursively())
                .contains("That was not done: the file of the saved houses")
                .doesNotContain("was made", "undo brings it back");
        assertThat(shelf.list()).extracting(ListedHouse::id).isEqualTo(before);

        Files.move(away, file);
        asks.forEach(b -> press(page, b));
        assertThat(UI.getCurrent().getCurrentView().getElement().getTextRecursively())
                .doesNotContain("That was not done");
    }

    @Test
    void runThatCouldNotBecomeAHouseSaysSo() throws IOException {
        UI.getCurrent().navigate("run");
        Element page = UI.getCurrent().getCurrentView().getElement();
        Files.move(file, away);
        press(page, "Make a house of this run");
        assertThat(page.getTextRecursively()).contains("No house was made: the file of the saved houses");
    }

    @Test
    void bringingBackThatFailedCanBeTriedAgain() throws IOException {
        UI.getCurrent().navigate("houses");
        Element page = UI.getCurrent().getCurrentView().getElement();
        press(page, "Delete");
        press(page, "Delete it");
        assertThat(shelf.list()).isEmpty();
        Files.move(file, away);
        press(page, "Undo");
        assertThat(page.getTextRecursively()).contains("That was not done");
        Files.move(away, file);
        press(page, "Undo");
        assertThat(shelf.list()).extracting(ListedHouse::id).containsExactly(house);
    }

    @Test
    void keyThatWasNotStoredIsNotCalledSavedAndIsStoredWithTheNext() throws IOException {
        UI.getCurrent().navigate("house/" + house + "/house");
        HouseSession session =
                HouseSession.open(store, Reviewer.standard(), house).orElseThrow();
        session.set("/name", "Mi");
        assertThat(session.canUndo()).isTrue();
        Files.move(file, away);

        session.set("/name", "Mil");

        assertThat(session.saveState().toString()).contains("NotSaved", "is gone; put it back");
        assertThat(session.text("/name")).isEqualTo("Mil");

        Files.move(away, file);
        session.set("/name", "Mill");
        assertThat(session.saveState().toString()).startsWith("Saved");
        assertThat(store.find(house).orElseThrow().json()).contains("\"Mill\"");
    }
}
