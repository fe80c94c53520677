package longrun.plan.choice;

/** What a regulator does. The point of delivery is the outlet of the last one that is not a line regulator. */
public enum RegulatorKind implements Named {
    FIRST_STAGE("first-stage regulator"),
    SECOND_STAGE("second-stage regulator"),
    INTEGRAL_TWO_STAGE("integral two-stage regulator"),
    TWO_PSI("2 psi regulator"),
    LINE("line regulator"),
    SINGLE_STAGE("single-stage regulator");

    private final String label;

    RegulatorKind(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
