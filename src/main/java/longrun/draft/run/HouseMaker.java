package longrun.draft.run;

import longrun.draft.entry.DraftValue;

/** Makes a house of a run or a fill. */
public interface HouseMaker {

    /** Stores a plan as a new house and returns its id; the run or fill is not changed. */
    long store(DraftValue run);
}
