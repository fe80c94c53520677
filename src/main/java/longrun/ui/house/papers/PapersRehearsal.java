package longrun.ui.house.papers;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import java.time.LocalDate;
import longrun.draft.demo.DemoHouse;
import longrun.paper.Papers;
import longrun.paper.page.PaperSize;
import longrun.paper.page.Printing;
import longrun.plan.json.PlanReader;
import longrun.review.Review;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import longrun.ui.frame.Rehearsal;
import org.jspecify.annotations.Nullable;
import org.springframework.core.annotation.Order;

/** Prints the demo house's first sheet and draws its route, so that the first large drawing asked for is not a cold one. */
@org.springframework.stereotype.Component
@Order(9)
class PapersRehearsal extends Rehearsal<Component> {

    private static final int DRAWINGS = 30;

    private @Nullable Review demo;

    PapersRehearsal() {
        super(DRAWINGS);
    }

    @Override
    protected Component open() {
        Review review = Reviewer.standard()
                .review(PlanReader.read(DemoHouse.json()).plan().orElseThrow(), ReviewParts.ALL);
        demo = review;
        Papers.findPdf("supplier", new Printing(review, DemoHouse.json(), LocalDate.EPOCH, PaperSize.LETTER));
        return new Div();
    }

    @Override
    protected void key(Component page, int number) {
        if (demo != null) {
            Papers.drawing(demo);
        }
    }
}
