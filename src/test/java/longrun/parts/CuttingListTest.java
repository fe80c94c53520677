package longrun.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The fewest lengths of pipe to cut a list of pieces from, against a search through every way of cutting. */
class CuttingListTest {

    private static List<Straight> pieces(double... feet) {
        List<Straight> out = new ArrayList<>();
        for (int i = 0; i < feet.length; i++) {
            out.add(new Straight(Math.round(feet[i] * 1000), "S" + i, true));
        }
        return out;
    }

    /** Every piece into every length there is and into a new one: nothing is left out. */
    private static int bruteForce(long[] pieces, int next, List<Long> room, long stock, int best) {
        if (room.size() >= best) {
            return best;
        }
        if (next == pieces.length) {
            return room.size();
        }
        int found = best;
        for (int k = 0; k < room.size(); k++) {
            if (room.get(k) >= pieces[next]) {
                room.set(k, room.get(k) - pieces[next]);
                found = bruteForce(pieces, next + 1, room, stock, found);
                room.set(k, room.get(k) + pieces[next]);
            }
        }
        room.add(stock - pieces[next]);
        found = bruteForce(pieces, next + 1, room, stock, found);
        room.remove(room.size() - 1);
        return found;
    }

    /** Every piece is cut once, whole, and no length gives more than it has. */
    private static void assertCutWhole(CuttingList list, List<Straight> pieces) {
        long cut = 0;
        for (CuttingList.Cut length : list.lengths()) {
            double used = length.pieces().stream().mapToDouble(Straight::feet).sum();
            assertThat(used).isLessThanOrEqualTo(list.stockFt() + 1e-9);
            assertThat(length.restFt()).isEqualTo(list.stockFt() - used, org.assertj.core.data.Offset.offset(1e-9));
            cut += length.pieces().stream().mapToLong(Straight::thousandths).sum();
        }
        assertThat(cut)
                .isEqualTo(pieces.stream().mapToLong(Straight::thousandths).sum());
    }

    @Test
    void upToTwelvePiecesNoOtherWayOfCuttingNeedsFewerLengths() {
        for (long seed = 1; seed <= 150; seed++) {
            Random random = new Random(seed);
            int n = 1 + random.nextInt(9);
            double[] feet =
                    random.doubles(n, 1, 20).map(f -> Math.rint(f * 4) / 4).toArray();
            List<Straight> pieces = pieces(feet);
            CuttingList list = CuttingList.of(pieces, 21);
            long[] all = pieces.stream().mapToLong(Straight::thousandths).toArray();
            assertThat(list.lengths().size())
                    .as("seed " + seed)
                    .isEqualTo(bruteForce(all, 0, new ArrayList<>(), 21_000, n + 1));
            assertThat(list.exact()).isTrue();
            assertCutWhole(list, pieces);
        }
    }

    /** 10 + 7 + 4 and 8 + 8 + 5 fill two lengths to the end; longest first leaves 10 + 8, 8 + 7 + 5 and 4. */
    @Test
    void twelvePiecesAreCutFromFewerLengthsThanLongestFirstWouldTake() {
        List<Straight> pieces = pieces(9, 9, 5, 5, 4, 4, 4, 4, 4, 4, 5.5, 5.5);
        CuttingList list = CuttingList.of(pieces, 21);
        assertThat(list.exact()).isTrue();
        long[] all = pieces.stream().mapToLong(Straight::thousandths).toArray();
        assertThat(list.lengths()).hasSize(bruteForce(all, 0, new ArrayList<>(), 21_000, 13));
        assertCutWhole(list, pieces);
        assertThat(CuttingList.of(pieces(10, 8, 8, 7, 5, 4), 21).lengths()).hasSize(2);
    }

    @Test
    void moreThanTwelvePiecesAreCutLongestFirstAndSaidSo() {
        double[] feet = IntStream.range(0, 13).mapToDouble(i -> 11).toArray();
        CuttingList list = CuttingList.of(pieces(feet), 21);
        assertThat(list.exact()).isFalse();
        assertThat(list.lengths()).hasSize(13);
        for (long seed = 1; seed <= 20; seed++) {
            List<Straight> pieces = pieces(new Random(seed).doubles(40, 0.5, 20).toArray());
            CuttingList many = CuttingList.of(pieces, 21);
            assertCutWhole(many, pieces);
            double sum = pieces.stream().mapToDouble(Straight::feet).sum();
            assertThat(many.lengths().size()).as("seed " + seed).isBetween((int) Math.ceil(sum / 21), (int)
                    Math.ceil(sum / 21 * 11 / 9 + 1));
        }
    }

    @Test
    void aStraightLongerThanALengthTakesWholeLengthsARestAndACouplingBetween() {
        CuttingList list = CuttingList.of(pieces(46), 21);
        assertThat(list.lengths()).hasSize(3);
        assertThat(list.couplings()).isEqualTo(2);
        assertThat(list.restFt()).isEqualTo(17);
        CuttingList twice = CuttingList.of(pieces(42), 21);
        assertThat(twice.lengths()).hasSize(2);
        assertThat(twice.couplings()).isEqualTo(1);
        assertThat(CuttingList.of(pieces(21), 21).couplings()).isZero();
    }

    @Test
    void noPieceNeedsNoPipe() {
        assertThat(CuttingList.of(List.of(), 21).lengths()).isEmpty();
    }
}
