package longrun.store;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import longrun.store.Outcome.Conflict;
import longrun.store.Outcome.Gone;
import longrun.store.Outcome.Saved;
import org.springframework.stereotype.Component;

/**
 * Stores the drafts of houses. A call that returns has put its change on the disk; a call that throws {@link NotStored}
 * has saved nothing and says why. A draft's text is given back character for character. Every change of a text names the
 * version it was made from, so that two windows on one house never overwrite each other without notice.
 */
@Component
public class DraftStore {

    /** How many steps of a house can be undone at most; older steps are deleted. */
    public static final int UNDO_STEPS = 250;

    private final Houses houses;
    private final Steps steps;
    private final DurableTransactions transactions;
    private final Clock clock;

    DraftStore(Houses houses, Steps steps, DurableTransactions transactions, Clock clock) {
        this.houses = houses;
        this.steps = steps;
        this.transactions = transactions;
        this.clock = clock;
    }

    /** The saved houses that are not deleted, the one changed last first. */
    public List<ListedHouse> list() {
        return transactions.read(() -> listed(houses.findByDeletedIsNullOrderByChangedDescIdDesc()));
    }

    /** The deleted houses, the one deleted last first. */
    public List<ListedHouse> listDeleted() {
        return transactions.read(() -> listed(houses.findByDeletedIsNotNullOrderByDeletedDescIdDesc()));
    }

    /** The house as it stands; empty where there is none or it was deleted. */
    public Optional<Draft> find(long id) {
        return transactions.find(() -> houses.lock(id).map(house -> draft(house, body(id, house.step()))));
    }

    /**
     * Adds a house, from a plan file for example.
     *
     * @throws IllegalArgumentException where the text is not JSON, or the name cannot be kept as typed
     */
    public Draft create(String name, String json) {
        DraftText.requireName(name);
        DraftText.requireJson(json);
        return transactions.change(() -> insert(name, json));
    }

    /**
     * Stores the text as an undo step of its own. Where the same text is stored already, no step is made and the outcome
     * is {@link Saved}, whatever version was expected.
     *
     * @param expectedVersion the version the text was made from
     * @throws IllegalArgumentException where the text is not JSON
     */
    public Outcome save(long id, String json, long expectedVersion) {
        DraftText.requireJson(json);
        return transactions.change(() -> change(id, json, expectedVersion, false));
    }

    /**
     * Stores the text within the current undo step: the further keys in one field, which one undo takes back together.
     * The first key in a field, and the first after an undo, a redo or a reload, is a {@link #save}. After an undo, or
     * where there is no earlier step, this makes a new step as {@code save} does.
     *
     * @param expectedVersion the version the text was made from
     * @throws IllegalArgumentException where the text is not JSON
     */
    public Outcome saveInSameStep(long id, String json, long expectedVersion) {
        DraftText.requireJson(json);
        return transactions.change(() -> change(id, json, expectedVersion, true));
    }

    /** Goes one step back and gives the draft of that step; where there is no earlier step, the draft as it stands. */
    public Outcome undo(long id, long expectedVersion) {
        return transactions.change(() -> moveBy(id, expectedVersion, -1));
    }

    /** Does the last undone step again; where there is none, gives the draft as it stands. */
    public Outcome redo(long id, long expectedVersion) {
        return transactions.change(() -> moveBy(id, expectedVersion, +1));
    }

    /**
     * Renames the house and leaves its text and version alone; false where there is no such house.
     *
     * @throws IllegalArgumentException where the name cannot be kept as typed
     */
    public boolean rename(long id, String name) {
        DraftText.requireName(name);
        return transactions.change(() -> houses.lock(id)
                .map(house -> houses.rename(id, name, house.named(name).checksum()))
                .orElse(false));
    }

    /** Takes the house out of the list but keeps its text and steps; false where there is no such house. */
    public boolean delete(long id) {
        OffsetDateTime when = now();
        return transactions.change(() -> houses.lock(id)
                .map(house -> houses.delete(id, when, house.deletedAt(when).checksum()))
                .orElse(false));
    }

    /** Puts a deleted house back into the list as it was; false where there is no such deleted house. */
    public boolean undelete(long id) {
        return transactions.change(() -> houses.lockDeleted(id)
                .map(house -> houses.undelete(id, house.deletedAt(null).checksum()))
                .orElse(false));
    }

    /**
     * Adds a house, changes it many times and rolls all of it back, so that the code is warm when a person saves for the
     * first time. Nothing is kept and nobody sees it. Where the database fails, a warning is logged.
     *
     * @param json the draft to work with
     * @param changes how many times it is changed
     */
    public void rehearse(String json, int changes) {
        DraftText.requireJson(json);
        try {
            transactions.rehearse(() -> {
                long made = insert("", json).id();
                for (int i = 1; i <= changes; i++) {
                    change(made, json + " ".repeat(1 + i % 3), i, i % 4 != 0);
                }
            });
        } catch (NotStored e) {
            return; // it is logged already, and no house was touched
        }
    }

    private Draft insert(String name, String json) {
        House house = houses.save(House.first(name, now()));
        long id = Objects.requireNonNull(house.id());
        steps.save(Step.of(id, 0, json));
        return draft(house, json);
    }

    private Outcome change(long id, String json, long expected, boolean sameStep) {
        Optional<House> found = houses.lock(id);
        if (found.isEmpty()) {
            return new Gone();
        }
        House house = found.get();
        int step = house.step();
        CurrentStep here = steps.current(id, step);
        if (here.body().equals(json)) {
            return new Saved(draft(house, here.span(), json));
        }
        if (house.version() != expected) {
            return conflict(house);
        }
        int earliest = here.earliest();
        if (!sameStep || step < here.latest() || step == earliest) {
            if (step < here.latest()) {
                steps.deleteAfter(id, step);
            }
            steps.save(Step.of(id, ++step, json));
            if (earliest < step - UNDO_STEPS) {
                earliest = step - UNDO_STEPS;
                steps.deleteBefore(id, earliest);
            }
        } else if (json.equals(here.before())) {
            // Typed and taken back within one step: undoing that would show nothing.
            steps.deleteAfter(id, --step);
        } else {
            steps.replace(id, step, json, Checksum.of(json));
        }
        return storeMove(house, new StepRange(earliest, step), step, json);
    }

    private Outcome moveBy(long id, long expected, int by) {
        Optional<House> found = houses.lock(id);
        if (found.isEmpty()) {
            return new Gone();
        }
        House house = found.get();
        if (house.version() != expected) {
            return conflict(house);
        }
        int step = house.step() + by;
        StepRange span = steps.span(id);
        return step < span.earliest() || step > span.latest()
                ? new Saved(draft(house, span, body(id, house.step())))
                : storeMove(house, span, step, body(id, step));
    }

    private Outcome storeMove(House house, StepRange span, int step, String json) {
        House moved = house.at(step, now());
        houses.move(Objects.requireNonNull(moved.id()), moved.version(), step, moved.changed(), moved.checksum());
        return new Saved(draft(moved, span, json));
    }

    private static Outcome conflict(House house) {
        return new Conflict(house.version(), house.changed().toInstant());
    }

    private Draft draft(House house, String json) {
        return draft(house, steps.span(Objects.requireNonNull(house.id())), json);
    }

    private static Draft draft(House house, StepRange span, String json) {
        return new Draft(
                Objects.requireNonNull(house.id()),
                house.name(),
                json,
                house.version(),
                house.changed().toInstant(),
                house.step() - span.earliest(),
                span.latest() - house.step());
    }

    private static List<ListedHouse> listed(List<House> rows) {
        return rows.stream()
                .map(house -> new ListedHouse(
                        Objects.requireNonNull(house.id()),
                        house.name(),
                        house.version(),
                        house.changed().toInstant()))
                .toList();
    }

    private OffsetDateTime now() {
        // Whole milliseconds, so that the time given after a save is the time read back later.
        return clock.instant().truncatedTo(ChronoUnit.MILLIS).atOffset(ZoneOffset.UTC);
    }

    /** A step's text, compared with its checksum. */
    private String body(long house, int number) {
        StoredText text = steps.text(house, number);
        if (text == null || Checksum.of(text.body()) != text.checksum()) {
            throw new NotStored(
                    "the saved text of that step is damaged; restart Longrun, which then checks the houses");
        }
        return text.body();
    }
}
