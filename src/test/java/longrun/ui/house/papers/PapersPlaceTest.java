package longrun.ui.house.papers;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.dom.Element;
import longrun.draft.PlanFiles;
import longrun.paper.file.HeldPlan;
import longrun.paper.page.PaperSize;
import longrun.ui.house.HouseView;
import longrun.ui.house.OpenHouse;
import longrun.ui.start.HouseShelf;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The papers at the end of the thread. */
class PapersPlaceTest extends OpenHouse {

    @Autowired
    private HouseShelf shelf;

    private PapersPlace papers(String plan) {
        id = store.create("", plan).id();
        HouseView page = open("papers");
        return (PapersPlace) page.placeShown();
    }

    private static String text(PapersPlace place) {
        return place.element().getTextRecursively();
    }

    @Test
    void thePlanInTheZipAndInThePdfIsTheHouseAndOpensAsIt() throws Exception {
        String plan = "{\"format\":\"longrun-plan/1\",\"name\":\"../Mill: \\\"old\\\" <b>\",\"mine\":[1.50]}";
        PapersPlace place = papers(plan);
        String stored = store.find(id).orElseThrow().json();
        assertThat(PlanFiles.unzip(place.papers().zip()))
                .containsExactly(new PlanFiles.PlanFile("Mill old b.json", stored));
        byte[] pdf = place.papers().sheet("supplier").orElseThrow();
        assertThat(HeldPlan.find(pdf)).contains(stored);
        long opened = shelf.openPdf(pdf);
        assertThat(store.find(opened).orElseThrow().json()).isEqualTo(stored);
        assertThat(place.papers().fileName("supplier.pdf")).isEqualTo("Mill old b - supplier.pdf");
    }

    @Test
    void eachSheetCanBeLookedAtPageByPage() {
        PapersPlace place = papers("{\"format\":\"longrun-plan/1\",\"name\":\"Mill\"}");
        place.look("parts", true);
        place.preview().draw();
        Element preview = place.preview().element();
        assertThat(preview.getTextRecursively()).contains("Parts list", "1 page, as it will be printed");
        assertThat(text(place))
                .contains("Supplier sheet", "Drawing", "Calculation", "Save all in one PDF", "Still open:");
    }

    @Test
    void theOtherPaperIsTakenByEverySheet() {
        PapersPlace place = papers("{\"format\":\"longrun-plan/1\"}");
        assertThat(place.papers().size()).isEqualTo(PaperSize.LETTER);
        place.paper("A4");
        assertThat(place.papers().printing().orElseThrow().size()).isEqualTo(PaperSize.A4);
    }

    @Test
    void anEntryNotUnderstoodIsTold() {
        assertThat(text(papers("{\"format\":\"longrun-plan/1\",\"appliances\":[{\"id\":\"a\",\"input\":\"3,7\"}]}")))
                .contains("1 entry is not understood and left out of these papers");
    }
}
