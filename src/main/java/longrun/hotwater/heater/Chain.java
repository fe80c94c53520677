package longrun.hotwater.heater;

import org.jspecify.annotations.Nullable;

/**
 * The way of the water: storage, on-demand heater, mixing valve, fixtures; cold also to valve and fixture. A step answers for
 * a steady draw. Chain flow is fixture flow x (use - cold) / (chain outlet - cold), at most the whole; whether the burner
 * starts is judged on it at the set point. Over full fire the outlet sags, and the flow that would keep the use temperature
 * stands beside it. Under least fire there are two readings: it does not fire (decides comfort), and it fires at least fire
 * (decides scald); gas is counted for the needed heat alone.
 */
public final class Chain {

    private static final int TRIES = 40;
    private static final double SAME_GPM = 1e-12;

    private final @Nullable StorageTank tank;
    private final @Nullable OnDemandHeater heater;
    private final double mixF;
    private final double k;

    private double gpm;
    private double inletF;
    private double chainF;
    private double fixtureF;
    private double burnerBtuh;
    private double neededBtuh;
    private double scaldChainF;
    private double scaldOutletF;
    private double scaldFixtureF;
    private double keepsGpm;

    /**
     * A chain.
     *
     * @param mixF what the mixing valve is set to; plus infinity where there is none
     * @param k heat to warm a flow, Btu/h for each gal/min and degF
     */
    public Chain(@Nullable StorageTank tank, @Nullable OnDemandHeater heater, double mixF, double k) {
        this.tank = tank;
        this.heater = heater;
        this.mixF = mixF;
        this.k = k;
    }

    /** One step of a draw; the tank gives its water, its heat is another step. */
    public void draw(double fixtureGpm, double useF, double coldF, double minutes) {
        double wantedF = Math.min(useF, mixF);
        keepsGpm = fixtureGpm;
        gpm = fixtureGpm;
        double before = Double.NaN;
        for (int i = 0; i < TRIES && !(Math.abs(gpm - before) < SAME_GPM); i++) {
            before = gpm;
            inletF = tank == null ? coldF : tank.outletF(gpm * minutes, coldF);
            answer(fixtureGpm, wantedF, coldF);
        }
        if (tank != null) {
            tank.draw(gpm * minutes, coldF);
        }
        fixtureF = fixtureGpm > 0 ? coldF + gpm * (chainF - coldF) / fixtureGpm : coldF;
        scaldOutletF = Math.min(mixF, scaldChainF);
        scaldFixtureF = scald(coldF);
    }

    private void answer(double fixtureGpm, double wantedF, double coldF) {
        burnerBtuh = 0;
        neededBtuh = 0;
        if (heater == null || inletF >= heater.setF()) {
            unfired(fixtureGpm, wantedF, coldF);
            return;
        }
        double firedGpm = flow(fixtureGpm, wantedF, coldF, heater.setF());
        if (firedGpm < heater.activationGpm() || firedGpm <= 0) {
            unfired(fixtureGpm, wantedF, coldF);
            return;
        }
        double needed = k * firedGpm * (heater.setF() - inletF);
        if (needed > heater.fullBtuh()) {
            sagging(fixtureGpm, Math.min(wantedF, heater.setF()), coldF, heater.fullBtuh());
        } else if (needed < heater.leastBtuh()) {
            unfired(fixtureGpm, wantedF, coldF);
            neededBtuh = needed;
            scaldChainF = heater.atLeastFireF(inletF, firedGpm, k);
        } else {
            fired(heater.setF(), firedGpm, needed);
        }
    }

    private void fired(double outF, double flow, double btuh) {
        chainF = outF;
        scaldChainF = outF;
        gpm = flow;
        burnerBtuh = btuh;
        neededBtuh = btuh;
    }

    private void unfired(double fixtureGpm, double wantedF, double coldF) {
        chainF = inletF;
        scaldChainF = inletF;
        gpm = flow(fixtureGpm, wantedF, coldF, inletF);
    }

    /** Full fire does not reach the set point: more of the fixture's water goes through the chain, at last all of it. */
    private void sagging(double fixtureGpm, double wantedF, double coldF, double fullBtuh) {
        double whole = k * fixtureGpm * (wantedF - inletF);
        double fromTank = inletF - coldF;
        if (whole > fullBtuh) {
            fired(inletF + fullBtuh / (k * fixtureGpm), fixtureGpm, fullBtuh);
            keepsGpm = fullBtuh / (k * (wantedF - inletF));
        } else if (fromTank > 0) {
            double flow = (fixtureGpm * (wantedF - coldF) - fullBtuh / k) / fromTank;
            fired(inletF + fullBtuh / (k * flow), flow, fullBtuh);
        } else {
            fired(wantedF, fixtureGpm, whole);
        }
    }

    /** Share of the fixture's water that goes through the chain. */
    private static double flow(double fixtureGpm, double wantedF, double coldF, double outF) {
        if (wantedF <= coldF) {
            return 0;
        }
        return outF <= wantedF ? fixtureGpm : fixtureGpm * (wantedF - coldF) / (outF - coldF);
    }

    /** At the fixture, left as it was set, when the burner comes on at least fire. */
    private double scald(double coldF) {
        double valve = outletF();
        double hand = valve > coldF ? (fixtureF - coldF) / (valve - coldF) : 0;
        return coldF + hand * (scaldOutletF - coldF);
    }

    /** Water that comes to the on-demand heater. */
    double inletF() {
        return inletF;
    }

    /** Water after the mixing valve. */
    double outletF() {
        return Math.min(mixF, chainF);
    }

    /** Water at the fixture. */
    public double fixtureF() {
        return fixtureF;
    }

    /** Heat the burner gives the water, by the reading that decides comfort. */
    double burnerBtuh() {
        return burnerBtuh;
    }

    /** Gas burnt for the needed heat. */
    double gasBtuh() {
        return heater == null ? 0 : neededBtuh / heater.efficiency();
    }

    /** Hottest water after the mixing valve, by the reading that decides scald: what a hot tap alone gives. */
    double scaldOutletF() {
        return scaldOutletF;
    }

    /** Hottest water at the fixture, left as it was set. */
    double scaldFixtureF() {
        return scaldFixtureF;
    }

    /** Flow at the fixture that the burner could keep at the use temperature; the whole where it does. */
    double keepsGpm() {
        return keepsGpm;
    }
}
