package longrun.store;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says in plain words why Longrun cannot start when the saved houses cannot be opened. */
class HousesUnavailable extends AbstractFailureAnalyzer<StoreTrouble> {

    @Override
    protected FailureAnalysis analyze(Throwable root, StoreTrouble cause) {
        return new FailureAnalysis(cause.what(), cause.todo(), root);
    }
}
