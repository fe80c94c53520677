package longrun.parts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What to cut from each length of threaded pipe so that the fewest lengths are bought.
 *
 * @param stockFt the length as bought, feet
 * @param lengths what is cut from each
 * @param couplings where a straight is longer than a length and is made of more than one
 * @param exact whether no other way needs fewer; else the longest piece always went first into the first length with room
 *     for it (first-fit decreasing), which may need more
 */
public record CuttingList(double stockFt, List<Cut> lengths, int couplings, boolean exact) {

    /** Pieces up to which the fewest lengths are searched for. */
    public static final int EXACT_UP_TO = 12;

    /** One length as bought and what is cut from it, longest first. */
    public record Cut(List<Straight> pieces, double restFt) {

        public Cut {
            pieces = List.copyOf(pieces);
        }
    }

    public CuttingList {
        lengths = List.copyOf(lengths);
    }

    /**
     * Cuts straights from lengths. A straight longer than a length takes whole lengths and a rest.
     *
     * @param straights longer than nothing
     * @param stockFt over 0
     */
    public static CuttingList of(List<Straight> straights, double stockFt) {
        long stock = Math.round(stockFt * 1000);
        List<List<Straight>> bins = new ArrayList<>();
        List<Straight> pieces = new ArrayList<>();
        int couplings = 0;
        for (Straight s : straights) {
            long left = s.thousandths();
            for (; left > stock; left -= stock) {
                bins.add(List.of(s.cutTo(stock)));
                couplings++;
            }
            pieces.add(s.cutTo(left));
        }
        pieces.sort(Comparator.comparingLong(Straight::thousandths).reversed());
        boolean exact = pieces.size() <= EXACT_UP_TO;
        bins.addAll(exact ? fewest(pieces, stock) : firstFit(pieces, stock));
        List<Cut> cuts = bins.stream()
                .map(bin -> new Cut(
                        bin,
                        (stock - bin.stream().mapToLong(Straight::thousandths).sum()) / 1000.0))
                .toList();
        return new CuttingList(stockFt, cuts, couplings, exact);
    }

    /** Pieces in the order they come, each into the first length with room for it. */
    private static List<List<Straight>> firstFit(List<Straight> pieces, long stock) {
        List<List<Straight>> bins = new ArrayList<>();
        List<Long> room = new ArrayList<>();
        for (Straight piece : pieces) {
            int k = 0;
            while (k < bins.size() && room.get(k) < piece.thousandths()) {
                k++;
            }
            if (k == bins.size()) {
                bins.add(new ArrayList<>());
                room.add(stock);
            }
            bins.get(k).add(piece);
            room.set(k, room.get(k) - piece.thousandths());
        }
        return bins;
    }

    /**
     * Over all sets of pieces: the fewest lengths a set needs, and of those the least used up of the last one. A set is
     * reached from each set with one piece less, so every order of cutting is looked at.
     */
    private static List<List<Straight>> fewest(List<Straight> pieces, long stock) {
        int n = pieces.size();
        int[] bins = new int[1 << n];
        long[] used = new long[1 << n];
        int[] last = new int[1 << n];
        used[0] = stock;
        for (int set = 1; set < bins.length; set++) {
            bins[set] = Integer.MAX_VALUE;
            for (int p = 0; p < n; p++) {
                if ((set & 1 << p) == 0) {
                    continue;
                }
                int before = set & ~(1 << p);
                long length = pieces.get(p).thousandths();
                boolean fits = used[before] + length <= stock;
                int needs = bins[before] + (fits ? 0 : 1);
                long fill = fits ? used[before] + length : length;
                if (needs < bins[set] || needs == bins[set] && fill < used[set]) {
                    bins[set] = needs;
                    used[set] = fill;
                    last[set] = p;
                }
            }
        }
        return cut(pieces, bins, last);
    }

    private static List<List<Straight>> cut(List<Straight> pieces, int[] bins, int[] last) {
        List<List<Straight>> out = new ArrayList<>();
        List<Straight> bin = new ArrayList<>();
        for (int set = bins.length - 1; set > 0; ) {
            bin.add(pieces.get(last[set]));
            int before = set & ~(1 << last[set]);
            if (bins[before] < bins[set]) {
                bin.sort(Comparator.comparingLong(Straight::thousandths).reversed());
                out.add(0, bin);
                bin = new ArrayList<>();
            }
            set = before;
        }
        return out;
    }

    /** Feet left over of all lengths. */
    public double restFt() {
        return lengths.stream().mapToDouble(Cut::restFt).sum();
    }
}
