package longrun.ui.house.route;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import java.util.List;
import java.util.stream.StreamSupport;
import longrun.browser.BrowserTest;
import longrun.plan.json.PlanReader;
import longrun.store.DraftStore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * A key every 30 ms, as a fast typist does it, and no look at the page between two of them: the tree that was typed is
 * the tree that is stored, on a computer at rest and on one that is slow. What a key does hangs on the keys before it,
 * never on whether the program has answered those.
 */
class FastTypistIT extends BrowserTest {

    private static final int BETWEEN_KEYS_MS = 30;
    private static final String HOUSE = """
        {"format":"longrun-plan/1","name":"Fast hands",
         "regulators":[
          {"id":"R1","kind":"first-stage","fedBy":"tank","outlet":"10 psi","allowedDrop":"1 psi"},
          {"id":"R2","kind":"second-stage","outlet":"11 in w.c.","allowedDrop":"0.5 in w.c."}],
         "appliances":[
          {"id":"heater","name":"Heater","kind":"on-demand-water-heater","input":"199000 Btu/h"},
          {"id":"range","name":"Range","kind":"range","input":"65000 Btu/h"},
          {"id":"furnace","name":"Furnace","kind":"furnace","input":"60000 Btu/h"},
          {"id":"dryer","name":"Dryer","kind":"clothes-dryer","input":"22000 Btu/h"}]}
        """;
    /** What each section leaves, feeds, is made of, and where it runs, as the walks below type it. */
    private static final List<String> TREE = List.of(
            "Y1 R1 R2 pe-pipe underground up 3 ft, north 60 ft",
            "A R2 - steel indoors north 2 ft, up 4 ft, east 14 ft",
            "B A heater steel indoors north 8 ft, down 3 ft",
            "C A - steel indoors east 12 ft",
            "D C range copper indoors north 10 ft, down 5 ft",
            "E C furnace steel indoors east 8 ft, down 5 ft",
            "F A dryer steel indoors west 6 ft");

    @Autowired
    DraftStore store;

    private long house;

    private Page open(int slower) {
        house = store.create("", HOUSE).id();
        Page page = open("/house/" + house + "/route", 1440);
        assertThat(page.locator(".saved")).containsText("Saved");
        CDPSession session = page.context().newCDPSession(page);
        JsonObject rate = new JsonObject();
        rate.addProperty("rate", slower);
        session.send("Emulation.setCPUThrottlingRate", rate);
        page.locator("#feeds-0").focus();
        return page;
    }

    /** Types keys one by one; a word between angles is a key by its name. */
    private static void keys(Page page, String keys) {
        for (String part : keys.split("(?=<)|(?<=>)")) {
            if (part.startsWith("<")) {
                key(page, part.substring(1, part.length() - 1));
            } else {
                part.chars().forEach(c -> key(page, String.valueOf((char) c)));
            }
        }
    }

    private static void key(Page page, String key) {
        page.keyboard().press(key);
        page.waitForTimeout(BETWEEN_KEYS_MS);
    }

    private List<String> stored() throws JsonProcessingException {
        JsonNode plan = PlanReader.tree(store.find(house).orElseThrow().json());
        return StreamSupport.stream(plan.path("sections").spliterator(), false)
                .map(s -> String.join(
                        " ",
                        s.path("id").asText(),
                        s.path("from").asText(),
                        fedBy(plan, s.path("id").asText()),
                        s.path("material").asText(),
                        s.path("setting").asText(),
                        String.join(
                                ", ",
                                StreamSupport.stream(s.path("legs").spliterator(), false)
                                        .map(JsonNode::asText)
                                        .toList())))
                .toList();
    }

    private static String fedBy(JsonNode plan, String section) {
        for (String list : List.of("regulators", "appliances")) {
            for (JsonNode end : plan.path(list)) {
                if (end.path("fedBy").asText().equals(section)) {
                    return end.path("id").asText();
                }
            }
        }
        return "-";
    }

    /** Waits until all keys are heard; the browser hears of it by the last size. */
    private void assertTreeStored(Page page) throws JsonProcessingException {
        for (int i = 0; i < 100 && !stored().equals(TREE); i++) {
            page.waitForTimeout(100);
        }
        assertThat(stored()).isEqualTo(TREE);
        for (int i = 0; i < TREE.size(); i++) {
            assertThat(page.locator("#from-" + i)).hasValue(TREE.get(i).split(" ")[1]);
        }
    }

    @ParameterizedTest(name = "{0} times slower")
    @ValueSource(ints = {1, 6})
    void treeTypedWithTabFromFieldToFieldIsTheTreeStored(int slower) throws JsonProcessingException {
        Page page = open(slower);
        String on = "<Tab><Tab><Tab><Tab><Tab>"; // raise to, in place, rough, remove, and what the next one leaves
        String buried = "<Tab><Tab>"; // what it passes under, and its ends
        keys(page, "reg<Tab>u 3, n 60<Tab>poly<Tab>bur" + buried + on);
        keys(page, "R2<Tab><Tab>n 2, u 4, e 14<Tab>st<Tab>ind" + on);
        keys(page, "A<Tab>he<Tab>n 8, d 3<Tab>st<Tab>ind" + on);
        keys(page, "A<Tab><Tab>e 12<Tab>st<Tab>ind" + on);
        keys(page, "C<Tab>ra<Tab>n 10, d 5<Tab>copp<Tab>ind" + on);
        keys(page, "C<Tab>fu<Tab>e 8, d 5<Tab>st<Tab>ind" + on);
        keys(page, "A<Tab>dr<Tab>w 6<Tab>st<Tab>ind");
        assertTreeStored(page);
    }

    @ParameterizedTest(name = "{0} times slower")
    @ValueSource(ints = {1, 6})
    void treeTypedWithEnterForTheNextSectionIsTheTreeStored(int slower) throws JsonProcessingException {
        Page page = open(slower);
        keys(page, "reg<Tab>u 3, n 60<Tab>poly<Tab>bur<Enter>");
        keys(page, "<Tab>n 2, u 4, e 14<Tab>st<Tab>ind<Enter>");
        keys(page, "he<Tab>n 8, d 3<Enter>");
        keys(page, "<Shift+Tab>A<Tab><Tab>e 12<Enter>");
        keys(page, "ra<Tab>n 10, d 5<Tab>copp<Enter>");
        keys(page, "fu<Tab>e 8, d 5<Tab>st<Enter>");
        keys(page, "dr<Shift+Tab>A<Tab><Tab>w 6<Tab>");
        assertTreeStored(page);
    }

    @Test
    void tabComesToWhatBuriedPipePassesUnderBeforeTheProgramHasAnswered() {
        Page page = open(1);
        page.locator("#legs-0").focus();
        for (String key : List.of("n", "Tab", "p", "o", "l", "Tab", "b", "u", "r", "Tab")) {
            page.keyboard().press(key);
        }
        assertThat(page.locator("#under-0")).isFocused();
        page.keyboard().press("Tab");
        assertThat(page.locator("#ends-0")).isFocused();
        for (String key : List.of("Enter", "Tab", "n", "Tab", "Tab", "Tab")) {
            page.keyboard().press(key);
        }
        // The next line is buried too, as the one above it.
        assertThat(page.locator("#under-1")).isFocused();
    }

    @Test
    void tabGoesFromTheLegsToTheMaterialBeforeTheProgramHasAnswered() {
        Page page = open(1);
        page.locator("#legs-0").focus();
        page.keyboard().press("n");
        page.keyboard().press("Tab");
        assertThat(page.locator("#material-0")).isFocused();
    }
}
