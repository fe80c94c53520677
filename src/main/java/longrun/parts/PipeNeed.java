package longrun.parts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import longrun.plan.choice.Material;
import longrun.quantity.Length;
import longrun.quantity.Show;

/**
 * Pipe of one kind and size.
 *
 * @param item what it is called at the counter
 * @param size as a person reads it
 * @param sections ids of the sections it is for
 * @param measuredFt the sum of their legs; empty where a section's legs are not entered
 * @param toBuyFt with the waste share
 * @param longestPieceFt the longest section, which tube should reach without a joint; empty where pieces are threaded
 * @param stockFt the length it is bought in, where it comes in lengths
 * @param lengths how many of them: as many as the cutting list needs, and no fewer than the waste share asks for
 * @param cutting what to cut from them, for each length it comes in, the usual first
 * @param basis how the figures came about
 * @param price a foot and in all, where the plan has a price
 */
public record PipeNeed(
        String item,
        String size,
        List<String> sections,
        OptionalDouble measuredFt,
        OptionalDouble toBuyFt,
        OptionalDouble longestPieceFt,
        OptionalDouble stockFt,
        OptionalInt lengths,
        List<CuttingList> cutting,
        String basis,
        Optional<Price> price) {

    public PipeNeed {
        sections = List.copyOf(sections);
        cutting = List.copyOf(cutting);
    }

    /** Money, in whatever the prices were entered in. */
    public record Price(double aFoot, OptionalDouble inAll) {}

    /** Pipe for every section whose pipe is not in place, by kind and size in the plan's order. */
    static List<PipeNeed> of(Bought bought) {
        Map<String, List<Integer>> groups = new LinkedHashMap<>();
        bought.sections()
                .forEach(s -> groups.computeIfAbsent(bought.key(s), k -> new ArrayList<>())
                        .add(s));
        Map<String, List<Straight>> straights = Straights.of(bought);
        List<PipeNeed> out = new ArrayList<>();
        groups.forEach((key, sections) -> out.add(of(bought, sections, straights.getOrDefault(key, List.of()))));
        return out;
    }

    private static PipeNeed of(Bought bought, List<Integer> sections, List<Straight> straights) {
        int first = sections.get(0);
        Optional<StockForm> form = bought.material(first).map(StockForm::of);
        double feet = 0;
        double longest = 0;
        List<String> without = new ArrayList<>();
        List<String> terms = new ArrayList<>();
        List<String> doubts = new ArrayList<>();
        for (int s : sections) {
            Optional<Length> own = bought.piping().measured(s);
            if (own.isEmpty()) {
                without.add(bought.id(s));
            } else {
                double here = own.get().feet();
                feet += here;
                longest = Math.max(longest, here);
                terms.add(bought.id(s) + " " + Show.plain(here));
            }
            doubts.addAll(bought.doubts(s));
            if (bought.piping().section(s).rough().is(true)) {
                doubts.add(bought.id(s) + ": rough, measure before cutting");
            }
        }
        OptionalDouble measured = without.isEmpty() ? OptionalDouble.of(feet) : OptionalDouble.empty();
        double share = form.map(StockForm::wasteShare).orElse(0.0);
        OptionalDouble toBuy = without.isEmpty() && form.isPresent()
                ? OptionalDouble.of(Math.round(feet * (1 + share) * 1000) / 1000.0)
                : OptionalDouble.empty();
        boolean cut = without.isEmpty() && !straights.isEmpty();
        List<CuttingList> cutting = !cut
                ? List.of()
                : form.orElseThrow().lengthsFt().stream()
                        .map(length -> CuttingList.of(straights, length))
                        .toList();
        OptionalInt lengths = cutting.isEmpty()
                ? OptionalInt.empty()
                : OptionalInt.of(Math.max(cutting.get(0).lengths().size(), (int)
                        Math.ceil(toBuy.orElse(0) / cutting.get(0).stockFt() - 1e-9)));
        OptionalDouble stock = cutting.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(cutting.get(0).stockFt());
        boolean threaded =
                bought.material(first).filter(m -> m == Material.STEEL).isPresent();
        OptionalDouble charged = lengths.isPresent() ? OptionalDouble.of(lengths.getAsInt() * stock.orElse(0)) : toBuy;
        return new PipeNeed(
                bought.named(first),
                bought.shown(first),
                sections.stream().map(bought::id).toList(),
                measured,
                toBuy,
                threaded || !without.isEmpty() || longest == 0 ? OptionalDouble.empty() : OptionalDouble.of(longest),
                stock,
                lengths,
                cutting,
                basis(terms, without, form, doubts),
                Prices.find(bought.piping().plan(), bought.material(first), bought.size(first))
                        .map(p -> new Price(
                                p,
                                charged.isPresent()
                                        ? OptionalDouble.of(p * charged.getAsDouble())
                                        : OptionalDouble.empty())));
    }

    private static String basis(
            List<String> terms, List<String> without, Optional<StockForm> form, List<String> doubts) {
        List<String> said = new ArrayList<>();
        if (!terms.isEmpty()) {
            said.add(String.join(" + ", terms) + " ft");
        }
        form.filter(f -> !terms.isEmpty())
                .ifPresent(f -> said.add(Show.plain(f.wasteShare() * 100) + " % for waste, common practice"));
        if (!without.isEmpty()) {
            said.add("legs not entered: " + String.join(", ", without));
        }
        said.addAll(doubts);
        return String.join("; ", said);
    }
}
