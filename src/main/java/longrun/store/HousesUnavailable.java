package longrun.store;

import java.sql.SQLException;
import org.h2.api.ErrorCode;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;
import org.springframework.core.env.Environment;

/** Says in plain words why Longrun cannot start when the saved houses cannot be opened. */
class HousesUnavailable extends AbstractFailureAnalyzer<SQLException> {

    private final Environment environment;

    HousesUnavailable(Environment environment) {
        this.environment = environment;
    }

    @Override
    protected @Nullable FailureAnalysis analyze(Throwable root, SQLException cause) {
        String folder = environment.getProperty("longrun.data");
        return switch (cause.getErrorCode()) {
            case ErrorCode.DATABASE_ALREADY_OPEN_1 ->
                new FailureAnalysis(
                        "Longrun is running already with the saved houses in " + folder + ".",
                        "Use the one that is running, or stop it first, or start this one with a folder of its own:"
                                + " --longrun.data=FOLDER",
                        root);
            case ErrorCode.FILE_CREATION_FAILED_1, ErrorCode.IO_EXCEPTION_1, ErrorCode.IO_EXCEPTION_2 ->
                new FailureAnalysis(
                        "The saved houses in " + folder + " cannot be opened: " + cause.getMessage(),
                        "Let Longrun write there, or name another folder: --longrun.data=FOLDER",
                        root);
            default -> null;
        };
    }
}
