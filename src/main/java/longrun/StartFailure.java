package longrun;

import longrun.store.StoreTrouble;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.SpringBootExceptionReporter;
import org.springframework.boot.web.server.PortInUseException;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;

/** Says in one line on the console why Longrun did not start, and what to do. */
@Order(Ordered.HIGHEST_PRECEDENCE)
class StartFailure implements SpringBootExceptionReporter {

    private static final Logger LOG = LoggerFactory.getLogger(StartFailure.class);

    @Override
    public boolean reportException(Throwable failure) {
        StoreTrouble trouble = StoreTrouble.in(failure);
        if (trouble != null) {
            LOG.error("{} {}", trouble.what(), trouble.todo());
            return true;
        }
        for (Throwable each = failure; each != null; each = each.getCause()) {
            if (each instanceof PortInUseException port) {
                LOG.error(
                        "Port {} is in use, by another Longrun perhaps: use that one, or stop it, or start this one on"
                                + " another port and with a folder of its own: --server.port=PORT --longrun.data=FOLDER",
                        port.getPort());
                return true;
            }
        }
        return false;
    }
}
