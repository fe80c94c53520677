package longrun.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import longrun.PlanCount;
import longrun.capacity.CapacityTables;
import longrun.finding.Severity;
import longrun.piping.Piping;
import longrun.piping.TrapNeed;
import longrun.plan.Appliance;
import longrun.plan.Plan;
import longrun.plan.PlanPath;
import longrun.plan.choice.PartKind;
import longrun.plan.json.PlanReader;
import longrun.pressure.InletStatus;
import longrun.rules.limit.State;
import longrun.sizing.RandomPlans;
import longrun.sizing.SectionStatus;
import longrun.sizing.Sizing;
import org.junit.jupiter.api.Test;

/**
 * What holds of every plan, tried on many made at random. Nothing missing is taken as a pass; a longer run or a larger
 * load never asks for a smaller pipe (the capacity tables of the 2018 IFGC fall with length and rise with size); neither
 * the order in which things are written down nor the unit changes what is worked out.
 */
class RandomPlanPropertiesTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int PLANS = PlanCount.LADDER.plans();
    private static final long FIRST_SEED = 54_000_000;
    private static final int MOST_SECTIONS = 12;

    /** How many facts are taken from each plan, one at a time. */
    private static final int FACTS_A_PLAN = 2;

    /** What names a thing or says how it was chosen is no fact about the house. */
    private static final Set<String> NO_FACTS = Set.of("id", "part", "fittings", "installedSize", "chosenSize");

    private interface EachPlan {
        void check(String as, ObjectNode plan, Random random) throws Exception;
    }

    private static void eachPlan(EachPlan check) throws Exception {
        for (long seed = FIRST_SEED; seed < FIRST_SEED + PLANS; seed++) {
            ObjectNode plan = (ObjectNode) JSON.readTree(RandomPlans.json(seed, MOST_SECTIONS));
            try {
                check.check("seed " + seed + ", ", plan, new Random(seed));
            } catch (RuntimeException e) {
                throw new AssertionError("seed " + seed + ", " + plan, e);
            }
        }
    }

    private static Plan plan(String as, JsonNode document) {
        var reading = PlanReader.read(document);
        return reading.plan().orElseThrow(() -> new AssertionError(as + reading.errors() + " in " + document));
    }

    private static Review review(String as, JsonNode document) {
        return Reviewer.standard().review(plan(as, document), ReviewParts.PIPING);
    }

    private static Sizing sizing(String as, JsonNode document) {
        return Sizing.of(Piping.of(plan(as, document)), CapacityTables.standard());
    }

    /** How one thing stands: a rule that is not for the plan does not look at it. */
    private enum Standing {
        PASSES,
        IS_NOT_LOOKED_AT,
        DOES_NOT_PASS
    }

    /**
     * What did not pass never passes because less is known. A rule that no longer looks at a place, or no longer knows
     * what hangs there, may pass it by only where a finding asks for the removed entry. So may an inlet of which the
     * regulator's capacity or least inlet, or the hookup, is asked for (the whole droop and the connector's whole rated
     * drop are taken, an overload takes more), and a section where a hookup of more parts than the rules ask for is.
     */
    @Test
    void aFactRemovedNeverTurnsAMustFixOrAnUnknownIntoAPass() throws Exception {
        Map<String, Integer> removed = new TreeMap<>();
        Map<String, String> broken = new TreeMap<>();
        eachPlan((as, plan, random) -> {
            RandomFacts.enter(plan, random);
            List<JsonPointer> facts = facts(plan);
            Collections.shuffle(facts, random);
            Review whole = review(as, plan);
            Map<String, Standing> before = standings(whole);
            for (JsonPointer fact : facts.subList(0, Math.min(FACTS_A_PLAN, facts.size()))) {
                ObjectNode less = plan.deepCopy();
                String entry = fact.last().getMatchingProperty();
                ((ObjectNode) less.at(fact.head())).remove(entry);
                Review without = review(as, less);
                boolean asked =
                        without.findings().stream().anyMatch(f -> f.field().equals(fact.toString()));
                removed.merge(entry, 1, Integer::sum);
                Map<String, Standing> left = standings(without);
                left.forEach((what, after) -> {
                    boolean passedBefore = before.getOrDefault(what, Standing.PASSES) != Standing.DOES_NOT_PASS;
                    boolean passesBy = after == Standing.IS_NOT_LOOKED_AT
                            || (what.startsWith("inlet ")
                                    && MORE_THAN_WHOLE.matcher(fact.toString()).matches())
                            || (what.startsWith("section ") && isHookupOfMoreThanTheRulesAsk(whole, fact))
                            || (isRule(what) && HANGS.contains(entry));
                    if (!passedBefore && after != Standing.DOES_NOT_PASS && !(passesBy && asked)) {
                        broken.putIfAbsent(
                                what.replaceAll(" (at|of)? ?[A-Za-z0-9]*$", "") + " without " + entry,
                                as + what + " " + after + " once " + fact + " is not known: " + plan);
                    }
                });
                mustFixes(whole).stream()
                        .filter(f -> !asked && !told(without).contains(f) && left.get(f) != Standing.DOES_NOT_PASS)
                        .forEach(f -> broken.putIfAbsent(
                                "must-fix " + f.replaceAll(" at .*$", "") + " without " + entry,
                                as + f + " is silent once " + fact + " is not known: " + plan));
            }
        });
        assertThat(broken).isEmpty();
        assertThat(removed.values()).as("%s", removed).allMatch(n -> n > PLANS / 150);
        assertThat(removed.keySet()).hasSizeGreaterThan(30);
    }

    private static Set<String> mustFixes(Review review) {
        return review.findings().stream()
                .filter(f -> f.severity() == Severity.MUST_FIX)
                .map(f -> key(review, f.rule(), f.at()))
                .collect(Collectors.toSet());
    }

    private static Set<String> told(Review review) {
        return review.findings().stream()
                .map(f -> key(review, f.rule(), f.at()))
                .collect(Collectors.toSet());
    }

    /** Of several shutoffs one must meet all the rules, so these stand as one. */
    private static String key(Review review, String rule, String at) {
        boolean several = review.plan().appliances().stream()
                .filter(a -> a.id().equals(at))
                .anyMatch(a -> a.connection().findValue().orElse(List.of()).stream()
                                .filter(p -> p.part().is(PartKind.SHUTOFF))
                                .count()
                        > 1);
        boolean ofTheShutoff = rule.startsWith("shutoff-") || rule.equals("trap-downstream-of-shutoff");
        return (several && ofTheShutoff ? "shutoffs" : rule) + " at " + at;
    }

    private static boolean isRule(String what) {
        return what.contains(" at ");
    }

    private static Map<String, Boolean> passes(Review review) {
        Map<String, Boolean> out = new TreeMap<>();
        standings(review).forEach((what, standing) -> out.put(what, standing != Standing.DOES_NOT_PASS));
        return out;
    }

    /** What an overload takes more of than the whole that is taken where it is not known. */
    private static final Pattern MORE_THAN_WHOLE =
            Pattern.compile("/regulators/[0-9]+/(capacity|minInlet)|/appliances/[0-9]+/connection(/[0-9]+/capacity)?");

    /** What says what hangs on what: a rule judges what it leads to once it is entered. */
    private static final Set<String> HANGS = Set.of("fedBy", "from");

    /** More than one shutoff, or a trap where 2018 IFGC 408.4 excuses the kind. */
    private static boolean isHookupOfMoreThanTheRulesAsk(Review whole, JsonPointer fact) {
        PlanPath at = PlanPath.of(fact.toString());
        if (!at.isIn("appliances") || !at.entry().equals("connection")) {
            return false;
        }
        Appliance appliance = whole.plan().appliances().get(at.findIndex().orElseThrow());
        List<PartKind> kinds = appliance.connection().findValue().orElse(List.of()).stream()
                .flatMap(p -> p.part().findValue().stream())
                .toList();
        return Collections.frequency(kinds, PartKind.SHUTOFF) > 1
                || (kinds.contains(PartKind.SEDIMENT_TRAP) && TrapNeed.of(appliance) == TrapNeed.EXEMPT);
    }

    /** Everything judged: a rule that is neither broken nor asks lets a house pass. */
    private static Map<String, Standing> standings(Review review) {
        Map<String, Standing> out = new TreeMap<>();
        for (int i = 0; i < review.piping().sectionCount(); i++) {
            SectionStatus status = review.sizing().section(i).status();
            out.put(
                    "section " + review.piping().section(i).id(),
                    passing((status == SectionStatus.SIZED || status == SectionStatus.ADEQUATE)
                            && !review.sizing().isProvisional(i)));
        }
        for (int a = 0; a < review.plan().appliances().size(); a++) {
            out.put(
                    "inlet of " + review.plan().appliances().get(a).id(),
                    passing(review.pressures().outlet(a).status() == InletStatus.ENOUGH));
        }
        out.put("connected load", passing(review.connectedLoadComplete()));
        review.rules()
                .states()
                .forEach(s -> out.merge(
                        key(review, s.rule(), s.at()),
                        standing(s.state()),
                        (one, other) -> one == Standing.DOES_NOT_PASS || other == Standing.DOES_NOT_PASS
                                ? Standing.DOES_NOT_PASS
                                : one == other ? one : Standing.PASSES));
        return out;
    }

    private static Standing passing(boolean passes) {
        return passes ? Standing.PASSES : Standing.DOES_NOT_PASS;
    }

    private static Standing standing(State state) {
        return switch (state) {
            case HOLDS -> Standing.PASSES;
            case NOT_FOR_THIS_PLAN -> Standing.IS_NOT_LOOKED_AT;
            case BROKEN, ASKS -> Standing.DOES_NOT_PASS;
        };
    }

    private static List<JsonPointer> facts(ObjectNode plan) {
        List<JsonPointer> out = new ArrayList<>();
        for (String list : List.of("regulators", "sections", "appliances")) {
            for (int i = 0; i < plan.path(list).size(); i++) {
                JsonNode holder = plan.path(list).path(i);
                facts(holder, "/" + list + "/" + i, out);
                for (int p = 0; p < holder.path("connection").size(); p++) {
                    facts(holder.path("connection").path(p), "/" + list + "/" + i + "/connection/" + p, out);
                }
            }
        }
        return out;
    }

    private static void facts(JsonNode holder, String pointer, List<JsonPointer> out) {
        holder.fieldNames().forEachRemaining(name -> {
            if (!NO_FACTS.contains(name)) {
                out.add(JsonPointer.compile(pointer + "/" + name));
            }
        });
    }

    @Test
    void aLongerLegNeverMakesASizeSmaller() throws Exception {
        eachPlan((as, plan, random) -> {
            ArrayNode sections = (ArrayNode) plan.path("sections");
            int section = random.nextInt(sections.size());
            ArrayNode legs = (ArrayNode) sections.path(section).path("legs");
            int leg = random.nextInt(legs.size());
            double more = new double[] {0.1, 5, 25, 150, 600}[random.nextInt(5)];
            ObjectNode longer = plan.deepCopy();
            ((ArrayNode) longer.path("sections").path(section).path("legs"))
                    .set(leg, TextNode.valueOf(edited(legs.path(leg).asText(), feet -> feet.add(decimal(more)))));
            noSizeIsSmaller(as + "leg " + leg + " of section " + section + " longer by " + more + ", ", plan, longer);
        });
    }

    @Test
    void aLargerLoadNeverMakesASizeSmaller() throws Exception {
        eachPlan((as, plan, random) -> {
            List<Integer> known = new ArrayList<>();
            for (int a = 0; a < plan.path("appliances").size(); a++) {
                if (plan.path("appliances").path(a).has("input")) {
                    known.add(a);
                }
            }
            if (known.isEmpty()) {
                return;
            }
            int appliance = known.get(random.nextInt(known.size()));
            double more = new double[] {1, 20, 150, 2000}[random.nextInt(4)];
            ObjectNode larger = plan.deepCopy();
            ObjectNode grown = (ObjectNode) larger.path("appliances").path(appliance);
            grown.put("input", edited(grown.path("input").asText(), input -> input.add(decimal(more))));
            noSizeIsSmaller(as + "appliance " + appliance + " larger by " + more + " kBtu/h, ", plan, larger);
        });
    }

    private static void noSizeIsSmaller(String as, ObjectNode plan, ObjectNode more) {
        Sizing before = sizing(as, plan);
        Sizing after = sizing(as, more);
        for (int i = 0; i < before.piping().sectionCount(); i++) {
            assertThat(rank(after, i))
                    .as("%ssection %s of %s", as, before.piping().section(i).id(), plan)
                    .isGreaterThanOrEqualTo(rank(before, i));
        }
    }

    /** The needed size by its place in the table, the greatest number where none will do. */
    private static int rank(Sizing sizing, int section) {
        var size = sizing.section(section);
        return switch (size.status()) {
            case UNKNOWN -> -1;
            case NO_SIZE -> Integer.MAX_VALUE;
            case SIZED, ADEQUATE, UNDERSIZED -> size.needed().orElse(Integer.MAX_VALUE);
        };
    }

    @Test
    void theOrderOfTheListsChangesNothingButTheOrderOfLists() throws Exception {
        eachPlan((as, plan, random) -> {
            ObjectNode shuffled = plan.deepCopy();
            for (String list : List.of("regulators", "sections", "appliances")) {
                List<JsonNode> entries = new ArrayList<>();
                plan.path(list).forEach(entries::add);
                Collections.shuffle(entries, random);
                shuffled.putArray(list).addAll(entries);
            }
            Review before = review(as, plan);
            Review after = review(as, shuffled);
            assertThat(figures(after, true)).as("%s%s", as, plan).isEqualTo(figures(before, true));
            assertThat(passes(after)).as("%s%s", as, plan).isEqualTo(passes(before));
        });
    }

    @Test
    void theUnitOfAnEntryChangesNothing() throws Exception {
        eachPlan((as, plan, random) -> {
            ObjectNode metric = plan.deepCopy();
            metric.path("regulators").forEach(r -> convert(r, "outlet", "allowedDrop", "capacity", "minInlet"));
            metric.path("appliances").forEach(a -> convert(a, "input", "minInlet", "maxInlet"));
            metric.path("sections").forEach(s -> {
                convert(s, "reserve");
                ArrayNode legs = (ArrayNode) s.path("legs");
                for (int i = 0; i < legs.size(); i++) {
                    legs.set(i, TextNode.valueOf(metric(legs.path(i).asText())));
                }
            });
            Review before = review(as, plan);
            Review after = review(as, metric);
            assertThat(figures(after, false)).as("%s%s", as, metric).isEqualTo(figures(before, false));
            assertThat(passes(after)).as("%s%s", as, metric).isEqualTo(passes(before));
        });
    }

    /**
     * What is worked out, by what it is about.
     *
     * @param words whether the words of the findings are compared too, which say entries in their own unit
     */
    private static Map<String, Object> figures(Review review, boolean words) {
        Map<String, Object> out = new TreeMap<>();
        for (int i = 0; i < review.piping().sectionCount(); i++) {
            var size = review.sizing().section(i);
            out.put(
                    "section " + review.piping().section(i).id(),
                    List.of(
                            size.status(),
                            size.rowRun(),
                            size.size(),
                            size.neededSize(),
                            size.capacity(),
                            size.noSize(),
                            review.sizing().isProvisional(i),
                            review.sizing().assumedParts(i)));
        }
        for (var stage : review.piping().stages()) {
            out.put(
                    "stage " + stage.id(),
                    List.of(
                            review.piping().isComplete(stage.regulatorIndex()),
                            review.sizing()
                                    .stage(stage.regulatorIndex())
                                    .longestRunTo()
                                    .map(o -> o.id())));
        }
        for (int a = 0; a < review.plan().appliances().size(); a++) {
            out.put(
                    "inlet of " + review.plan().appliances().get(a).id(),
                    review.pressures().outlet(a).status());
        }
        Set<String> findings = new TreeSet<>();
        review.findings()
                .forEach(f -> findings.add(f.rule() + " " + f.severity() + " at " + f.at()
                        + (words ? ": " + f.found() + "; " + f.required() : "")));
        out.put("findings", findings);
        return out;
    }

    private static void convert(JsonNode holder, String... names) {
        for (String name : names) {
            if (holder.has(name)) {
                ((ObjectNode) holder).put(name, metric(holder.path(name).asText()));
            }
        }
    }

    private static final Pattern QUANTITY = Pattern.compile("(.*?)([0-9][0-9.]*) (ft|psi|in w\\.c\\.|kBtu/h|MBH)");

    /** By 0.3048 m a foot, 6.894757293168 kPa a psi, 27.7 in. w.c. a psi (2018 IFGC), 1055.05585262 J a Btu. */
    private static String metric(String written) {
        Matcher m = QUANTITY.matcher(written);
        if (!m.matches()) {
            return written;
        }
        BigDecimal n = new BigDecimal(m.group(2));
        BigDecimal psi = new BigDecimal("6.894757293168");
        return m.group(1)
                + switch (m.group(3)) {
                    case "ft" -> plain(n.multiply(new BigDecimal("0.3048"))) + " m";
                    case "psi" -> plain(n.multiply(psi)) + " kPa";
                    case "in w.c." ->
                        plain(n.multiply(psi).divide(new BigDecimal("27.7"), MathContext.DECIMAL64)) + " kPa";
                    default -> plain(n.multiply(new BigDecimal("1.05505585262"))) + " MJ/h";
                };
    }

    private static String plain(BigDecimal n) {
        return n.round(new MathContext(12)).stripTrailingZeros().toPlainString();
    }

    private static BigDecimal decimal(double n) {
        return BigDecimal.valueOf(n);
    }

    private static String edited(String written, UnaryOperator<BigDecimal> change) {
        Matcher m = QUANTITY.matcher(written);
        assertThat(m.matches()).as(written).isTrue();
        return m.group(1) + plain(change.apply(new BigDecimal(m.group(2)))) + " " + m.group(3);
    }
}
