package longrun.pressuretest;

import java.util.ArrayList;
import java.util.List;
import longrun.quantity.Show;

/**
 * How the air is let out of a pipe and gas in, and what is checked then.
 *
 * @param outdoorsOnly whether it may be purged outdoors alone
 * @param steps a sentence each
 * @param from its sources
 */
public record Purge(boolean outdoorsOnly, List<String> steps, List<String> from) {

    /**
     * The purge of a side. Pipe in use above 2 psi is let out outdoors alone; where the pressure is not known, too. A
     * house's pipe is smaller than the sizes that ask for it by themselves.
     */
    public static Purge of(SideTest side) {
        TestFact limit = TestFact.get("outdoor-purge-above");
        boolean outdoors = side.working().isEmpty() || side.working().get().psi() > limit.value();
        List<String> steps = new ArrayList<>();
        List<String> from = new ArrayList<>();
        if (outdoors) {
            steps.add(
                    side.working().isEmpty()
                            ? "Its pressure is not known, so let the air out outdoors alone."
                            : "In use it stands above " + Show.plain(limit.value())
                                    + " psi: let the air out outdoors alone.");
            from.add(limit.source());
        } else {
            steps.add("Let the air out outdoors; or through a burner with a continuous igniter that is in no"
                    + " combustion chamber; or through a purge burner; or indoors with a listed gas detector watching"
                    + " where the gas comes out.");
            from.add("IRC G2417.7.2.1, 2018");
        }
        TestFact ignition = TestFact.get("purge-to-ignition");
        TestFact intake = TestFact.get("purge-to-intake");
        steps.add("The end stands outdoors behind a valve with someone at it, at least " + Show.plain(ignition.value())
                + " ft from anything that could light it and from openings of the building, and "
                + Show.plain(intake.value()) + " ft from mechanical air intakes.");
        from.add(ignition.source());
        return new Purge(outdoors, List.copyOf(steps), List.copyOf(from));
    }

    /** The check with gas at its working pressure and the appliances connected. */
    public static String check() {
        return "With gas on and the appliances connected the pipe holds between "
                + Show.plain(TestFact.get("check-least").value()) + " and "
                + Show.plain(TestFact.get("check-most").value()) + " in. w.c. for "
                + Show.plain(TestFact.get("check-minutes").value()) + " minutes without a drop, on a water gauge that"
                + " shows " + Show.plain(TestFact.get("check-mark").value()) + " in. ("
                + TestFact.get("check-least").source() + ").";
    }
}
