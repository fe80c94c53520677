package longrun.ui.frame;

import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.annotation.AnnotationAwareOrderComparator;
import org.springframework.stereotype.Component;

/** Runs every rehearsal in the background once the program has started. */
@Component
class WarmUp {

    /** Once for each Java process, however often the program starts in it. */
    private static final AtomicBoolean BEGUN = new AtomicBoolean();

    private final List<Rehearsal<?>> rehearsals;

    WarmUp(List<Rehearsal<?>> rehearsals) {
        this.rehearsals = rehearsals.stream()
                .sorted(AnnotationAwareOrderComparator.INSTANCE)
                .toList();
    }

    @EventListener(ApplicationReadyEvent.class)
    void begin() {
        if (BEGUN.getAndSet(true)) {
            return;
        }
        Thread warming = new Thread(() -> rehearsals.forEach(Rehearsal::run), "warm-up");
        warming.setDaemon(true);
        warming.setPriority(Thread.MIN_PRIORITY);
        warming.start();
    }
}
