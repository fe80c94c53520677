package longrun.ui.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.dom.Element;
import com.vaadin.flow.dom.ElementUtil;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import longrun.plan.Appliance;
import longrun.plan.Regulator;
import longrun.plan.Room;
import longrun.plan.Section;
import longrun.plan.Site;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** Whatever a rule reads of a room, a section, an appliance or a regulator has its field on a page. */
class RuleEntriesAskedTest extends OpenHouse {

    /** Asked in the row of the section itself, whose fields are named by it. */
    private static final Set<String> IN_THE_ROW = Set.of(
            "name",
            "from",
            "material",
            "setting",
            "legs",
            "rough",
            "fittings",
            "capped",
            "reserve",
            "installedSize",
            "chosenSize",
            "table",
            "ends",
            "under",
            "assumed"); // whoever has seen the pipe says so beside its line

    private static final String HOUSE = """
            {"format":"longrun-plan/1",
             "regulators":[{"id":"R1","kind":"first-stage","fedBy":"tank"},{"id":"R2","kind":"line"}],
             "rooms":[{"id":"utility","openings":[{}]}],
             "appliances":[{"id":"a"}],
             "sections":[{"id":"A","from":"R1","material":"%s","setting":"%s","passes":[{}]}]}
            """;

    private Set<String> asked(String place, String material, String setting) {
        id = store.create("", HOUSE.formatted(material, setting)).id();
        HouseView page = open(place);
        if (place.equals("connections")) {
            page.goTo("/regulators/1/vent");
        }
        return ids(page.getElement());
    }

    private static Set<String> ids(Element page) {
        return ((org.jsoup.nodes.Element) ElementUtil.toJsoup(new Document(""), page))
                .select("[id]").stream().map(org.jsoup.nodes.Element::id).collect(Collectors.toSet());
    }

    private static Set<String> entries(Class<?> record, String... but) {
        Set<String> out = Arrays.stream(record.getRecordComponents())
                .map(RecordComponent::getName)
                .collect(Collectors.toCollection(TreeSet::new));
        out.remove("id");
        Arrays.asList(but).forEach(out::remove);
        return out;
    }

    private static void missing(Set<String> asked, String at, Set<String> entries) {
        assertThat(entries.stream().filter(e -> !asked.contains(at + e)))
                .as("entries below " + at + " that no page asks for")
                .isEmpty();
    }

    @Test
    void everythingOfARoomIsAsked() {
        Set<String> asked = asked("house", "steel", "indoors");
        missing(asked, "e-rooms-0-", entries(Room.class));
        missing(asked, "e-rooms-0-openings-0-", entries(Room.Opening.class));
        missing(
                asked,
                "e-site-",
                entries(
                        Site.class,
                        "monthlyMeanTemp",
                        "coldWater",
                        "groundTemp",
                        "leadDays",
                        "unreachable",
                        "mainShutoff"));
    }

    @Test
    void everythingOfAnApplianceIsAsked() {
        missing(asked("appliances", "steel", "indoors"), "e-appliances-0-", entries(Appliance.class, "connection"));
    }

    @Test
    void everythingOfASectionIsAskedWhereItConcernsIt() {
        Set<String> asked = new TreeSet<>();
        for (String material : List.of("steel", "copper", "csst", "pe-pipe")) {
            for (String setting : List.of("indoors", "outdoors", "underground", "concealed")) {
                asked.addAll(asked("route", material, setting));
            }
        }
        missing(asked, "e-sections-0-", entries(Section.class, IN_THE_ROW.toArray(String[]::new)));
        missing(asked, "e-sections-0-passes-0-", entries(Section.Pass.class));
    }

    @Test
    void everythingOfARegulatorIsAsked() {
        Set<String> asked = asked("house", "steel", "indoors");
        asked.addAll(asked("connections", "steel", "indoors"));
        missing(asked, "e-regulators-1-", entries(Regulator.class, "name", "kind", "fedBy", "underEaves"));
    }
}
