package longrun.hotwater.draw;

import java.util.List;
import longrun.plan.choice.Arrangement;

/**
 * One draw in one arrangement, second by second, told by the minute.
 *
 * @param place of the draw in the house's list
 * @param outletF after the mixing valve, mean of each minute
 * @param fixtureF at the fixture, mean of each minute
 * @param inputBtuh gas the on-demand heater burns, mean of each minute
 * @param minutesComfortable of the draw
 * @param gasBtu burnt for it
 * @param hottestF second at the fixture left as it was set, by the reading that decides scald
 * @param coldestF second at the fixture
 * @param hottestOutletF second after the mixing valve: what a hot tap alone gives
 * @param keepsGpm least flow at the fixture the heaters could keep at the use temperature
 * @param hottestInletF second at the on-demand heater's inlet
 */
public record DrawEvent(
        int place,
        Draw draw,
        Arrangement arrangement,
        List<Double> outletF,
        List<Double> fixtureF,
        List<Double> inputBtuh,
        double minutesComfortable,
        double gasBtu,
        double hottestF,
        double coldestF,
        double hottestOutletF,
        double keepsGpm,
        double hottestInletF) {

    public DrawEvent {
        outletF = List.copyOf(outletF);
        fixtureF = List.copyOf(fixtureF);
        inputBtuh = List.copyOf(inputBtuh);
    }
}
