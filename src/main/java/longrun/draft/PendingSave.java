package longrun.draft;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Supplier;
import longrun.store.Draft;
import longrun.store.DraftStore;
import longrun.store.Outcome;
import org.jspecify.annotations.Nullable;

/** A house's text on its way into the store, while the page works out its answer; one at a time. */
final class PendingSave {

    private static final ExecutorService STORING = Executors.newCachedThreadPool(task -> {
        Thread thread = new Thread(task, "storing");
        thread.setDaemon(true);
        return thread;
    });

    private static final int MOST_UNSURE = 50;

    private final DraftStore store;
    private final long house;
    private @Nullable Future<Outcome> underWay;

    /** Texts whose storing failed: the store may have one of them all the same. */
    private final Set<String> unsure = new LinkedHashSet<>();

    PendingSave(DraftStore store, long house) {
        this.store = store;
        this.house = house;
    }

    /** Begins to store a text over a version. */
    void begin(String text, long version, boolean sameStep) {
        Set<String> failed = Set.copyOf(unsure);
        if (unsure.size() == MOST_UNSURE) {
            unsure.remove(unsure.iterator().next());
        }
        unsure.add(text);
        underWay = STORING.submit(() -> {
            long from = failed.isEmpty() ? version : versionOfOwn(failed, version);
            return sameStep ? store.saveInSameStep(house, text, from) : store.save(house, text, from);
        });
    }

    /** What was told as not stored may be: then it is nobody else's change. */
    private long versionOfOwn(Set<String> failed, long version) {
        return store.find(house)
                .filter(d -> failed.contains(d.json()))
                .map(Draft::version)
                .orElse(version);
    }

    /** How the storing ends, which whoever asks waits for; empty where none is under way. */
    Optional<Supplier<Outcome>> end() {
        Future<Outcome> ending = underWay;
        underWay = null;
        return Optional.ofNullable(ending).map(e -> () -> outcome(e));
    }

    private static Outcome outcome(Future<Outcome> ending) {
        try {
            return ending.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException why) {
                throw why;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the page was closed while storing", e);
        }
    }

    /** A text is stored: no other is in doubt. */
    void forget() {
        unsure.clear();
    }
}
