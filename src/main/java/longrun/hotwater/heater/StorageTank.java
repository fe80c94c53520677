package longrun.hotwater.heater;

import java.util.Arrays;
import longrun.hotwater.draw.DrawDay;

/**
 * The water in a storage heater: equal nodes of well mixed water, cold water in at the bottom, hot out at the top. Water passes
 * through the nodes as through stirred tanks in a row, whose exact solution (Poisson weights) is used, so a step may be as long
 * as the flow is steady; one node and very many are its limits. Heat is only moved, never made: the sums of heat agree with
 * the change of the water's to rounding.
 */
public final class StorageTank {

    /** Legionella multiplies between about 77 and 113 degF; with a margin: public health guidance, memory. */
    private static final double LUKEWARM_FROM_F = 68;

    private static final double LUKEWARM_TO_F = 122;

    private final StorageHeater heater;
    private final double[] nodeF;
    private final double nodeGal;
    private final double nodeBtuPerF;
    private final int third;
    private final double[] pooledF;
    private final int[] pooled;
    private boolean pumpOn;
    private boolean elementOn;
    private double pumpBtu;
    private double pumpElectricBtu;
    private double elementBtu;
    private double lossBtu;
    private double lukewarm;
    private double longestLukewarm;

    /**
     * A tank filled at its set point.
     *
     * @param btuPerGalF heat of the water, Btu for each gallon and degF
     */
    public StorageTank(StorageHeater heater, int nodes, double btuPerGalF) {
        this.heater = heater;
        nodeF = new double[nodes];
        pooledF = new double[nodes];
        pooled = new int[nodes];
        nodeGal = heater.gallons() / nodes;
        nodeBtuPerF = nodeGal * btuPerGalF;
        third = Math.max(1, nodes / 3);
        fill(heater.setF());
    }

    /** Brings all water to one temperature. */
    public void fill(double degF) {
        Arrays.fill(nodeF, degF);
    }

    /** Mean temperature of the water. */
    double meanF() {
        return mean(0, nodeF.length);
    }

    /** Mean temperature of the water that would leave while so much is drawn. */
    double outletF(double gallons, double inF) {
        double a = gallons / nodeGal;
        int top = nodeF.length - 1;
        if (a <= 0) {
            return nodeF[top];
        }
        double weight = Math.exp(-a);
        double left = -Math.expm1(-a);
        double sum = 0;
        for (int j = 0; j <= top && left > 0; j++) {
            sum += (nodeF[top - j] - inF) * left;
            weight *= a / (j + 1);
            left -= weight;
        }
        return inF + sum / a;
    }

    /** Draws water at the top while cold comes in at the bottom. */
    void draw(double gallons, double inF) {
        double a = gallons / nodeGal;
        if (a <= 0) {
            return;
        }
        double first = Math.exp(-a);
        for (int i = nodeF.length - 1; i >= 0; i--) {
            double weight = first;
            double sum = 0;
            for (int j = 0; j <= i; j++) {
                sum += weight * (nodeF[i - j] - inF);
                weight *= a / (j + 1);
            }
            nodeF[i] = inF + sum;
        }
        rise();
    }

    /** Heat of the water over 0 degF. */
    public double heatBtu() {
        double sum = 0;
        for (double t : nodeF) {
            sum += t;
        }
        return sum * nodeBtuPerF;
    }

    /** Standing loss, heat pump and element over some minutes. */
    void heat(double minutes, double roomF) {
        lose(minutes, roomF);
        double hours = minutes / 60;
        boolean pump = heater.pumpRuns(roomF);
        if (pump) {
            pump(hours, roomF);
        }
        element(hours, !pump);
        double mean = meanF();
        lukewarm = mean > LUKEWARM_FROM_F && mean < LUKEWARM_TO_F ? lukewarm + minutes : 0;
        longestLukewarm = Math.max(longestLukewarm, lukewarm);
    }

    /** So many days more pass as the last did. */
    public void goesOnLike(int days) {
        if (lukewarm >= DrawDay.DAY) {
            lukewarm += days * DrawDay.DAY;
            longestLukewarm = Math.max(longestLukewarm, lukewarm);
        }
    }

    /** Minutes the mean stood lukewarm without a break, at the longest. */
    public double longestLukewarm() {
        return longestLukewarm;
    }

    private void lose(double minutes, double roomF) {
        double share = -Math.expm1(-heater.lossBtuhPerF() * minutes / 60 / (nodeBtuPerF * nodeF.length));
        for (int i = 0; i < nodeF.length; i++) {
            double fall = (nodeF[i] - roomF) * share;
            nodeF[i] -= fall;
            lossBtu += fall * nodeBtuPerF;
        }
    }

    private void pump(double hours, double roomF) {
        double low = mean(0, third);
        pumpOn |= low < heater.pumpSetF() - StorageHeater.DEAD_BAND_F;
        if (!pumpOn) {
            return;
        }
        double share = HeatPump.share(roomF, low);
        double wanted = wanted(nodeF.length, heater.pumpSetF());
        double given = Math.min(wanted, heater.pumpBtuh() * share * hours);
        pumpOn = given < wanted;
        give(0, given);
        pumpBtu += given;
        pumpElectricBtu += given / Math.max(1, heater.cop() * share);
    }

    /** The element keeps the top warm beside the heat pump, or heats the whole tank where no heat pump runs. */
    private void element(double hours, boolean alone) {
        if (heater.elementBtuh() <= 0) {
            return;
        }
        int from = alone ? 0 : nodeF.length - third;
        elementOn |= mean(from, from + third) < heater.setF() - StorageHeater.DEAD_BAND_F;
        if (!elementOn) {
            return;
        }
        double wanted = alone ? wanted(nodeF.length, heater.setF()) : wantedAtTop();
        double given = Math.min(wanted, heater.elementBtuh() * hours);
        elementOn = given < wanted;
        give(from, given);
        elementBtu += given;
    }

    private double mean(int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += nodeF[i];
        }
        return sum / (to - from);
    }

    private double wanted(int nodes, double toF) {
        double sum = 0;
        for (int i = 0; i < nodes; i++) {
            sum += Math.max(0, toF - nodeF[i]);
        }
        return sum * nodeBtuPerF;
    }

    private double wantedAtTop() {
        return wanted(nodeF.length, heater.setF()) - wanted(nodeF.length - third, heater.setF());
    }

    /** Heat given to one node and all it rises into: the lowest warms until it is as warm as the next, then both do. */
    private void give(int from, double btu) {
        double left = btu / nodeBtuPerF;
        double levelF = nodeF[from];
        int count = 1;
        while (from + count < nodeF.length && left >= (nodeF[from + count] - levelF) * count) {
            left -= (nodeF[from + count] - levelF) * count;
            levelF = nodeF[from + count];
            count++;
        }
        Arrays.fill(nodeF, from, from + count, levelF + left / count);
    }

    /** Warmer water rises: nodes that lie warm under cold mix until none does. */
    private void rise() {
        int groups = 0;
        for (double t : nodeF) {
            double mixed = t;
            int count = 1;
            while (groups > 0 && pooledF[groups - 1] > mixed) {
                groups--;
                mixed = (mixed * count + pooledF[groups] * pooled[groups]) / (count + pooled[groups]);
                count += pooled[groups];
            }
            pooledF[groups] = mixed;
            pooled[groups++] = count;
        }
        if (groups == nodeF.length) {
            return;
        }
        int i = 0;
        for (int g = 0; g < groups; g++) {
            Arrays.fill(nodeF, i, i + pooled[g], pooledF[g]);
            i += pooled[g];
        }
    }

    /** Whether another tank's water stands as this one's, heat on or off alike. */
    public boolean standsLike(double[] before, boolean pumpWasOn, boolean elementWasOn) {
        if (pumpOn != pumpWasOn || elementOn != elementWasOn) {
            return false;
        }
        for (int i = 0; i < nodeF.length; i++) {
            if (Math.abs(nodeF[i] - before[i]) > 1e-9) {
                return false;
            }
        }
        return true;
    }

    public double[] nodesF() {
        return nodeF.clone();
    }

    public boolean pumpIsOn() {
        return pumpOn;
    }

    public boolean elementIsOn() {
        return elementOn;
    }

    double pumpBtu() {
        return pumpBtu;
    }

    double pumpElectricBtu() {
        return pumpElectricBtu;
    }

    double elementBtu() {
        return elementBtu;
    }

    double lossBtu() {
        return lossBtu;
    }
}
