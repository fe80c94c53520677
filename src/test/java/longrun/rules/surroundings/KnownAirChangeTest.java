package longrun.rules.surroundings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
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
        "30, 0.10, 6300",
        "40, 0.10, 8400",
        "50, 0.10, 10500"
    })
    void burnerWithoutAFan(double thousand, double airChange, long printed) {
        assertThat(Math.round(RoomAir.byAirChange(burners(thousand, 0), airChange)))
                .isEqualTo(printed);
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
