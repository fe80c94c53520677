package longrun.checked.report;

import java.util.List;
import java.util.Locale;
import longrun.checked.Checked;
import longrun.checked.SecondWay;
import longrun.checked.doubt.MemoryRule;
import longrun.checked.table.EquationCheck;
import longrun.checked.table.SecondReading;

/** The answer in short: what was checked, against what, how closely, and what was not. */
final class Lead {

    private Lead() {}

    static List<String> words() {
        return List.of(cases(), tables(), ways(), not());
    }

    private static String cases() {
        List<Checked> all =
                Checked.listAll().stream().flatMap(g -> g.cases().stream()).toList();
        long holding = all.stream().filter(Checked::holds).count();
        long same = all.stream().filter(c -> c.worst() < 1e-9).count();
        long otherSize = all.stream()
                .filter(c -> c.published().isSizes() && c.worst() > 0)
                .count();
        return "In codes, textbooks and makers' papers others have published " + all.size()
                + " cases that a plan or a figure of this program can hold. It works each of them out: "
                + (holding == all.size() ? "all" : holding + " of " + all.size())
                + " come as near as the case allows, " + same + " of these without any difference."
                + (otherSize == 0
                        ? ""
                        : (otherSize == 1 ? " In one a size" : " In " + otherSize + " a size")
                                + " is another than printed, the larger; why is told there.");
    }

    private static String tables() {
        List<EquationCheck> checks = EquationCheck.listAll();
        int printed = checks.stream().mapToInt(EquationCheck::printed).sum();
        int same = checks.stream().mapToInt(EquationCheck::printedSame).sum();
        List<SecondReading> second = SecondReading.listAll();
        int cells = second.stream().mapToInt(SecondReading::cells).sum();
        int apart = second.stream().mapToInt(s -> s.apart().size()).sum();
        return "Of the capacity tables, " + number(same) + " of " + number(printed)
                + " figures read in print are the code's own equation to the last digit, the others one step of it lower. "
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
                + " random houses are worked out a second time, by code written apart from the first from the texts of the"
                + " rules; both must say the same, sizes to the letter and pressures to a millionth of an inch. In "
                + number(engine.count())
                + " more a general engine for pipe networks finds the same pressures, within "
                + Math.round(engine.within())
                + " % of what is lost on the way.";
    }

    private static String not() {
        return "Not checked: no house that stands was measured against it. "
                + MemoryRule.listAll().size()
                + " requirements of its rules are held from memory, and some figures rest on one maker; they are named"
                + " below. Nobody outside has reviewed it.";
    }

    static String number(long value) {
        return String.format(Locale.ROOT, "%,d", value);
    }
}
