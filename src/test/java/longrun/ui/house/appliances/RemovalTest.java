package longrun.ui.house.appliances;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import com.vaadin.flow.dom.Element;
import elemental.json.Json;
import elemental.json.JsonObject;
import java.util.List;
import java.util.Set;
import longrun.draft.HouseSession;
import longrun.draft.demo.DemoHouse;
import longrun.draft.entry.DraftEdit;
import longrun.draft.entry.DraftTree;
import longrun.draft.entry.DraftValue;
import longrun.draft.entry.EntryReferences;
import longrun.sizing.SectionStatus;
import longrun.store.Outcome;
import longrun.ui.Fired;
import longrun.ui.Shown;
import longrun.ui.house.HouseView;
import longrun.ui.house.OpenHouse;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A thing taken away that other entries name: said, taken along, brought back. */
class RemovalTest extends OpenHouse {

    private static final int FURNACE = 2;

    @BeforeEach
    void demo() {
        id = store.create("Orchard house", DemoHouse.json()).id();
    }

    private static List<String> words(List<EntryReferences.Reference> mentions) {
        return mentions.stream().map(EntryReferences.Reference::words).toList();
    }

    private static void remove(HouseView page, int appliance) {
        Fired.press(Shown.all(page.getElement(), ".appliance").get(appliance), "Remove this appliance");
    }

    private static void untick(HouseView page, String words) {
        Element label = Shown.all(page.getElement(), ".check").stream()
                .filter(l -> Shown.text(l).startsWith(words))
                .findFirst()
                .orElseThrow();
        JsonObject data = Json.createObject();
        data.put("element.checked", false);
        Fired.event(label.getChild(0), "change", data);
    }

    @Test
    void theFurnaceIsNamedByTheHeatingByWhatFiresTogetherAndByItsPipe() {
        HouseView page = open("appliances");
        remove(page, FURNACE);
        assertThat(Shown.count(page.getElement(), ".appliance"))
                .as("nothing goes unasked")
                .isEqualTo(3);
        assertThat(Shown.inSight(page.getElement()))
                .contains(
                        "Furnace is named elsewhere too",
                        "The heating, under Fuel",
                        "What fires together: winter evening",
                        "Section E, which feeds nothing else");
    }

    @Test
    void withTheFurnaceGoneEverySizeAnswersAlsoAfterAReload() {
        HouseView page = open("appliances");
        remove(page, FURNACE);
        Fired.press(page.getElement(), "Remove Furnace");
        for (int reload = 0; reload < 2; reload++) {
            HouseSession session = page.session();
            assertThat(session.errors()).isEmpty();
            assertThat(session.at("/use/heating").isNothing()).isTrue();
            assertThat(session.at("/use/occasions/0/firing").toString()).isEqualTo("[\"heater\",\"range\"]");
            var review = session.review().orElseThrow();
            assertThat(review.connectedLoad().btuh()).isEqualTo(264_000);
            assertThat(review.piping().sectionCount()).isEqualTo(5);
            for (int i = 0; i < 5; i++) {
                assertThat(review.sizing().section(i).status()).isEqualTo(SectionStatus.SIZED);
            }
            page = open("fuel");
        }
    }

    @Test
    void oneUndoBringsTheFurnaceAndAllThatNamedItBack() {
        HouseView page = open("appliances");
        var before = page.session().draft();
        remove(page, FURNACE);
        Fired.press(page.getElement(), "Remove Furnace");
        assertThat(Shown.count(page.getElement(), ".appliance")).isEqualTo(2);
        page.session().undo();
        assertThat(page.session().draft()).isEqualTo(before);
        assertThat(Shown.count(page.getElement(), ".appliance")).isEqualTo(3);
    }

    @Test
    void whatIsToStayStaysAndNamesNothing() {
        HouseView page = open("appliances");
        remove(page, FURNACE);
        untick(page, "The heating");
        untick(page, "Section E");
        Fired.press(page.getElement(), "Remove Furnace");
        assertThat(page.session().text("/use/heating/designLoad")).isEqualTo("38,000 Btu/h");
        assertThat(page.session().at("/use/heating/appliance").isNothing()).isTrue();
        assertThat(page.session().text("/sections/5/id")).isEqualTo("E");
        assertThat(page.session().errors()).isEmpty();
    }

    @Test
    void anApplianceNothingNamesGoesAtOnce() {
        HouseView page = open("appliances");
        appliances(page).add("dryer");
        remove(page, 3);
        assertThat(Shown.count(page.getElement(), ".appliance")).isEqualTo(3);
    }

    @Test
    void listsWrittenWithoutAListAreLookedThroughToo() {
        ObjectNode draft = (ObjectNode)
                tree("{\"appliances\":[{\"id\":\"a\"}],\"use\":{\"others\":{\"appliance\":\"a\",\"volumePerYear\":\"35"
                        + " gal\"},\"occasions\":{\"firing\":\"a\"},\"hotWater\":{\"useTemp\":\"105"
                        + " degF\",\"onDemand\":{\"appliance\":\"a\"}}},\"readings\":[{\"at\":\"a\",\"pressure\":\"10 in"
                        + " w.c.\"},{\"at\":\"a\"},{\"at\":\"b\"}]}");
        List<EntryReferences.Reference> mentions = EntryReferences.appliance(DraftValue.of(draft), "/appliances/0");
        assertThat(words(mentions))
                .containsExactly(
                        "The on-demand heater, under Hot water",
                        "A use of gas of 35 gal a year, under Fuel",
                        "What fires together",
                        "A gauge reading of 10 in w.c., under Pipe route",
                        "A gauge reading, under Pipe route");
        EntryReferences.take(new DraftEdit(draft), mentions, Set.of());
        assertThat(draft.toString())
                .isEqualTo("{\"appliances\":[{\"id\":\"a\"}],\"use\":{\"hotWater\":{\"useTemp\":\"105 degF\"}},"
                        + "\"readings\":[{\"at\":\"b\"}]}");
    }

    @Test
    void whatWasReadAtThePipeGoesWithIt() {
        ObjectNode draft =
                (ObjectNode) tree("{\"sections\":[{\"id\":\"A\",\"from\":\"R1\"},{\"id\":\"B\",\"from\":\"A\"},"
                        + "{\"id\":\"C\",\"from\":\"A\"},{\"id\":\"D\",\"from\":\"C\"}],"
                        + "\"appliances\":[{\"id\":\"x\",\"fedBy\":\"B\"},{\"id\":\"y\",\"fedBy\":\"D\"}],"
                        + "\"readings\":[{\"at\":\"D\"},{\"at\":\"y\"},{\"at\":\"A\"}]}");
        List<EntryReferences.Reference> mentions = EntryReferences.appliance(DraftValue.of(draft), "/appliances/1");
        assertThat(words(mentions)).contains("Sections C, D, which feed nothing else");
        EntryReferences.take(new DraftEdit(draft), mentions, Set.of());
        assertThat(draft.path("sections").toString())
                .isEqualTo("[{\"id\":\"A\",\"from\":\"R1\"},{\"id\":\"B\",\"from\":\"A\"}]");
        assertThat(draft.path("readings").toString()).isEqualTo("[{\"at\":\"A\"}]");
    }

    @Test
    void theOnlyPipeAfterARegulatorStaysUnlessItIsTicked() {
        ObjectNode draft = (ObjectNode)
                tree("{\"sections\":[{\"id\":\"A\",\"from\":\"R1\"}],\"appliances\":[{\"id\":\"x\",\"fedBy\":\"A\"}]}");
        assertThat(EntryReferences.appliance(DraftValue.of(draft), "/appliances/0"))
                .containsExactly(
                        new EntryReferences.Reference("/sections/0", "Section A, which feeds nothing else", false));
    }

    @Test
    void aRoomTakenAwayLeavesNoOpeningInIt() {
        HouseView page = open("house");
        page.session()
                .change(d -> DraftTree.put(
                        d.root(),
                        "/rooms/1",
                        tree("{\"id\":\"hall\",\"openings\":[{\"to\":\"utility\",\"area\":\"100 in2\"}]}")));
        Fired.press(page.getElement(), "Remove this room");
        assertThat(page.session().at("/rooms/0/openings").toString()).isEqualTo("[{\"area\":\"100 in2\"}]");
    }

    @Test
    void aHouseWhoseListsAreWrittenWithoutAListOpensWithEachInItsPlace() {
        id = store.create(
                        "",
                        "{\"format\":\"longrun-plan/1\",\"appliances\":{\"id\":\"range\",\"kind\":\"range\",\"input\":\"65,000"
                                + " Btu/h\"}}")
                .id();
        HouseView page = open("appliances");
        assertThat(Shown.count(page.getElement(), ".appliance")).isEqualTo(1);
        assertThat(store.save(
                        id, page.session().draft().toString(), page.session().version()))
                .isInstanceOf(Outcome.Saved.class);
    }
}
