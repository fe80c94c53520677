package longrun.ui.checked;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.stream.Stream;
import longrun.checked.published.CaseGroup;
import longrun.checked.report.Report;
import longrun.ui.Shown;
import longrun.ui.frame.WhereFrom;
import longrun.words.CautionWords;
import org.junit.jupiter.api.Test;

/** The page that tells what was checked, and the ways to it. */
class CheckedViewTest {

    private static Stream<Element> all(Element in) {
        return Stream.concat(Stream.of(in), in.getChildren().flatMap(CheckedViewTest::all));
    }

    private static List<String> links(Element in) {
        return all(in).filter(e -> !e.isTextNode() && e.hasAttribute("href"))
                .map(e -> e.getAttribute("href"))
                .toList();
    }

    @Test
    void thePageAnswersInShortAndShowsEachCase() {
        Element page = new CheckedView().getElement();
        String text = Shown.text(page);
        assertThat(text).contains(Report.live().lead()).contains(CautionWords.CARE);
        CaseGroup.listAll().stream()
                .flatMap(g -> g.cases().stream())
                .forEach(c -> assertThat(text).contains(c.title(), c.source()));
        Report.live().parts().forEach(p -> assertThat(links(page)).contains("checked#" + p.id()));
    }

    @Test
    void eachAnswerToWhereFromLeadsThere() {
        WhereFrom from = new WhereFrom("a");
        from.show(List.of(new WhereFrom.Step("Why 3/4 in.", "the row of 60 ft", List.of())));
        from.open(true);
        assertThat(Shown.text(from.list())).contains("the row of 60 ft", "what it was checked against");
    }
}
