package longrun.ui.frame;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.annotation.AnnotationAwareOrderComparator;
import org.springframework.stereotype.Component;

/** Runs every rehearsal in the background, a moment after the program has started: the first page has the machine first. */
@Component
class WarmUp {

    /** Once for each Java process, however often the program starts in it. */
    private static final AtomicBoolean BEGUN = new AtomicBoolean();

    private static final long MOMENT_SECONDS = 3;

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
        Executor later = CompletableFuture.delayedExecutor(MOMENT_SECONDS, TimeUnit.SECONDS, work -> {
            Thread warming = new Thread(work, "warm-up");
            warming.setDaemon(true);
            warming.setPriority(Thread.MIN_PRIORITY);
            warming.start();
        });
        later.execute(() -> rehearsals.forEach(Rehearsal::run));
    }
}
