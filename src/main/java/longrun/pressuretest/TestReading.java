package longrun.pressuretest;

import java.util.List;
import java.util.Optional;
import longrun.plan.Plan;
import longrun.plan.choice.ReadingKind;
import longrun.quantity.Pressure;
import longrun.quantity.Show;
import longrun.quantity.Temperature;

/**
 * What the gauge showed at the start and at the end of a test. A gas shut in grows or falls with its absolute temperature:
 * (P + 14.7)/(T + 460) stays the same, so that a fall by cooling alone is no leak and a warm afternoon hides none.
 *
 * @param at the regulator whose pipe was tested
 * @param first read at the start
 * @param last read at the end
 * @param expected what the last should show by temperature alone; empty where a temperature is not entered
 * @param minutes between the two; empty where one is not entered
 */
public record TestReading(
        String at, Pressure first, Pressure last, Optional<Pressure> expected, Optional<Double> minutes) {

    /** The readings of a test at one regulator, the first and the last as entered; empty with fewer than two. */
    static Optional<TestReading> find(Plan plan, String regulator) {
        List<Plan.Reading> read = plan.readings().stream()
                .filter(r -> r.what().is(ReadingKind.TEST) && r.at().is(regulator))
                .filter(r -> r.pressure().isKnown())
                .toList();
        if (read.size() < 2) {
            return Optional.empty();
        }
        Plan.Reading to = read.get(read.size() - 1);
        Plan.Reading from = read.get(start(read));
        Pressure first = from.pressure().findValue().orElseThrow();
        Optional<Pressure> expected =
                from.temp().findValue().flatMap(start -> to.temp().findValue().map(end -> expected(first, start, end)));
        Optional<Double> minutes = from.minutes()
                .findValue()
                .flatMap(began -> to.minutes().findValue().map(ended -> ended - began));
        return Optional.of(
                new TestReading(regulator, first, to.pressure().findValue().orElseThrow(), expected, minutes));
    }

    /** Where the newest test begins: at its minute 0, else at the first reading of the last one's day. */
    private static int start(List<Plan.Reading> read) {
        int last = read.size() - 1;
        for (int i = last - 1; i >= 0; i--) {
            if (read.get(i).minutes().is(m -> m == 0)) {
                return i;
            }
        }
        int first = last - 1;
        while (first > 0 && read.get(first - 1).date().equals(read.get(last).date())) {
            first--;
        }
        return first;
    }

    /** What a shut-in gas shows at another temperature. */
    public static Pressure expected(Pressure first, Temperature start, Temperature end) {
        double air = TestFact.get("atmosphere").value();
        double zero = TestFact.get("absolute").value();
        return Pressure.ofPsi((first.psi() + air) * (end.degF() + zero) / (start.degF() + zero) - air);
    }

    /** What is lost beyond what the temperature explains; negative where the gauge shows more than that. */
    public Optional<Double> lostPsi() {
        return expected.map(e -> e.psi() - last.psi());
    }

    /** Whether more is lost than the least mark of the gauge. */
    public boolean isLeaking() {
        return lostPsi().orElse(first.psi() - last.psi())
                > TestFact.get("gauge-mark").value() + 1e-9;
    }

    /** Whether the gauge shows more than the temperature explains, which no shut-in gas does. */
    private boolean isTooHigh() {
        return lostPsi().orElse(0.0) < -TestFact.get("gauge-mark").value() - 1e-9;
    }

    /**
     * What the two readings say of a test; one begun too low or stood too short is none.
     *
     * @param wanted minutes the test must hold
     * @param least pressure it must begin at; empty where that is not known
     */
    public String words(int wanted, Optional<Pressure> least) {
        String high = least.isEmpty()
                ? " How high the test must begin is not known yet, so it passes nothing."
                : first.psi() < least.get().psi() - 1e-9
                        ? " It began at " + psi(first) + "; at least " + psi(least.get())
                                + " is wanted: this is no test, make it again."
                        : "";
        String held = minutes.isEmpty()
                ? " How many minutes lie between them is not entered; " + wanted + " are wanted."
                : minutes.get() < wanted
                        ? " Only " + Show.plain(minutes.get()) + " minutes lie between them; " + wanted
                                + " are wanted: let it stand on."
                        : "";
        return words() + high + held;
    }

    private String words() {
        String read = "The gauge went from " + psi(first) + " to " + psi(last);
        if (expected.isEmpty()) {
            return read
                    + ". The temperatures are not entered, so what the weather did to it is not known: a tank of air"
                    + " 10 degF colder falls by " + Show.decimals(coldFall(), 1) + " psi without a leak."
                    + (isLeaking() ? " As it stands, look for the leak and test again." : "");
        }
        String weather = read + "; by temperature alone it should show " + psi(expected.get()) + ". ";
        if (isTooHigh()) {
            return weather + "It shows more than that, which no pipe that is shut in does: look at the readings, and"
                    + " test again.";
        }
        return weather
                + (isLeaking()
                        ? Show.decimals(lostPsi().orElseThrow(), 2)
                                + " psi is lost: find the leak with leak fluid or a detector, never a flame, repair it and"
                                + " test again."
                        : "No loss that this gauge could show is left.");
    }

    private double coldFall() {
        double air = TestFact.get("atmosphere").value();
        double zero = TestFact.get("absolute").value();
        double warm = zero + 60;
        return (first.psi() + air) * 10 / warm;
    }

    private static String psi(Pressure p) {
        return Show.decimals(p.psi(), 1) + " psi";
    }
}
