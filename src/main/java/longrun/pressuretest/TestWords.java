package longrun.pressuretest;

/** What holds for every test, in words, each with its section. */
public final class TestWords {

    public static final String WHEN =
            "Before the pipe is used and before it is covered, with every joint to be seen (IFGC 406.1, 406.3; IRC"
                    + " G2417.1, G2417.3).";

    public static final String MEDIUM =
            "Air, nitrogen, carbon dioxide or another inert gas; never oxygen, never fuel gas (IFGC 406.2; IRC G2417.2).";

    public static final String LEAKS =
            "A leak is found with leak fluid or a gas detector, never with a flame; it is mended and the test is made"
                    + " again (IFGC 406.5; IRC G2417.5).";

    public static final String TURN_ON =
            "Before gas is let in: look for open ends, close unused outlets, check for leaks at once, shut off if there"
                    + " is one; the same after any interruption (IFGC 406.6; NFPA 54 8.2).";

    public static final String LOCAL =
            "Some places ask for more: 10 psi for 15 minutes, 30 psi outside, 6 psi where it is covered. Ask the"
                    + " inspector before the gauge goes on.";

    private TestWords() {}
}
