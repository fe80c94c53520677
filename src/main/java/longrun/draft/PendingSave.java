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

/** Stores a house's text in the background while the page works out its review; one text at a time. */
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

    /** Texts not known to be stored: after a failure the store may hold one of them all the same. */
    private final Set<String> unsure = new LinkedHashSet<>();

    PendingSave(DraftStore store, long house) {
        this.store = store;
        this.house = house;
    }

    /** Begins to store a text that was made from a version. */
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

    /** The store's version where it holds a text whose save seemed to fail, since that is no other tab's change. */
    private long versionOfOwn(Set<String> failed, long version) {
        return store.find(house)
                .filter(d -> failed.contains(d.json()))
                .map(Draft::version)
                .orElse(version);
    }

    /** A supplier that waits for the outcome; empty where no save is under way. */
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

    /** Forgets texts that were in doubt, once one is stored. */
    void forget() {
        unsure.clear();
    }
}
