package longrun.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import longrun.store.DraftStore;
import longrun.store.ListedHouse;
import longrun.ui.house.OpenHouses;
import longrun.ui.start.HouseShelf;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;

/** Houses taken out as plan files, one or all, and opened again. */
class PlanFilesTest extends OpenHouses {

    @Autowired
    HouseShelf shelf;

    @Autowired
    DraftStore store;

    @BeforeEach
    void emptyTheList() {
        shelf.list().forEach(h -> shelf.delete(h.id()));
    }

    @Test
    void allHousesComeBackFromOneZipAsTheyWere() throws Exception {
        long demo = shelf.demo();
        long mill = shelf.begin();
        shelf.rename(mill, "Mill / \"Pond\"");
        long twin = shelf.begin();
        shelf.rename(twin, "mill / \"pond\"");
        String demoText = store.find(demo).orElseThrow().json();
        List<String> names = shelf.list().stream().map(ListedHouse::name).toList();
        byte[] zip = PlanFiles.zip(shelf.planFiles());
        shelf.list().forEach(h -> shelf.delete(h.id()));

        HouseShelf.Opened opened = shelf.openZip(zip);

        assertThat(opened).isEqualTo(new HouseShelf.Opened(3, List.of()));
        assertThat(shelf.list()).extracting(ListedHouse::name).isEqualTo(names);
        assertThat(shelf.planFiles()).extracting(PlanFiles.PlanFile::text).contains(demoText);
    }

    @Test
    void planFileIsTheHouseCharacterForCharacter() {
        String typed = "{ \"format\" : \"longrun-plan/1\",\n\"name\":\"Mill\", \"odd\": 1.0 }\n";
        long id = store.create("Mill", typed).id();
        assertThat(shelf.planFile(id)).contains(new PlanFiles.PlanFile("Mill.json", typed));
    }

    @Test
    void whatIsNoPlanInAZipIsToldByNameAndTheRestOpens() throws Exception {
        shelf.begin();
        List<PlanFiles.PlanFile> files = new ArrayList<>(shelf.planFiles());
        files.add(new PlanFiles.PlanFile("shopping.json", "[]"));
        HouseShelf.Opened opened = shelf.openZip(PlanFiles.zip(files));
        assertThat(opened.houses()).isEqualTo(1);
        assertThat(opened.refused())
                .singleElement()
                .asString()
                .startsWith("shopping.json was not opened: it is not a plan file");
    }

    @Test
    void zipThatIsNoneOrHoldsTooMuchIsToldWhy() {
        assertThatThrownBy(() -> shelf.openZip(new byte[] {1, 2, 3})).hasMessage("it cannot be read as a zip");
        String tooLong = " ".repeat(PlanFiles.MOST_BYTES + 1);
        assertThatThrownBy(() -> shelf.openZip(PlanFiles.zip(List.of(new PlanFiles.PlanFile("long.json", tooLong)))))
                .hasMessage("long.json in it is over 1 MiB, and no plan is");
        List<PlanFiles.PlanFile> many = new ArrayList<>();
        for (int i = 0; i <= PlanFiles.MOST_FILES; i++) {
            many.add(new PlanFiles.PlanFile("plan.json", "{}"));
        }
        assertThatThrownBy(() -> shelf.openZip(PlanFiles.zip(many))).hasMessageContaining("more than 500 plan files");
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '\u0000',
            value = {
                "Mill,Mill.json",
                "a/b\\c:d*e?f<g>h|i,a b c d e f g h i.json",
                "..,house.json",
                " ,house.json",
                "\u202eevil,evil.json",
                "Caf\u00e9,Caf\u00e9.json"
            })
    void nameOfAFileIsOneEveryComputerTakes(String house, String file) {
        assertThat(PlanFiles.fileName(house == null ? "" : house)).isEqualTo(file);
    }
}
