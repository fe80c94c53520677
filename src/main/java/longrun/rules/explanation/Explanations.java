package longrun.rules.explanation;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longrun.origin.Confidence;
import longrun.plan.choice.Named;
import longrun.plan.json.PlanWith;
import longrun.rules.limit.Threshold;
import longrun.rules.limit.Thresholds;

/**
 * The explanations of all rules, and of what sizes, pressures and the tank bring up: one Markdown text a topic, read
 * once. All examples are one house, {@code example-house.json}, with an entry or two changed.
 */
public final class Explanations {

    private static final Pattern TOPIC = Pattern.compile("# (?<topic>[^\\n]+)\\n");
    private static final Pattern RULE = Pattern.compile(
            "## (?<rule>[a-z-]+)\\n"
                    + "\\n"
                    + "(?<title>[^\\n"
                    + "]+)\\n"
                    + "\\n"
                    + "What can happen: (?<happens>[^\\n"
                    + "]+)\\n"
                    + "\\n"
                    + "(?:Where from: (?<source>[^\\n"
                    + "]+); held as (?<held>[a-z]+)\\. Required: (?<required>[^\\n"
                    + "]+)\\n"
                    + "\\n"
                    + ")?Wrong:\\n"
                    + "\\n"
                    + "```json\\n"
                    + "(?<wrong>.*?)```\\n"
                    + "\\n"
                    + "Right:\\n"
                    + "\\n"
                    + "```json\\n"
                    + "(?<right>.*?)```\\n",
            Pattern.DOTALL);
    private static final String HOUSE = text("example-house.json");
    private static final Map<String, Explanation> ALL = load();

    private Explanations() {}

    /** Every explanation, in the order its topics are told. */
    public static List<Explanation> all() {
        return List.copyOf(ALL.values());
    }

    /** The explanation of a rule; empty for what no rule asks, such as a missing fitting. */
    public static Optional<Explanation> find(String rule) {
        return Optional.ofNullable(ALL.get(rule));
    }

    /** The house that every example is, as a plan that no rule finds anything in; JSON. */
    public static String house() {
        return HOUSE;
    }

    private static Map<String, Explanation> load() {
        Map<String, Explanation> all = new LinkedHashMap<>();
        for (String topic : text("topics.txt").strip().split("\n")) {
            String text = text(topic + ".md");
            Matcher head = TOPIC.matcher(text);
            if (!head.lookingAt()) {
                throw new IllegalStateException("the explanation " + topic + ".md has no head line");
            }
            Matcher rule = RULE.matcher(text);
            while (rule.find()) {
                all.put(rule.group("rule"), read(head.group("topic"), rule));
            }
        }
        return Collections.unmodifiableMap(all);
    }

    private static Explanation read(String topic, Matcher rule) {
        return new Explanation(
                rule.group("rule"),
                topic,
                rule.group("title"),
                rule.group("happens"),
                sections(rule),
                example(rule.group("wrong").strip()),
                example(rule.group("right").strip()));
    }

    private static Explanation.Example example(String entries) {
        return new Explanation.Example(entries, PlanWith.entries(HOUSE, entries));
    }

    /** From the thresholds; what no threshold decides names its source in the text. */
    private static List<Explanation.Section> sections(Matcher rule) {
        List<Explanation.Section> all = new ArrayList<>();
        for (Threshold t : Thresholds.builtIn().listOf(rule.group("rule"))) {
            all.add(new Explanation.Section(t.code(), t.required(), t.source(), t.confidence()));
        }
        if (rule.group("source") != null) {
            all.add(new Explanation.Section(
                    Optional.empty(), rule.group("required"), rule.group("source"), held(rule.group("held"))));
        }
        return List.copyOf(all);
    }

    private static Confidence held(String written) {
        return Named.find(Confidence.class, written)
                .orElseThrow(() -> new IllegalStateException("an explanation is held as " + written));
    }

    private static String text(String file) {
        try (InputStream in = Explanations.class.getResourceAsStream("/longrun/rules/" + file)) {
            if (in == null) {
                throw new IllegalStateException("the explanation " + file + " is not in the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
