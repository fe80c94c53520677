package longrun.checked;

import java.util.ArrayList;
import java.util.List;
import longrun.checked.published.CaseGroup;
import longrun.checked.published.PublishedCase;
import longrun.checked.working.Answer;
import longrun.checked.working.Workings;
import longrun.origin.PlainNumber;
import longrun.quantity.Show;

/**
 * A published case with our answer beside it.
 *
 * @param ours our figures as they are shown, one to each published
 * @param worst the largest difference, as the case's tolerance is counted; for sizes how many differ
 * @param holds whether each figure is as near as it must be
 */
public record Checked(PublishedCase published, List<String> ours, double worst, boolean holds) {

    /** All cases about one thing. */
    public record Group(String title, List<Checked> cases) {}

    private static final class Holder {
        static final List<Group> ALL = CaseGroup.listAll().stream()
                .map(g ->
                        new Group(g.title(), g.cases().stream().map(Checked::of).toList()))
                .toList();
    }

    /** Every published case, worked out once by the program as it runs. */
    public static List<Group> listAll() {
        return Holder.ALL;
    }

    /** Works a case out anew. */
    public static Checked of(PublishedCase published) {
        Answer answer = Workings.of(published);
        return published.isSizes() ? bySizes(published, answer.sizes()) : byNumbers(published, answer.numbers());
    }

    private static Checked bySizes(PublishedCase published, List<String> ours) {
        int other = Math.abs(published.published().size() - ours.size());
        for (int i = 0; i < Math.min(ours.size(), published.published().size()); i++) {
            other += ours.get(i).equals(published.published().get(i)) ? 0 : 1;
        }
        return new Checked(published, ours, other, published.within().holds(other));
    }

    private static Checked byNumbers(PublishedCase published, List<Double> ours) {
        if (ours.size() != published.published().size()) {
            throw new IllegalStateException("checked case " + published.id() + ": " + ours.size() + " figures for "
                    + published.published().size());
        }
        double worst = 0;
        boolean known = true;
        List<String> shown = new ArrayList<>();
        for (int i = 0; i < ours.size(); i++) {
            String print = published.published().get(i);
            double should = PlainNumber.parse(print);
            if (Double.isNaN(should)) {
                throw new IllegalStateException("checked case " + published.id() + ": " + print + " is no number");
            }
            double figure = ours.get(i);
            known &= !Double.isNaN(figure);
            worst = Math.max(worst, published.within().difference(should, figure));
            shown.add(Double.isNaN(figure) ? "not known" : Show.decimals(figure, decimals(print) + 1));
        }
        return new Checked(
                published,
                List.copyOf(shown),
                worst,
                known && published.within().holds(worst));
    }

    private static int decimals(String print) {
        int point = print.indexOf('.');
        return point < 0 ? 0 : print.length() - point - 1;
    }

    /** The difference in words. */
    public String differenceWords() {
        if (published.isSizes()) {
            return worst == 0 ? "none" : Show.whole(worst) + (worst == 1 ? " differs" : " differ");
        }
        return published.within().words(worst, published.unit());
    }
}
