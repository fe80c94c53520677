package longrun.ui.run;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.internal.ConstantPool;
import com.vaadin.flow.internal.StateTree;
import java.util.Map;
import java.util.Optional;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * Types into a run nobody sees, once the program has started: the first key of a person is then answered as quickly as
 * the later ones.
 */
@Component
class WarmUp {

    private static final int KEYS = 240;

    private final Sizer sizer;

    WarmUp(Sizer sizer) {
        this.sizer = sizer;
    }

    @EventListener(ApplicationReadyEvent.class)
    void begin() {
        Thread warming = new Thread(this::type, "warm-up");
        warming.setDaemon(true);
        warming.setPriority(Thread.MIN_PRIORITY);
        warming.start();
    }

    /** Types a load longer and shorter by a digit, in each material, and has the page's changes written out. */
    void type() {
        RunView page = new RunView(sizer, run -> 0);
        UI ui = new UI();
        ui.add(page);
        StateTree tree = ui.getInternals().getStateTree();
        page.kept(RunDraft.demo().kept(), Map.of(), Optional.empty());
        for (int i = 0; i < KEYS; i++) {
            page.typed(1, Line.Column.INPUT, i % 2 == 0 ? "19,900 Btu/h" : "199,000 Btu/h");
            if (i % 20 == 0) {
                page.choose(Pipe.values()[i / 20 % Pipe.values().length]);
            }
            tree.collectChanges(change -> change.toJson(new ConstantPool()));
        }
    }
}
