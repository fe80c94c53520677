package longrun.hotwater.heater;

import java.util.ArrayList;
import java.util.List;
import longrun.hotwater.draw.Draw;
import longrun.hotwater.draw.DrawDay;
import longrun.hotwater.draw.DrawDay.Slice;
import longrun.hotwater.draw.DrawEvent;
import longrun.plan.choice.Arrangement;

/** Gathers one draw out of a day's steps. */
public final class EventTally {

    private final int place;
    private final Draw draw;
    private final double comfortF;
    private final double[] minutes;
    private final double[] outlet;
    private final double[] fixture;
    private final double[] input;
    private double comfortable;
    private double gasBtu;
    private double hottest = Double.NEGATIVE_INFINITY;
    private double coldest = Double.POSITIVE_INFINITY;
    private double hottestOutlet = Double.NEGATIVE_INFINITY;
    private double hottestInlet = Double.NEGATIVE_INFINITY;
    private double keeps;

    public EventTally(int place, Draw draw, double comfortF) {
        this.place = place;
        this.draw = draw;
        this.comfortF = comfortF;
        int length = Math.max(1, (int) Math.ceil(draw.minutes() - 1e-9));
        minutes = new double[length];
        outlet = new double[length];
        fixture = new double[length];
        input = new double[length];
        keeps = draw.gpm();
    }

    public void drawn(Chain chain, Slice slice, double minute, double step) {
        double since = slice.startMin() + minute - draw.startMin();
        double into = since < -1e-9 ? since + DrawDay.DAY : Math.max(0, since);
        int at = Math.min(minutes.length - 1, (int) (into + 1e-9));
        double share = draw.gpm() / slice.gpm();
        boolean alone = slice.draws().size() == 1;
        double here = alone ? chain.fixtureF() : Math.min(draw.useF(), Math.max(chain.outletF(), chain.fixtureF()));
        minutes[at] += step;
        outlet[at] += chain.outletF() * step;
        fixture[at] += here * step;
        input[at] += chain.gasBtuh() * step;
        gasBtu += chain.gasBtuh() * share * step / 60;
        comfortable += DayTally.isComfort(here, comfortF) ? step : 0;
        hottest = Math.max(hottest, chain.scaldFixtureF());
        coldest = Math.min(coldest, here);
        hottestOutlet = Math.max(hottestOutlet, chain.scaldOutletF());
        hottestInlet = Math.max(hottestInlet, chain.inletF());
        keeps = Math.min(keeps, chain.keepsGpm() * share);
    }

    public DrawEvent event(Arrangement arrangement) {
        return new DrawEvent(
                place,
                draw,
                arrangement,
                means(outlet),
                means(fixture),
                means(input),
                comfortable,
                gasBtu,
                hottest,
                coldest,
                hottestOutlet,
                keeps,
                hottestInlet);
    }

    private List<Double> means(double[] sums) {
        List<Double> out = new ArrayList<>();
        for (int i = 0; i < sums.length; i++) {
            if (minutes[i] > 0) {
                out.add(sums[i] / minutes[i]);
            }
        }
        return out;
    }
}
