package longrun.plan;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

/**
 * Where an entry stands in a plan, step by step: names of entries, and numbers in lists. Written as a JSON pointer,
 * {@code /sections/2/legs}.
 */
public record PlanPath(List<String> steps) {

    public PlanPath {
        steps = List.copyOf(steps);
    }

    /** The place a pointer names; the plan itself where it is blank. */
    public static PlanPath of(String pointer) {
        if (pointer.isEmpty()) {
            return new PlanPath(List.of());
        }
        String[] steps = pointer.substring(1).split("/", -1);
        if (pointer.indexOf('~') >= 0) {
            Arrays.setAll(steps, i -> steps[i].replace("~1", "/").replace("~0", "~"));
        }
        return new PlanPath(List.of(steps));
    }

    public int length() {
        return steps.size();
    }

    /** A step, the first is 0; blank where the path is shorter. */
    public String step(int at) {
        return at < steps.size() ? steps.get(at) : "";
    }

    /** Whether it stands in that part of the plan. */
    public boolean isIn(String part) {
        return step(0).equals(part);
    }

    /** The number in its list of the thing it stands in: 2 of {@code /sections/2/legs}. */
    public OptionalInt findIndex() {
        return findIndex(1);
    }

    /** The number that a step is; empty where it is a name. */
    public OptionalInt findIndex(int at) {
        return isIndex(step(at)) ? OptionalInt.of(Integer.parseInt(step(at))) : OptionalInt.empty();
    }

    /** The entry itself, without the numbers of the lists behind it: {@code legs} of {@code /sections/2/legs/0}. */
    public String entry() {
        int last = steps.size() - 1;
        while (last > 0 && isIndex(steps.get(last))) {
            last--;
        }
        return last < 0 ? "" : steps.get(last);
    }

    /** The entry that holds it: {@code sections} of {@code /sections/2/legs}; blank where the plan itself does. */
    public String holder() {
        int last = steps.size() - 1;
        while (last > 0 && isIndex(steps.get(last))) {
            last--;
        }
        return last < 1 ? "" : new PlanPath(steps.subList(0, last)).entry();
    }

    /** The pointer of the thing of a list it stands in, {@code /sections/2}; blank where it stands in none. */
    public String thing() {
        return findIndex().isPresent() ? "/" + step(0) + "/" + step(1) : "";
    }

    /** Whether a step is a number in a list. */
    public static boolean isIndex(String step) {
        for (int i = 0; i < step.length(); i++) {
            if (step.charAt(i) < '0' || step.charAt(i) > '9') {
                return false;
            }
        }
        return !step.isEmpty() && step.length() < 7;
    }
}
