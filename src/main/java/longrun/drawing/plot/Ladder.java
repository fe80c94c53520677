package longrun.drawing.plot;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * The figures along an upright axis from zero: three to six rungs of 1, 2 or 5 times a power of ten.
 *
 * @param step between two rungs
 * @param top height of the axis, a little above the greatest figure
 */
record Ladder(double step, double top) {

    static Ladder to(double greatest) {
        double most = greatest > 0 ? greatest * 1.08 : 1;
        double step = Math.pow(10, Math.floor(Math.log10(most)));
        double rungs = most / step;
        double wide = rungs < 1.5 ? step / 5 : rungs < 3 ? step / 2 : rungs < 6 ? step : 2 * step;
        return new Ladder(wide, most);
    }

    List<Double> rungs() {
        int count = (int) Math.floor(top / step + 1e-9);
        return IntStream.rangeClosed(0, count).mapToObj(i -> i * step).toList();
    }

    static String written(double value) {
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%,.0f", value) : PlotSvg.number(value);
    }
}
