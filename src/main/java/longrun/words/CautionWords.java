package longrun.words;

/** The safety warning, in the same words on every page and every sheet. */
public final class CautionWords {

    /** What follows {@code Gas can kill.} */
    public static final String CARE = "This is preparation, not permission. A licensed gas fitter does or checks the"
            + " work; the local code and the inspector decide; the supplier makes the leak check before the tank valve"
            + " is opened.";

    /** What follows {@code Smell gas?} */
    public static final String SMELL = "Touch no switch or phone inside, no flame. Everyone out. Close the tank valve"
            + " only if it is safe. Call the supplier or the fire service from outside. Do not go back in.";

    /** The whole warning as one text. */
    public static final String TEXT = "Gas can kill. " + CARE + " Smell gas? " + SMELL;

    /** Where gas detectors and carbon monoxide alarms belong, shown with the warning where there is room. */
    public static final String ALARMS = "Propane detectors low, near the floor. Carbon monoxide alarms where the code"
            + " and their maker say: each floor, outside bedrooms. A new steel tank can take the smell out of the gas.";

    private CautionWords() {}
}
