package longrun.hotwater;

import longrun.hotwater.DrawDay.Slice;
import org.jspecify.annotations.Nullable;

/** What one day of an arrangement came to. */
final class DayTally implements ChainDay.Watcher {

    private final double k;
    private final double comfortF;
    private double gasBtu;
    private double fixtureBtu;
    private double burnerBtu;
    private double drawMinutes;
    private double comfortMinutes;
    private double hottestF = Double.NEGATIVE_INFINITY;
    private double coldestF = Double.POSITIVE_INFINITY;
    private double pumpBtu;
    private double pumpElectricBtu;
    private double elementBtu;
    private double lossBtu;
    private double coldF;

    DayTally(double k, double comfortF) {
        this.k = k;
        this.comfortF = comfortF;
    }

    void begin(@Nullable StorageTank tank, double cold) {
        coldF = cold;
        tank(tank, -1);
    }

    void end(@Nullable StorageTank tank) {
        tank(tank, 1);
    }

    private void tank(@Nullable StorageTank tank, int sign) {
        if (tank != null) {
            pumpBtu += sign * tank.pumpBtu();
            pumpElectricBtu += sign * tank.pumpElectricBtu();
            elementBtu += sign * tank.elementBtu();
            lossBtu += sign * tank.lossBtu();
        }
    }

    @Override
    public void drawn(Chain chain, Slice slice, double minute, double minutes) {
        double hours = minutes / 60;
        gasBtu += chain.gasBtuh() * hours;
        burnerBtu += chain.burnerBtuh() * hours;
        fixtureBtu += k * slice.gpm() * (chain.fixtureF() - coldF) * hours;
        drawMinutes += minutes;
        comfortMinutes += isComfort(chain.fixtureF(), comfortF) ? minutes : 0;
        hottestF = Math.max(hottestF, chain.scaldFixtureF());
        coldestF = Math.min(coldestF, chain.fixtureF());
    }

    /** Comfort reached to rounding. */
    static boolean isComfort(double fixtureF, double comfortF) {
        return fixtureF >= comfortF - 1e-9;
    }

    double gasBtu() {
        return gasBtu;
    }

    double burnerBtu() {
        return burnerBtu;
    }

    double fixtureBtu() {
        return fixtureBtu;
    }

    double drawMinutes() {
        return drawMinutes;
    }

    double comfortMinutes() {
        return comfortMinutes;
    }

    double hottestF() {
        return hottestF;
    }

    double coldestF() {
        return coldestF;
    }

    double pumpBtu() {
        return pumpBtu;
    }

    double electricBtu() {
        return pumpElectricBtu + elementBtu;
    }

    double lossBtu() {
        return lossBtu;
    }

    /** Heat taken from the air about the heater, less the standing loss given back; never below nothing. */
    double roomBtu() {
        return Math.max(0, pumpBtu - pumpElectricBtu - lossBtu);
    }
}
