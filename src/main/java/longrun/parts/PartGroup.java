package longrun.parts;

import longrun.plan.choice.Named;

/** The parts of a list, in the order one buys and fits them. */
public enum PartGroup implements Named {
    PIPE("Pipe"),
    FITTINGS("Fittings"),
    APPLIANCES("At the appliances"),
    REGULATORS("Regulators and shutoffs"),
    BURIED("Buried pipe"),
    BONDING("Bonding"),
    SUPPORTS("Supports and passages");

    private final String label;

    PartGroup(String label) {
        this.label = label;
    }

    /** As a heading. */
    public String label() {
        return label;
    }
}
