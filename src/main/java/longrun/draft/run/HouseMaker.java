package longrun.draft.run;

import longrun.draft.entry.Entered;

/** Stores a run that has become a whole house. */
public interface HouseMaker {

    /** Stores it as a house of its own and gives its id; the run stays as it is. */
    long keep(Entered run);
}
