package longrun.ui.frame;

import com.vaadin.flow.server.ErrorHandler;
import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.VaadinServiceInitListener;
import longrun.http.OutOfMemory;
import org.springframework.stereotype.Component;

/** Ends the program where a screen throws because memory has run out; other errors go to the session's error handler. */
@Component
class MemoryWatch implements VaadinServiceInitListener {

    private static final long serialVersionUID = 1L;

    @Override
    public void serviceInit(ServiceInitEvent event) {
        event.getSource().addSessionInitListener(visit -> {
            ErrorHandler before = visit.getSession().getErrorHandler();
            visit.getSession().setErrorHandler(error -> {
                OutOfMemory.end(error.getThrowable());
                before.error(error);
            });
        });
    }
}
