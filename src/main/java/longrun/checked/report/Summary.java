package longrun.checked.report;

import java.util.List;
import java.util.Locale;
import longrun.checked.CheckedCase;
import longrun.checked.SecondWay;
import longrun.checked.doubt.RequirementFromMemory;
import longrun.checked.table.EquationCheck;
import longrun.checked.table.SecondReading;

/** The summary at the head of the report: what was checked, against what, how closely, and what was not. */
final class Summary {

    private Summary() {}

    static List<String> words() {
        return List.of(cases(), tables(), ways(), not());
    }

    private static String cases() {
        List<CheckedCase> all =
                CheckedCase.listAll().stream().flatMap(g -> g.cases().stream()).toList();
        long holding = all.stream().filter(CheckedCase::holds).count();
        long same = all.stream().filter(c -> c.worst() < 1e-9).count();
        long otherSize = all.stream()
                .filter(c -> c.published().isSizes() && c.worst() > 0)
                .count();
        return "Codes, textbooks and makers' sheets publish " + all.size()
                + " worked cases that a plan or a figure of this program can represent. It works out each of them: "
                + (holding == all.size() ? "all" : holding + " of " + all.size())
                + " are within the tolerance of the case, " + same + " of these without any difference."
                + (otherSize == 0
                        ? ""
                        : (otherSize == 1
                                        ? " In one case a size differs"
                                        : " In " + otherSize + " cases a size differs")
                                + " from the print and is the larger; the reason is given there.");
    }

    private static String tables() {
        List<EquationCheck> checks = EquationCheck.listAll();
        int printed = checks.stream().mapToInt(EquationCheck::printed).sum();
        int same = checks.stream().mapToInt(EquationCheck::printedSame).sum();
        List<SecondReading> second = SecondReading.listAll();
        int cells = second.stream().mapToInt(SecondReading::cells).sum();
        int apart = second.stream().mapToInt(s -> s.differing().size()).sum();
        return "In the capacity tables, " + number(same) + " of " + number(printed)
                + " figures read in print agree with the code's own equation to the last digit; the others are one rounding step lower. "
                + number(cells) + " printed figures were keyed a second time: "
                + (apart == 0 ? "none differs." : apart == 1 ? "one differs, a misprint." : apart + " differ.");
    }

    private static String ways() {
        SecondWay engine = SecondWay.get("pipe-network");
        long houses = SecondWay.listAll().stream()
                .filter(w -> w.isRandom() && w != engine)
                .mapToLong(SecondWay::count)
                .sum();
        return "With each build of the program, " + number(houses)
                + " random houses are worked out a second time, by code that was written separately from the text of the"
                + " rules. Both must agree: sizes exactly, and pressures to a millionth of an inch of water. In "
                + number(engine.count())
                + " more houses a general engine for pipe networks finds the same pressures, within "
                + Math.round(engine.within())
                + " % of the pressure lost along the pipe.";
    }

    private static String not() {
        return "Not checked: no built house has been measured and compared with it. "
                + RequirementFromMemory.listAll().size()
                + " requirements of its rules are held from memory, and some figures rest on a single maker; they are listed"
                + " below. Nobody outside the project has reviewed it.";
    }

    static String number(long value) {
        return String.format(Locale.ROOT, "%,d", value);
    }
}
