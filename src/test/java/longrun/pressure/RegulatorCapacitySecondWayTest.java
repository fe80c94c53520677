package longrun.pressure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longrun.Samples;
import longrun.capacity.CapacityTables;
import longrun.checked.Ran;
import longrun.checked.SecondWay;
import longrun.finding.Finding;
import longrun.piping.Piping;
import longrun.plan.Plan;
import longrun.plan.Regulator;
import longrun.review.ReviewParts;
import longrun.review.Reviewer;
import longrun.sizing.Sizing;
import org.junit.jupiter.api.Test;

/**
 * The finding on a regulator's capacity (2018 IFGC 410.2) against a second reading of the rule's text on seeded random
 * houses: the inlet from {@link PressureByHand}, the load from the house's own inputs.
 */
class RegulatorCapacitySecondWayTest {

    private static final Pattern CAPACITY = Pattern.compile("\"capacity\":\"[0-9]+ Btu/h\"(?=[^{}]*\\})");

    @Test
    void eachRegulatorIsJudgedOnceAndAsTheTextReads() {
        List<String> kinds = new ArrayList<>();
        long first = SecondWay.get("regulator-capacity").seed();
        long houses = Ran.count("regulator-capacity");
        for (long seed = first; seed < first + houses; seed++) {
            Plan plan = Samples.plan(withRatings(seed));
            Sizing sizing = Sizing.of(Piping.of(plan), CapacityTables.standard());
            Pressures pressures = Pressures.of(sizing);
            List<Finding> found = Reviewer.standard().review(plan, ReviewParts.PIPING).findings().stream()
                    .filter(f -> f.rule().equals("regulator-capacity"))
                    .toList();
            assertThat(found).as("seed " + seed).extracting(Finding::at).doesNotHaveDuplicates();
            PressureByHand hand = new PressureByHand(sizing);
            for (int r = 0; r < plan.regulators().size(); r++) {
                Regulator regulator = plan.regulators().get(r);
                boolean inletKnown = pressures.regulator(r).inlet().isPresent();
                String expected = read(hand, regulator, inletKnown);
                String told = found.stream()
                        .filter(f -> f.at().equals(regulator.id()))
                        .map(f -> f.severity().written() + " "
                                + f.field().substring(f.field().lastIndexOf('/') + 1))
                        .findFirst()
                        .orElse("nothing");
                assertThat(told).as("seed " + seed + " " + regulator.id()).isEqualTo(expected);
                kinds.add(told);
            }
        }
        assertThat(new TreeSet<>(kinds))
                .containsExactly(
                        "caution capacity", "must-fix capacity", "note capacity", "note capacityAtInlet", "nothing");
        Ran.told("regulator-capacity", houses, first, 0);
    }

    private static String read(PressureByHand hand, Regulator regulator, boolean inletKnown) {
        if (!regulator.capacity().isKnown()) {
            return "note capacity";
        }
        double load = hand.loadOf(regulator);
        double capacity = regulator.capacity().findValue().orElseThrow().btuh();
        if (load > capacity) {
            return "must-fix capacity";
        }
        if (load > 0.8 * capacity) {
            return "caution capacity";
        }
        boolean rated = !inletKnown
                || regulator
                        .capacityAtInlet()
                        .findValue()
                        .filter(p -> p.inWc() <= hand.regulatorInletInWc(regulator))
                        .isPresent();
        return rated ? "nothing" : "note capacityAtInlet";
    }

    /** A house whose regulators pass anything from too little to plenty, at one inlet pressure or another or unsaid. */
    private static String withRatings(long seed) {
        String house = new RandomHouses(seed, false, SecondWayTest.allowance(seed)).json;
        int end = house.indexOf("\"sections\"");
        Random random = new Random(seed);
        Matcher m = CAPACITY.matcher(house.substring(0, end));
        String regulators = m.replaceAll(was -> {
            String at = List.of("", ",\"capacityAtInlet\":\"5 psi\"", ",\"capacityAtInlet\":\"1.7 psi\"")
                    .get(random.nextInt(3));
            return random.nextInt(6) == 0
                    ? "\"access\":true"
                    : String.format(Locale.ROOT, "\"capacity\":\"%d Btu/h\"%s", 1000 * (40 + random.nextInt(1500)), at);
        });
        return regulators + house.substring(end);
    }
}
