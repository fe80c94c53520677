package longrun.ui.fill;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import longrun.draft.fill.FillDraft;
import longrun.draft.fill.FillEntry;
import longrun.draft.fill.FuelUse;
import longrun.ui.frame.Rehearsal;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Types a gauge and a use longer and shorter by a digit into a page nobody sees. */
@Component
@Order(3)
class FillRehearsal extends Rehearsal<FillView> {

    private static final int KEYS = 60;

    private final FillReviewer reviewer;

    FillRehearsal(FillReviewer reviewer) {
        super(KEYS);
        this.reviewer = reviewer;
    }

    @Override
    protected FillView open() {
        FillView opened = new FillView(reviewer, plan -> 0);
        opened.kept(FillDraft.demo(LocalDate.of(2026, 10, 1)).kept(), Map.of(), Optional.empty());
        return opened;
    }

    @Override
    protected void key(FillView page, int number) {
        page.hand().typed(FillEntry.GAUGE, number % 2 == 0 ? "6" : "62");
        page.hand().typed(0, FuelUse.Column.AMOUNT, number % 2 == 0 ? "3,800" : "38,000");
    }
}
