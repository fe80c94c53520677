package longrun.checked.working;

import longrun.checked.published.CaseInput;

/** A kind of computation that answers published cases. */
@FunctionalInterface
interface Computation {

    Answer of(CaseInput given);
}
