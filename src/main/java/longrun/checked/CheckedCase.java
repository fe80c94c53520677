package longrun.checked;

import java.util.ArrayList;
import java.util.List;
import longrun.checked.published.CaseGroup;
import longrun.checked.published.PublishedCase;
import longrun.checked.working.Answer;
import longrun.checked.working.Computations;
import longrun.origin.PlainNumber;
import longrun.quantity.Show;

/**
 * A published case and the program's answer to it.
 *
 * @param ours the program's figures as shown, one for each published figure
 * @param worst the largest difference, in the unit of the case's tolerance; for sizes the number that differ
 * @param holds whether every figure is within the tolerance
 */
public record CheckedCase(PublishedCase published, List<String> ours, double worst, boolean holds) {

    /** All cases on one subject. */
    public record Group(String title, List<CheckedCase> cases) {}

    private static final class Holder {
        static final List<Group> ALL = CaseGroup.listAll().stream()
                .map(g -> new Group(
                        g.title(), g.cases().stream().map(CheckedCase::of).toList()))
                .toList();
    }

    /** Every published case, worked out once by the running program. */
    public static List<Group> listAll() {
        return Holder.ALL;
    }

    /**
     * Works out a case.
     *
     * @throws IllegalStateException where the number of figures differs or a published figure is not a number
     */
    public static CheckedCase of(PublishedCase published) {
        Answer answer = Computations.of(published);
        return published.isSizes() ? bySizes(published, answer.sizes()) : byNumbers(published, answer.numbers());
    }

    private static CheckedCase bySizes(PublishedCase published, List<String> ours) {
        int other = Math.abs(published.published().size() - ours.size());
        for (int i = 0; i < Math.min(ours.size(), published.published().size()); i++) {
            other += ours.get(i).equals(published.published().get(i)) ? 0 : 1;
        }
        return new CheckedCase(published, ours, other, published.tolerance().holds(other));
    }

    private static CheckedCase byNumbers(PublishedCase published, List<Double> ours) {
        if (ours.size() != published.published().size()) {
            throw new IllegalStateException("checked case " + published.id() + ": " + ours.size() + " figures for "
                    + published.published().size() + " published");
        }
        double worst = 0;
        boolean known = true;
        List<String> shown = new ArrayList<>();
        for (int i = 0; i < ours.size(); i++) {
            String print = published.published().get(i);
            double expected = PlainNumber.parse(print);
            if (Double.isNaN(expected)) {
                throw new IllegalStateException("checked case " + published.id() + ": " + print + " is not a number");
            }
            double figure = ours.get(i);
            known &= !Double.isNaN(figure);
            worst = Math.max(worst, published.tolerance().difference(expected, figure));
            shown.add(Double.isNaN(figure) ? "not known" : Show.decimals(figure, decimals(print) + 1));
        }
        return new CheckedCase(
                published,
                List.copyOf(shown),
                worst,
                known && published.tolerance().holds(worst));
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
        return published.tolerance().words(worst, published.unit());
    }
}
