package longrun.rules.surroundings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.Samples;
import longrun.rules.shape.House;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The room volume for a known air change, 2018 IFGC 304.5.2 and the tables that makers print of it: thousand Btu/h, ft3
 * to the whole cubic foot.
 */
class KnownAirChangeTest {

    private static Burners burners(double natural, double fan) {
        return new Burners(natural * 1000, fan * 1000, List.of(), List.of(), 1);
    }

    @ParameterizedTest(name = "{0} thousand Btu/h without a fan at {1} an hour")
    @CsvSource({
        "30, 0.40, 1575",
        "40, 0.40, 2100",
        "50, 0.40, 2625",
        "30, 0.60, 1050",
        "40, 0.60, 1400",
        "50, 0.60, 1750",
        "30, 0.50, 1260",
        "40, 0.50, 1680",
        "50, 0.50, 2100",
        "30, 0.30, 2100",
        "40, 0.30, 2800",
        "50, 0.30, 3500",
        "30, 0.20, 3150",
        "40, 0.20, 4200",
        "50, 0.20, 5250",
        "30, 0.10, 6300",
        "40, 0.10, 8400",
        "50, 0.10, 10500"
    })
    void burnerWithoutAFan(double thousand, double airChange, long printed) {
        assertThat(Math.round(RoomAir.byAirChange(burners(thousand, 0), airChange)))
                .isEqualTo(printed);
    }

    @ParameterizedTest(name = "{0} thousand Btu/h with a fan at {1} an hour")
    @CsvSource({
        "50, 0.60, 1250",
        "100, 0.60, 2500",
        "150, 0.60, 3750",
        "50, 0.50, 1500",
        "75, 0.50, 2250",
        "125, 0.50, 3750",
        "50, 0.30, 2500",
        "75, 0.30, 3750",
        "150, 0.30, 7500",
        "75, 0.20, 5625",
        "125, 0.20, 9375",
        "50, 0.10, 7500",
        "75, 0.10, 11250",
        "125, 0.10, 18750",
        "150, 0.10, 22500"
    })
    void fanAssistedBurner(double thousand, double airChange, long printed) {
        assertThat(Math.round(RoomAir.byAirChange(burners(0, thousand), airChange)))
                .isEqualTo(printed);
    }

    /**
     * Worked examples of the standard method of NFPA 54, 50 ft3 for each 1,000 Btu/h (secondary). A utility's
     * engineering guide: burners of 150,000 Btu/h want 7,500 ft3, and a room of 20 by 30 by 8 ft has 4,800. A heater
     * maker's worksheet: 72,000 Btu/h in 3,008 ft3 is too much, with a study of 720 ft3 open to it 3,728 ft3 carry
     * 74,560 Btu/h.
     */
    @ParameterizedTest(name = "{0} Btu/h in {1} ft3")
    @CsvSource({
        "150000, 4800, broken",
        "150000, 7500, holds",
        "72000, 3008, broken",
        "72000, 3728, holds",
        "74560, 3728, holds",
        "74561, 3728, broken"
    })
    void workedExampleOfTheStandardMethod(String btuh, String volume, String state) {
        House house = House.of(Samples.plan("{\"format\":\"longrun-plan/1\",\"rooms\":[{\"id\":\"den\",\"volume\":\""
                + volume + " ft3\",\"openings\":[]}],\"appliances\":[{\"id\":\"a\",\"kind\":\"space-heater\",\"vent\":"
                + "\"none\",\"room\":\"den\",\"input\":\"" + btuh + " Btu/h\"}]}"));
        assertThat(new AirForCombustion().judge(house))
                .singleElement()
                .satisfies(v -> assertThat(v.state().state().written()).isEqualTo(state));
    }

    /** 304.5.1: 50 ft3 a thousand, not under 0.40 an hour; 304.5.2: 21 ft3 a thousand by the air change. */
    @ParameterizedTest(name = "at {0} an hour")
    @CsvSource(
            delimiter = '|',
            value = {
                "0.50 ach|21 ft3 for each 1,000 of 40,000 Btu/h, by 0.50 air changes an hour, make 1,680 ft3|make 2,000 ft3",
                "0.40 ach|make 2,000 ft3|by 0.40 air changes an hour, make 2,100 ft3",
                "0.30 ach|make 2,800 ft3|make 2,000 ft3, a way not open to a room with less than 0.40"
            })
    void bothMethodsAreShownWhereTheAirChangeIsKnown(String airChange, String decides, String other) {
        List<AirWay> ways = RoomAir.waysOf(
                Samples.plan("{\"format\":\"longrun-plan/1\",\"rooms\":[{\"id\":\"den\",\"volume\":\"1900 ft3\","
                        + "\"infiltration\":\"" + airChange + "\",\"openings\":[]}],\"appliances\":[{\"id\":\"a\","
                        + "\"kind\":\"space-heater\",\"vent\":\"draft\",\"room\":\"den\",\"input\":\"40000 Btu/h\"}]}"),
                0);
        assertThat(ways).hasSize(2);
        assertThat(ways.get(0).sum()).contains(decides);
        assertThat(ways.get(1).sum()).contains(other);
    }

    @ParameterizedTest(name = "{0} thousand Btu/h with a fan")
    @CsvSource({"50, 1875", "75, 2813", "100, 3750", "125, 4688", "150, 5625"})
    void fanAssistedBurnerAtFourTenths(double thousand, long printed) {
        assertThat(Math.round(RoomAir.byAirChange(burners(0, thousand), 0.40))).isEqualTo(printed);
    }

    @ParameterizedTest
    @CsvSource({"0.60, 0.61", "0.60, 3"})
    void noMoreThanSixTenthsIsCounted(double most, double leaky) {
        assertThat(RoomAir.byAirChange(burners(30, 20), leaky)).isEqualTo(RoomAir.byAirChange(burners(30, 20), most));
    }

    @ParameterizedTest
    @CsvSource("0")
    void whereNoAirLeaksInNoRoomIsLargeEnough(double none) {
        assertThat(RoomAir.byAirChange(burners(1, 0), none)).isInfinite();
    }
}
