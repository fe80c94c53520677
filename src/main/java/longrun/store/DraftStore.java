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
 * Keeps the drafts of houses. A call that returns has put its change on the disk; one that throws {@link NotStored} has
 * stored nothing that may be called saved, and says why. A draft's text is given back character for character. Every change of a text names the
 * version it was made from, so two who work on one house never overwrite one another unawares.
 */
@Component
public class DraftStore {

    /** How many steps of a house can be undone at most; older ones are let go. */
    public static final int UNDO_STEPS = 250;

    private final Houses houses;
    private final Steps steps;
    private final Durably durably;
    private final Clock clock;

    DraftStore(Houses houses, Steps steps, Durably durably, Clock clock) {
        this.houses = houses;
        this.steps = steps;
        this.durably = durably;
        this.clock = clock;
    }

    /** The houses kept, the one changed last first. */
    public List<ListedHouse> list() {
        return durably.read(() -> listed(houses.findByDeletedIsNullOrderByChangedDescIdDesc()));
    }

    /** The houses deleted, the one deleted last first. */
    public List<ListedHouse> listDeleted() {
        return durably.read(() -> listed(houses.findByDeletedIsNotNullOrderByDeletedDescIdDesc()));
    }

    /** The house as it stands; empty where there is none or it was deleted. */
    public Optional<Draft> find(long id) {
        return durably.find(() -> houses.hold(id).map(house -> draft(house, body(id, house.step()))));
    }

    /**
     * Adds a house, from a plan file for example.
     *
     * @throws IllegalArgumentException where the text is not JSON, or the name cannot be kept as typed
     */
    public Draft create(String name, String json) {
        DraftText.requireName(name);
        DraftText.requireJson(json);
        return durably.change(() -> insert(name, json));
    }

    /**
     * Stores the text as a step of its own. A text that is stored already makes no step and is Saved, whatever version
     * was expected.
     *
     * @throws IllegalArgumentException where the text is not JSON
     */
    public Outcome save(long id, String json, long expectedVersion) {
        DraftText.requireJson(json);
        return durably.change(() -> change(id, json, expectedVersion, false));
    }

    /**
     * Stores the text as more of the step before: the further keys in one field, which one undo takes back together. The
     * first key in a field, and the first after an undo, a redo or a reload, is a {@link #save}. Where a step follows
     * that was undone, or none goes before, this makes a step as save does.
     *
     * @throws IllegalArgumentException where the text is not JSON
     */
    public Outcome saveOn(long id, String json, long expectedVersion) {
        DraftText.requireJson(json);
        return durably.change(() -> change(id, json, expectedVersion, true));
    }

    /** Goes one step back and gives the draft as it was there; where there is none, the draft as it stands. */
    public Outcome undo(long id, long expectedVersion) {
        return durably.change(() -> walk(id, expectedVersion, -1));
    }

    /** Does the last undone step again; where there is none, gives the draft as it stands. */
    public Outcome redo(long id, long expectedVersion) {
        return durably.change(() -> walk(id, expectedVersion, +1));
    }

    /**
     * Names the house anew, its text and version left alone; false where there is no such house.
     *
     * @throws IllegalArgumentException where the name cannot be kept as typed
     */
    public boolean rename(long id, String name) {
        DraftText.requireName(name);
        return durably.change(() -> houses.hold(id)
                .map(house -> houses.rename(id, name, house.named(name).mark()))
                .orElse(false));
    }

    /** Takes the house out of the list, text and steps kept; false where there is no such house. */
    public boolean delete(long id) {
        OffsetDateTime when = now();
        return durably.change(() -> houses.hold(id)
                .map(house -> houses.delete(id, when, house.deletedAt(when).mark()))
                .orElse(false));
    }

    /** Puts a deleted house back as it was; false where there is no such deleted house. */
    public boolean undelete(long id) {
        return durably.change(() -> houses.holdDeleted(id)
                .map(house -> houses.undelete(id, house.deletedAt(null).mark()))
                .orElse(false));
    }

    /**
     * Does all that adding a house and changing it many times does, then takes it back: nothing is kept, nobody sees it,
     * and the next who saves finds the way cleared. Where the store fails, that is told on the console.
     */
    public void rehearse(String json, int changes) {
        DraftText.requireJson(json);
        try {
            durably.rehearse(() -> {
                long made = insert("", json).id();
                for (int i = 1; i <= changes; i++) {
                    change(made, json + " ".repeat(1 + i % 3), i, i % 4 != 0);
                }
            });
        } catch (NotStored e) {
            return; // it is said, and nothing of anyone is lost
        }
    }

    private Draft insert(String name, String json) {
        House house = houses.save(House.first(name, now()));
        long id = Objects.requireNonNull(house.id());
        steps.save(Step.of(id, 0, json));
        return draft(house, json);
    }

    private Outcome change(long id, String json, long expected, boolean sameStep) {
        Optional<House> found = houses.hold(id);
        if (found.isEmpty()) {
            return new Gone();
        }
        House house = found.get();
        int step = house.step();
        StandsAt here = steps.standsAt(id, step);
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
            steps.replace(id, step, json, Sum.of(json));
        }
        return moved(house, new Span(earliest, step), step, json);
    }

    private Outcome walk(long id, long expected, int by) {
        Optional<House> found = houses.hold(id);
        if (found.isEmpty()) {
            return new Gone();
        }
        House house = found.get();
        if (house.version() != expected) {
            return conflict(house);
        }
        int step = house.step() + by;
        Span span = steps.span(id);
        return step < span.earliest() || step > span.latest()
                ? new Saved(draft(house, span, body(id, house.step())))
                : moved(house, span, step, body(id, step));
    }

    private Outcome moved(House house, Span span, int step, String json) {
        House moved = house.at(step, now());
        houses.move(Objects.requireNonNull(moved.id()), moved.version(), step, moved.changed(), moved.mark());
        return new Saved(draft(moved, span, json));
    }

    private static Outcome conflict(House house) {
        return new Conflict(house.version(), house.changed().toInstant());
    }

    private Draft draft(House house, String json) {
        return draft(house, steps.span(Objects.requireNonNull(house.id())), json);
    }

    private static Draft draft(House house, Span span, String json) {
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
        // Whole milliseconds, so that what is told after a save is what is read back later.
        return clock.instant().truncatedTo(ChronoUnit.MILLIS).atOffset(ZoneOffset.UTC);
    }

    /** A step's text, held against its sum. */
    private String body(long house, int number) {
        StoredText text = steps.text(house, number);
        if (text == null || Sum.of(text.body()) != text.mark()) {
            throw new NotStored(
                    "the text kept of that step is damaged; start Longrun again and the house is looked through");
        }
        return text.body();
    }
}
