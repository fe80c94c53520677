package longrun.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import longrun.Samples;
import longrun.capacity.CapacityTables;
import longrun.piping.Piping;
import longrun.plan.Plan;
import longrun.sizing.Sizing;
import org.junit.jupiter.api.Test;

/** Parts counted by hand from the plan's legs and entries; stock lengths and waste are common practice. */
class TakeOffTest {

    private static TakeOff of(Plan plan) {
        return TakeOff.of(Sizing.of(Piping.of(plan), CapacityTables.standard()));
    }

    private static TakeOff demo() {
        return of(Samples.plan(Samples.resource("/longrun/data/demo/orchard-house.json")));
    }

    /** One house-side stage of steel, its sections and appliances as given. */
    private static TakeOff house(String sections, String more) {
        return of(Samples.plan("{\"format\":\"longrun-plan/1\",\"regulators\":[{\"id\":\"R\",\"kind\":\"second-stage\","
                + "\"fedBy\":\"tank\",\"outlet\":\"11 in w.c.\",\"allowedDrop\":\"0.5 in w.c.\"}],\"sections\":["
                + sections + "]" + more + "}"));
    }

    private static PartLine line(TakeOff parts, String item, String size) {
        return parts.lines().stream()
                .filter(l -> l.item().equals(item) && l.size().equals(size))
                .findFirst()
                .orElseThrow(() -> new AssertionError(item + " " + size + " among " + parts.lines()));
    }

    private static double count(TakeOff parts, String item, String size) {
        return line(parts, item, size).count().orElseThrow();
    }

    /** A 4 + 6 + 10 is 1 in.; B 8 + 3 and C 12 are 3/4 in.; D 10 + 5 and E 8 + 5 are 1/2 in.; Y1 is 62 ft of plastic. */
    @Test
    void thePipeOfTheDemoIsThatOfItsLegs() {
        List<PipeNeed> pipe = demo().pipe();
        assertThat(pipe)
                .extracting(p -> p.size() + " " + p.measuredFt().orElse(0))
                .containsExactly("1/2 in. 62.0", "1 in. 20.0", "3/4 in. 23.0", "1/2 in. 28.0");
        assertThat(pipe)
                .extracting(PipeNeed::toBuyFt)
                .containsExactly(
                        OptionalDouble.of(68.2),
                        OptionalDouble.of(22),
                        OptionalDouble.of(25.3),
                        OptionalDouble.of(30.8));
        assertThat(pipe.get(0).longestPieceFt()).hasValue(62);
        assertThat(pipe.get(0).lengths()).isEmpty();
        assertThat(pipe.get(1).cutting().get(0).lengths()).hasSize(1);
        assertThat(pipe.get(3).cutting().get(0).lengths()).hasSize(2);
        assertThat(pipe.get(1).lengths()).hasValue(2);
    }

    @Test
    void theFittingsOfTheDemoAreThoseItsLegsShow() {
        TakeOff parts = demo();
        assertThat(count(parts, "90 degree elbow, steel", "1 in.")).isEqualTo(2);
        assertThat(count(parts, "90 degree elbow, steel", "3/4 in.")).isEqualTo(1);
        assertThat(count(parts, "90 degree elbow, steel", "1/2 in.")).isEqualTo(2);
        assertThat(count(parts, "Tee, steel", "1 in. to 3/4 in. and 3/4 in.")).isEqualTo(1);
        assertThat(count(parts, "Tee, steel", "3/4 in. to 1/2 in. and 1/2 in.")).isEqualTo(1);
        assertThat(count(parts, "Anodeless riser", "1/2 in.")).isEqualTo(2);
        assertThat(count(parts, "Tracer wire", "14 AWG")).isEqualTo(68.2);
        assertThat(count(parts, "Sleeve, through outside wall", "1 in.")).isEqualTo(1);
        assertThat(count(parts, "Shutoff valve", "for 1/2 in. pipe")).isEqualTo(2);
        assertThat(count(parts, "Sediment trap: tee, nipple 4 in, cap", "for 3/4 in. pipe"))
                .isEqualTo(1);
        assertThat(parts.lines(PartGroup.REGULATORS))
                .extracting(PartLine::item)
                .containsExactly("First-stage regulator", "Second-stage regulator", "Main shutoff of the building");
        assertThat(parts.lines()).noneMatch(l -> l.item().startsWith("Coupling"));
    }

    @Test
    void whatThePlanCannotTellIsALineWithoutCount() {
        TakeOff parts = house(
                "{\"id\":\"A\",\"from\":\"R\",\"material\":\"steel\",\"setting\":\"indoors\",\"legs\":[\"14 ft\"]}",
                ",\"appliances\":[{\"id\":\"h\",\"kind\":\"furnace\",\"input\":\"60,000 Btu/h\",\"fedBy\":\"A\"}]");
        assertThat(line(parts, "Fittings of a length whose turns are not described", "1/2 in.")
                        .count())
                .isEmpty();
        assertThat(line(parts, "Parts of a connection", "").count()).isEmpty();
        assertThat(line(parts, "Parts of a connection", "").basis()).contains("a shutoff and a sediment trap");
        assertThat(line(parts, "Supports", "1/2 in.").count()).isEmpty();
        assertThat(line(parts, "Main shutoff of the building", "").count()).isEmpty();
        assertThat(parts.lines()).noneMatch(l -> l.item().contains("elbow"));
        assertThat(parts.lines()).noneMatch(l -> l.item().startsWith("Tee"));
    }

    @Test
    void pipeWhoseLegsAreNotEnteredHasNoFeetAndNoLengths() {
        PipeNeed need = house(
                        "{\"id\":\"A\",\"from\":\"R\",\"material\":\"steel\",\"legs\":[\"up 4 ft\"]},"
                                + "{\"id\":\"B\",\"from\":\"A\",\"material\":\"steel\"}",
                        "")
                .pipe()
                .get(0);
        assertThat(need.size()).isEqualTo("not yet sized");
        assertThat(need.measuredFt()).isEmpty();
        assertThat(need.toBuyFt()).isEmpty();
        assertThat(need.lengths()).isEmpty();
        assertThat(need.basis()).contains("legs not entered: B");
    }

    /** Row 20 ft of the code's table: 1/2 in. carries 200,000, 3/4 in. 418,000 Btu/h. */
    @Test
    void pipeInPlaceIsNotBoughtUnlessItCarriesTooLittle() {
        String furnace = ",\"appliances\":[{\"id\":\"h\",\"input\":\"%s Btu/h\",\"fedBy\":\"A\"}]";
        String section =
                "{\"id\":\"A\",\"from\":\"R\",\"material\":\"steel\",\"legs\":[\"up 10 ft\"],\"installedSize\":\"1/2\"}";
        TakeOff large = house(section, furnace.formatted("60,000"));
        assertThat(large.inPlace()).containsExactly("A");
        assertThat(large.pipe()).isEmpty();
        TakeOff small = house(section, furnace.formatted("400,000"));
        assertThat(small.inPlace()).isEmpty();
        assertThat(small.pipe().get(0).size()).isEqualTo("3/4 in.");
        assertThat(small.pipe().get(0).basis()).contains("A: 1/2 in place carries too little");
    }

    /** Legs that go on the same way through two sections of one size are one piece, without a fitting between. */
    @Test
    void aStraightThroughTwoSectionsIsOnePiece() {
        TakeOff parts = house(
                "{\"id\":\"A\",\"from\":\"R\",\"material\":\"steel\",\"legs\":[\"up 4 ft\",\"east 9 ft\"]},"
                        + "{\"id\":\"B\",\"from\":\"A\",\"material\":\"steel\",\"legs\":[\"east 10 ft\",\"down 3 ft\"]}",
                ",\"appliances\":[{\"id\":\"h\",\"input\":\"60,000 Btu/h\",\"fedBy\":\"B\"}]");
        CuttingList list = parts.pipe().get(0).cutting().get(0);
        assertThat(list.lengths())
                .flatExtracting(CuttingList.Cut::pieces)
                .extracting(Straight::where, Straight::feet)
                .containsExactlyInAnyOrder(
                        org.assertj.core.groups.Tuple.tuple("A+B", 19.0),
                        org.assertj.core.groups.Tuple.tuple("A", 4.0),
                        org.assertj.core.groups.Tuple.tuple("B", 3.0));
        assertThat(count(parts, "90 degree elbow, steel", "1/2 in.")).isEqualTo(2);
    }

    @Test
    void whereMaterialOrSizeChangesThereIsAPartBetween() {
        TakeOff parts = house(
                "{\"id\":\"A\",\"from\":\"R\",\"material\":\"steel\",\"legs\":[\"up 4 ft\"],\"chosenSize\":\"1\"},"
                        + "{\"id\":\"B\",\"from\":\"A\",\"material\":\"steel\",\"legs\":[\"up 4 ft\"]},"
                        + "{\"id\":\"C\",\"from\":\"B\",\"material\":\"copper\",\"legs\":[\"up 4 ft\"]}",
                ",\"appliances\":[{\"id\":\"h\",\"input\":\"60,000 Btu/h\",\"fedBy\":\"C\"}]");
        assertThat(count(parts, "Reducing coupling, steel", "1 in. to 1/2 in.")).isEqualTo(1);
        assertThat(parts.lines()).anyMatch(l -> l.item().equals("Transition, steel to copper"));
    }

    /** 30 ft with a tenth for waste is 33 ft, two lengths of 21 ft are 42 ft, at 2.10 a foot 88.20. */
    @Test
    void pipeWithAPriceIsPricedByTheLengthsThatAreBought() {
        TakeOff parts = house(
                "{\"id\":\"A\",\"from\":\"R\",\"material\":\"steel\",\"legs\":[\"up 10 ft\",\"east 20 ft\"]}",
                ",\"prices\":{\"steel 1/2\":2.10,\"copper 1/2 nominal\":9},"
                        + "\"appliances\":[{\"id\":\"h\",\"input\":\"60,000 Btu/h\",\"fedBy\":\"A\"}]");
        assertThat(parts.pricedSum().orElseThrow()).isEqualTo(88.20, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(demo().pricedSum()).isEmpty();
    }

    /** EHD 30 ends in two fittings, EHD 18 in two more; the point where B and C leave A takes one tee. */
    @Test
    void tubingHasTwoEndsASection() {
        TakeOff parts = of(Samples.sample());
        assertThat(count(parts, "CSST end fitting", "EHD 30")).isEqualTo(4);
        assertThat(parts.lines().stream()
                        .filter(l -> l.item().startsWith("Tee, or one manifold"))
                        .mapToDouble(l -> l.count().orElse(0))
                        .sum())
                .isEqualTo(1);
        assertThat(line(parts, "Bonding conductor, with its clamps", "").count())
                .isEmpty();
    }

    @Test
    void supportsAreCountedWhereTheirSpacingIsEntered() {
        TakeOff parts = house(
                "{\"id\":\"A\",\"from\":\"R\",\"material\":\"steel\",\"legs\":[\"east 20 ft\"],\"supportEvery\":\"6 ft\"}",
                ",\"appliances\":[{\"id\":\"h\",\"input\":\"60,000 Btu/h\",\"fedBy\":\"A\"}]");
        assertThat(count(parts, "Support", "1/2 in.")).isEqualTo(4);
    }

    @Test
    void aHouseWithNothingInItNeedsNoPart() {
        TakeOff parts = of(Samples.plan("{\"format\":\"longrun-plan/1\"}"));
        assertThat(parts.pipe()).isEmpty();
        assertThat(parts.lines()).isEmpty();
    }
}
