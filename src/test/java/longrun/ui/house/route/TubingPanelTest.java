package longrun.ui.house.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.plan.json.PlanError;
import longrun.ui.Shown;
import org.junit.jupiter.api.Test;

/** A maker's tubing table loaded on the page: read, refused cell by cell, used, renamed, removed. The values are invented. */
class TubingPanelTest extends OpenRoutes {

    private static final String HOUSE =
            "{\"format\":\"longrun-plan/1\",\"regulators\":[{\"id\":\"R1\",\"kind\":\"integral-two-stage\",\"fedBy\":\"tank\",\"outlet\":\"11 in w.c.\",\"allowedDrop\":\"0.5 in w.c.\"}],"
                    + "\"sections\":[{\"id\":\"A\",\"from\":\"R1\",\"material\":\"csst\",\"legs\":[\"20 ft\"]},{\"id\":\"B\",\"from\":\"A\",\"material\":\"csst\",\"legs\":[\"10 ft\"]},{\"id\":\"C\",\"from\":\"A\",\"material\":\"csst\",\"legs\":[\"8 ft\"]}],"
                    + "\"fittingAllowance\":\"none\","
                    + "\"appliances\":[{\"id\":\"heater\",\"kind\":\"on-demand-water-heater\",\"input\":\"180,000 Btu/h\",\"fedBy\":\"B\"},{\"id\":\"range\",\"kind\":\"range\",\"input\":\"65,000 Btu/h\",\"fedBy\":\"C\"}]}";
    private static final String GOOD = "length_ft,14,19,26,33\n10,60,140,320,580\n30,34,80,190,340\n60,24,56,130,240\n";

    private TubingBlock load(String csv) {
        view.tubing().add();
        TubingBlock block = view.tubing().tables().get(0);
        block.rename("Hill tubing");
        desk.session().set("/tubingTables/0/inlet", "11 in w.c.");
        desk.session().set("/tubingTables/0/drop", "0.5 in w.c.");
        block.take("hill.csv", csv, false);
        return block;
    }

    private static List<String> faults(TubingBlock block) {
        return Shown.count(block.element(), ".errors li") == 0 ? List.of() : Shown.texts(block.element(), ".errors li");
    }

    private static String said(TubingBlock block) {
        return Shown.text(block.element(), ".said[role=status]");
    }

    private static String used(TubingBlock block) {
        return Shown.text(block.element(), "p.s.q");
    }

    private Choice sizedBy(int line) {
        return view.table().rows().get(line).tools().table();
    }

    private String size(int line) {
        return shown(line, "size");
    }

    @Test
    void goodTableIsShownAsItWasReadAndOfferedByName() {
        open(HOUSE);
        TubingBlock block = load(GOOD);
        assertThat(faults(block)).isEmpty();
        assertThat(said(block)).isEqualTo("Kept with the house.");
        assertThat(Shown.wordsInSight(block.element(), ".as-read > p"))
                .startsWith("As it was read: 4 sizes, EHD 14 to 33; 3 lengths, 10 to 60 ft.")
                .contains("thousand Btu/h");
        assertThat(Shown.text(block.element(), ".as-read tbody")).contains("580");
        assertThat(used(block)).startsWith("No section is sized by it yet");
        assertThat(Shown.text(view.tubing().element(), "summary"))
                .isEqualTo("A maker\u2019s tubing table: 1 in this house");
        assertThat(sizedBy(0).options()).containsEntry("Hill tubing", "Hill tubing, 11 in w.c., drop 0.5 in w.c.");
    }

    @Test
    void lineThatNamesTheTableIsSizedByIt() {
        open(HOUSE);
        TubingBlock block = load(GOOD);
        sizedBy(1).choose("Hill tubing");
        // 180,000 Btu/h at the row of 30 ft: EHD 26 carries 190
        assertThat(desk.session().errors()).isEmpty();
        assertThat(size(1)).isEqualTo("EHD 26");
        assertThat(used(block)).isEqualTo("Section B is sized by it.");
        assertThat(Shown.count(view.table().rows().get(1).tools().chosen().element(), "option[value=33]"))
                .isEqualTo(1);
    }

    @Test
    void everyWrongCellIsNamedByRowAndColumnAndNothingTypedIsLost() {
        open(HOUSE);
        String before = size(0);
        TubingBlock block = load(GOOD.replace("30,34,80,190,340", "30,34,8o,190,600"));
        assertThat(faults(block))
                .containsExactly(
                        "Hill tubing:3:3: '8o' is not a positive number, write a capacity in thousand Btu/h, such as 49",
                        "Hill tubing:3:5: the capacity rises with length, write no more than the line above");
        assertThat(said(block)).contains("these 2 cells are mended");
        assertThat(desk.session().text("/tubingTables/0/csv")).contains("8o");
        assertThat(size(0)).isEqualTo(before);
        block.type(GOOD);
        assertThat(faults(block)).isEmpty();
        assertThat(desk.session().isCurrent()).isTrue();
    }

    @Test
    void sheetPastedFromASpreadsheetIsReadWithItsTabs() {
        open(HOUSE);
        TubingBlock block = load("");
        block.type("length_ft\t14\t19\n10\t60\t140\n30\t34\t80");
        assertThat(faults(block)).isEmpty();
        assertThat(Shown.wordsInSight(block.element(), ".as-read > p")).contains("2 sizes");
    }

    @Test
    void fileNamesTheTableWhereItHasNoName() {
        open(HOUSE);
        view.tubing().add();
        view.tubing().tables().get(0).take("ridge-11in.csv", GOOD, false);
        assertThat(desk.session().text("/tubingTables/0/name")).isEqualTo("ridge-11in");
        assertThat(said(view.tubing().tables().get(0)))
                .isEqualTo(
                        "Kept with the house. Before it can size a section it needs the inlet pressure and the drop it allows.");
    }

    @Test
    void fileOverTheLimitChangesNothing() {
        open(HOUSE);
        TubingBlock block = load(GOOD);
        block.take("big.csv", "", true);
        assertThat(said(block)).contains("over 1 MiB");
        assertThat(desk.session().text("/tubingTables/0/csv")).isEqualTo(GOOD);
    }

    @Test
    void linesFollowANewName() {
        open(HOUSE);
        TubingBlock block = load(GOOD);
        sizedBy(1).choose("Hill tubing");
        block.rename("Hill tubing, low pressure");
        assertThat(desk.session().text("/sections/1/table")).isEqualTo("Hill tubing, low pressure");
        block.rename("");
        block.rename("Hill");
        assertThat(desk.session().text("/sections/1/table")).isEqualTo("Hill");
        assertThat(desk.session().errors()).isEmpty();
    }

    @Test
    void twoTablesOfOneNameAreAnError() {
        open(HOUSE);
        load(GOOD);
        view.tubing().add();
        view.tubing().tables().get(1).rename("Hill tubing");
        assertThat(desk.session().error("/tubingTables/1/name"))
                .map(PlanError::message)
                .contains("another table is named \"Hill tubing\": write a name that differs");
    }

    @Test
    void tableForAnotherPressureSaysThatItFitsNoLine() {
        open(HOUSE);
        TubingBlock block = load(GOOD);
        desk.session().set("/tubingTables/0/inlet", "2 psi");
        desk.session().set("/tubingTables/0/drop", "1 psi");
        assertThat(used(block)).startsWith("No regulator here is set to this pressure");
    }

    @Test
    void removingSaysWhichLinesUsedItAndUndoBringsItBack() {
        open(HOUSE);
        TubingBlock block = load(GOOD);
        sizedBy(1).choose("Hill tubing");
        sizedBy(2).choose("Hill tubing");
        assertThat(Shown.texts(block.element(), "button"))
                .contains("Remove \u201cHill tubing\u201d; sections B and C go back to the code\u2019s table");
        view.tubing().remove(0);
        assertThat(Shown.text(view.tubing().element(), ".tubing-tables > .said"))
                .contains("sections B and C are sized by the code\u2019s table again");
        assertThat(desk.session().at("/tubingTables").isNothing()).isTrue();
        assertThat(desk.session().errors()).isEmpty();
        desk.session().undo();
        assertThat(view.tubing().tables()).hasSize(1);
        assertThat(desk.session().text("/sections/2/table")).isEqualTo("Hill tubing");
        assertThat(view.tubing().tables().get(0).cellsText()).isEqualTo(GOOD);
    }

    @Test
    void otherMaterialLetsGoOfTheTable() {
        open(HOUSE);
        load(GOOD);
        sizedBy(1).choose("Hill tubing");
        view.table().rows().get(1).tools().material().choose("steel");
        assertThat(desk.session().text("/sections/1/table")).isEmpty();
    }

    @Test
    void whatWasTypedWhileTheProgramWasGoneIsTaken() {
        open(HOUSE);
        load(GOOD);
        view.typedBefore("tubing 0", "Ridge");
        assertThat(desk.session().text("/tubingTables/0/name")).isEqualTo("Ridge");
        assertThat(view.heard()).containsKeys("tubing 0", "/tubingTables/0/csv", "/tubingTables/0/inlet in w.c.");
        view.typedBefore("tubing 7", "nothing there");
        assertThat(desk.session().saveState()).isInstanceOf(longrun.draft.SaveState.Saved.class);
    }
}
