package longrun.capacity;

import java.util.List;

/** Everything wrong with a table a person loads, each as "name:row:column: what, write what". */
public final class OwnTableFaults extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final transient List<String> faults;

    OwnTableFaults(List<String> faults) {
        super(String.join("\n", faults));
        this.faults = List.copyOf(faults);
    }

    /** The faults in the order of the sheet. */
    public List<String> faults() {
        return faults;
    }
}
