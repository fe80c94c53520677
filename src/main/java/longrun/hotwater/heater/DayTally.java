package longrun.hotwater.heater;

import longrun.hotwater.draw.DrawDay.Slice;
import org.jspecify.annotations.Nullable;

/** What one day of an arrangement came to. */
public final class DayTally implements ChainDay.Watcher {

    private final double k;
    private final double comfortF;
    private double gasBtu;
    private double fixtureBtu;
    private double drawMinutes;
    private double comfortMinutes;
    private double hottestF = Double.NEGATIVE_INFINITY;
    private double coldestF = Double.POSITIVE_INFINITY;
    private double pumpBtu;
    private double pumpElectricBtu;
    private double elementBtu;
    private double lossBtu;
    private double coldF;

    public DayTally(double k, double comfortF) {
        this.k = k;
        this.comfortF = comfortF;
    }

    public void begin(@Nullable StorageTank tank, double cold) {
        coldF = cold;
        tank(tank, -1);
    }

    public void end(@Nullable StorageTank tank) {
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

    public double gasBtu() {
        return gasBtu;
    }

    public double fixtureBtu() {
        return fixtureBtu;
    }

    public double drawMinutes() {
        return drawMinutes;
    }

    public double comfortMinutes() {
        return comfortMinutes;
    }

    public double hottestF() {
        return hottestF;
    }

    public double coldestF() {
        return coldestF;
    }

    public double pumpBtu() {
        return pumpBtu;
    }

    public double electricBtu() {
        return pumpElectricBtu + elementBtu;
    }

    public double lossBtu() {
        return lossBtu;
    }

    /** Heat taken from the air about the heater, less the standing loss given back; never below nothing. */
    public double roomBtu() {
        return Math.max(0, pumpBtu - pumpElectricBtu - lossBtu);
    }
}
