package longrun.ui.run;

import java.util.Map;
import java.util.Optional;
import longrun.draft.run.Line;
import longrun.draft.run.Pipe;
import longrun.draft.run.RunDraft;
import longrun.draft.run.Sizer;
import longrun.ui.frame.Rehearsal;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Types a load longer and shorter by a digit into a run nobody sees, in each material. */
@Component
@Order(1)
class RunRehearsal extends Rehearsal<RunView> {

    private static final int KEYS = 160;

    private final Sizer sizer;

    RunRehearsal(Sizer sizer) {
        super(KEYS);
        this.sizer = sizer;
    }

    @Override
    protected RunView open() {
        RunView opened = new RunView(sizer, run -> 0);
        opened.kept(RunDraft.demo().kept(), Map.of(), Optional.empty());
        return opened;
    }

    @Override
    protected void key(RunView page, int number) {
        page.typed(1, Line.Column.INPUT, number % 2 == 0 ? "19,900 Btu/h" : "199,000 Btu/h");
        if (number % 20 == 0) {
            page.choose(Pipe.values()[number / 20 % Pipe.values().length]);
        }
    }
}
