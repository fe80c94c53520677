package longrun.ui.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.draft.NotAPlan;
import longrun.draft.PlanFiles;
import longrun.draft.RunToHouse;
import longrun.draft.demo.DemoHouse;
import longrun.draft.entry.DraftEdit;
import longrun.draft.entry.DraftValue;
import longrun.draft.run.HouseMaker;
import longrun.paper.file.HeldPlan;
import longrun.store.Draft;
import longrun.store.DraftStore;
import longrun.store.ListedHouse;
import longrun.store.Outcome;
import org.springframework.stereotype.Component;

/** The houses as a list: begun, opened from a file, copied, renamed, deleted and brought back. */
@Component
public class HouseShelf implements HouseMaker {

    private static final String NAME = "/name";

    private final DraftStore store;

    HouseShelf(DraftStore store) {
        this.store = store;
    }

    public List<ListedHouse> list() {
        return store.list();
    }

    /** The houses deleted, the last first; each can be brought back. */
    List<ListedHouse> listDeleted() {
        return store.listDeleted();
    }

    /** Begins an empty house. */
    public long begin() {
        DraftEdit plan = DraftEdit.begin();
        plan.put("/fittingAllowance", "counted");
        return store.create("", plan.whole().toString()).id();
    }

    @Override
    public long store(DraftValue run) {
        return add(RunToHouse.house(run));
    }

    private long add(DraftValue plan) {
        return store.create(plan.at(NAME).text(), plan.toString()).id();
    }

    /** Opens a plan file; entries that are wrong stay as they are written, and its place says so. */
    long open(String text) throws NotAPlan {
        DraftValue plan = PlanFiles.read(text);
        try {
            return add(plan);
        } catch (IllegalArgumentException e) {
            throw new NotAPlan(String.valueOf(e.getMessage()));
        }
    }

    /** What came of a zip of plan files: how many were opened, and what is said of the others. */
    public record Opened(int houses, List<String> refused) {}

    /** Opens every plan file in a zip, the ones that are none told by name. */
    public Opened openZip(byte[] zip) throws NotAPlan {
        List<PlanFiles.PlanFile> files;
        try {
            files = PlanFiles.unzip(zip);
        } catch (PlanFiles.NotAZip e) {
            throw new NotAPlan(String.valueOf(e.getMessage()));
        }
        int houses = 0;
        List<String> refused = new ArrayList<>();
        // The first in the list of houses is the one opened last.
        for (int i = files.size() - 1; i >= 0; i--) {
            try {
                open(files.get(i).text());
                houses++;
            } catch (NotAPlan e) {
                refused.add(files.get(i).name() + " was not opened: " + e.getMessage());
            }
        }
        return new Opened(houses, refused);
    }

    /** Opens the house whose plan lies in a PDF of ours. */
    public long openPdf(byte[] pdf) throws NotAPlan {
        return open(HeldPlan.find(pdf)
                .orElseThrow(() -> new NotAPlan("no plan lies in it: papers printed by this program hold theirs, if no"
                        + " other program has written them anew")));
    }

    /** A house's plan file, character for character as it is stored; empty where it is gone. */
    public Optional<PlanFiles.PlanFile> planFile(long id) {
        return store.find(id).map(d -> new PlanFiles.PlanFile(PlanFiles.fileName(d.name()), d.json()));
    }

    /** The plan files of all houses in the list. */
    public List<PlanFiles.PlanFile> planFiles() {
        return store.list().stream().flatMap(h -> planFile(h.id()).stream()).toList();
    }

    /** The demo house, an invented one with some facts unknown: the one in the list, as long as nobody changed it. */
    public long demo() {
        try {
            DraftValue plan = PlanFiles.read(DemoHouse.json());
            return store.list().stream()
                    .filter(h -> h.name().equals(DemoHouse.NAME))
                    .map(ListedHouse::id)
                    .filter(id -> store.find(id)
                            .filter(d -> d.json().equals(plan.toString()))
                            .isPresent())
                    .findFirst()
                    .orElseGet(() -> add(plan));
        } catch (NotAPlan e) {
            throw new IllegalStateException(e);
        }
    }

    /** Copies a house as it stands. */
    void duplicate(long id) {
        store.find(id).ifPresent(d -> {
            DraftEdit plan = DraftEdit.stored(d.json());
            String name = plan.at(NAME).text();
            plan.put(NAME, name.isBlank() ? "Copy" : name + " (copy)");
            add(plan.whole());
        });
    }

    /** Names a house; false where another tab changed it at the same moment, or it is gone. */
    public boolean rename(long id, String name) {
        Draft draft = store.find(id).orElse(null);
        if (draft == null) {
            return false;
        }
        DraftEdit plan = DraftEdit.stored(draft.json());
        if (name.isBlank()) {
            plan.remove(NAME);
        } else {
            plan.put(NAME, name);
        }
        if (store.save(id, plan.whole().toString(), draft.version()) instanceof Outcome.Saved) {
            return store.rename(id, name);
        }
        return false;
    }

    public boolean delete(long id) {
        return store.delete(id);
    }

    boolean bringBack(long id) {
        return store.undelete(id);
    }
}
