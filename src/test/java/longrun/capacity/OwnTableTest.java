package longrun.capacity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import longrun.origin.Confidence;
import longrun.plan.choice.Material;
import longrun.quantity.Length;
import longrun.quantity.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A tubing maker's table that a person loads. */
class OwnTableTest {

    private static final Pressure INLET = Pressure.ofInWc(11);
    private static final Pressure DROP = Pressure.ofInWc(0.5);

    private static CapacityTable read(String csv) {
        return OwnTable.ownTable("own sheet", Material.CSST, INLET, DROP, csv);
    }

    private static List<String> faults(String csv) {
        OwnTableFaults faults = catchThrowableOfType(OwnTableFaults.class, () -> read(csv));
        assertThat(faults).as(csv).isNotNull();
        return faults.faults();
    }

    @Test
    void theSheetBecomesATable() {
        CapacityTable t = read("length_ft,13,18\n10,49,129\n20,34,91\n");
        assertThat(t.id()).isEqualTo("own:own sheet");
        assertThat(t.sizes()).containsExactly("13", "18");
        assertThat(t.btuh(t.findRow(Length.ofFeet(15)).orElseThrow(), 1)).isEqualTo(91_000);
        assertThat(t.cell(0, 0).confidence()).isEqualTo(Confidence.OWN);
        assertThat(t.bore(0)).isEmpty();
        assertThat(t.computed()).isFalse();
        assertThat(t.inlet()).isEqualTo(INLET);
    }

    @Test
    void spacesWindowsLineEndsAByteMarkAndRemarksDoNoHarm() {
        CapacityTable t = read("\uFEFF# from the maker\r\nlength_ft, 13, 18\r\n10, 49, 129.5\r\n\r\n20,,91\r\n");
        assertThat(t.btuh(0, 1)).isEqualTo(129_500);
        assertThat(t.capacity(1, 0)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "length_ft,13,18;10,49,x|own sheet:2:3: 'x' is not a positive number, write",
                "length_ft,13,18;10,0,129|own sheet:2:2: '0' is not a positive number, write",
                "length_ft,13,18;10,-4,129|own sheet:2:2: '-4' is not a positive number, write",
                "length_ft,13,18;10,49,129;20,50,91|own sheet:3:2: the capacity rises with length, write",
                "length_ft,13,18;10,49,48|own sheet:2:3: the capacity falls with size, write",
                "length_ft,13,18;10,49|own sheet:2:3: 2 values, write 3",
                "length_ft,13,18;10,49,129,200|own sheet:2:4: 4 values, write 3",
                "length_ft,13,18;20,49,129;10,34,91|own sheet:3:1: the length does not rise, write",
                "feet,13,18;10,49,129|own sheet:1:1: the first column is 'feet', write for example length_ft,13,18",
                "length_ft,13,13;10,49,129|own sheet:1:3: size 13 appears twice, write",
                "length_ft,18,13;10,49,129|own sheet:1:3: '13' is not an EHD above the one before, write",
                "length_ft,13,;10,49,129|own sheet:1:3: no size, write",
                "length_ft;10|own sheet:1:2: no sizes, write",
                "length_ft,13,18|own sheet:2:1: no lengths, write",
                "length_ft,13,18;10,49,|own sheet:2:3: the capacity falls with size, write",
                "length_ft,13,18;10,,129;20,34,91|own sheet:3:2: the capacity rises with length, write"
            })
    void aFaultSaysWhereAndWhatToWrite(String csv, String fault) {
        assertThat(faults(csv.replace(';', '\n'))).singleElement().asString().startsWith(fault);
    }

    @Test
    void everyFaultComesAtOnce() {
        assertThat(faults("length_ft,13,18\n10,a,129\n20,34,b\n15,30,80\n"))
                .extracting(f -> f.substring(0, f.indexOf(": ")))
                .containsExactly("own sheet:2:2", "own sheet:3:3", "own sheet:4:1");
    }

    @Test
    void anEmptySheetAnEndlessOneAndADropOfTheWholePressureAreRefused() {
        assertThat(faults("")).singleElement().asString().startsWith("own sheet:1:1: the sheet is empty, write");
        assertThat(faults("length_ft" + ",13".repeat(5000) + "\n10".repeat(5000)))
                .isNotEmpty();
        OwnTableFaults faults = catchThrowableOfType(
                OwnTableFaults.class,
                () -> OwnTable.ownTable("s", Material.CSST, DROP, INLET, "length_ft,13\n10,49\n"));
        assertThat(faults.faults()).singleElement().asString().contains("write a smaller drop");
    }

    /** What is at its limit is still read: equal capacities are common in print, and a table may be long. */
    @Test
    void equalCapacitiesAHundredSizesAndAThousandLengthsAreStillATable() {
        assertThat(read("length_ft,13,18\n10,49,49\n20,49,49\n").rowCount()).isEqualTo(2);
        String sizes = IntStream.rangeClosed(1, 100).mapToObj(n -> "," + n).collect(Collectors.joining());
        assertThat(read("length_ft" + sizes + "\n10" + ",49".repeat(100) + "\n").sizes())
                .hasSize(100);
        String lengths =
                IntStream.rangeClosed(1, 1000).mapToObj(n -> n + ",49\n").collect(Collectors.joining());
        assertThat(read("length_ft,13\n" + lengths).rowCount()).isEqualTo(1000);
        assertThat(read("length_ft,13\n10,1000000000\n").btuh(0, 0)).isEqualTo(1e12);
    }

    @Test
    void aHundredAndOneSizesAThousandAndOneLengthsAreRefusedWithTheLimit() {
        assertThat(faults("length_ft" + ",13".repeat(101) + "\n10,49\n"))
                .last()
                .asString()
                .contains("100 sizes");
        assertThat(faults("length_ft,13\n" + "10,49\n".repeat(1001)))
                .last()
                .asString()
                .contains("1,000 lengths");
        assertThat(faults("length_ft,13\n10,1000000001\n"))
                .singleElement()
                .asString()
                .contains("not a positive number");
    }

    @Test
    void aDropOfNothingOrOfTheWholeInletPressureIsRefused() {
        for (Pressure drop : List.of(Pressure.ZERO, INLET)) {
            OwnTableFaults faults = catchThrowableOfType(
                    OwnTableFaults.class,
                    () -> OwnTable.ownTable("s", Material.CSST, INLET, drop, "length_ft,13\n10,49\n"));
            assertThat(faults.faults()).singleElement().asString().contains("write a smaller drop");
        }
    }

    @Test
    void anEqualEhdAnEqualLengthAndASheetThatIsNoneAreNamed() {
        assertThat(faults("length_ft,13,13.0\n10,49,129\n"))
                .singleElement()
                .asString()
                .contains("not an EHD above");
        assertThat(faults("length_ft,13\n10,49\n10,49\n"))
                .singleElement()
                .asString()
                .contains("does not rise");
        assertThat(faults("length_ft," + "x".repeat(17 << 20)))
                .singleElement()
                .asString()
                .contains("is no CSV");
        assertThat(faults("length_ft,13\n10,abcdefghijklmnopqrst\n").get(0)).contains("'abcdefghijklmnopqrst'");
        assertThat(faults("length_ft,13\n10,abcdefghijklmnopqrstu\n").get(0)).contains("'abcdefghijklmnopqrst...'");
    }

    @Test
    void steelSizesAreTakenInTheOrderOfTheirCapacities() {
        CapacityTable t = OwnTable.ownTable("s", Material.STEEL, INLET, DROP, "length_ft,1/2,3/4\n10,291,608\n");
        assertThat(t.findColumn("3/4").orElseThrow()).isEqualTo(1);
    }
}
