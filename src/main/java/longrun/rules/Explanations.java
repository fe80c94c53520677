package longrun.rules;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The explanations of all rules: one Markdown text a topic, read once. */
public final class Explanations {

    private static final Pattern TOPIC = Pattern.compile("# (?<topic>[^\\n]+)\\n");
    private static final Pattern RULE = Pattern.compile(
            "## (?<rule>[a-z-]+)\\n\\n(?<title>[^\\n]+)\\n\\n"
                    + "What can happen: (?<happens>[^\\n]+)\\n\\n"
                    + "Wrong:\\n\\n```json\\n(?<wrong>.*?)```\\n\\n"
                    + "Right:\\n\\n```json\\n(?<right>.*?)```\\n",
            Pattern.DOTALL);
    private static final Map<String, Explanation> ALL = load();

    private Explanations() {}

    /** Every explanation, in the order its topics are told. */
    public static List<Explanation> all() {
        return List.copyOf(ALL.values());
    }

    /**
     * The explanation of a rule.
     *
     * @throws IllegalArgumentException if there is no such rule
     */
    public static Explanation get(String rule) {
        Explanation found = ALL.get(rule);
        if (found == null) {
            throw new IllegalArgumentException("no rule is called " + rule);
        }
        return found;
    }

    /** The explanation of a rule; empty for what is told elsewhere, such as a size. */
    public static Optional<Explanation> find(String rule) {
        return Optional.ofNullable(ALL.get(rule));
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
                all.put(
                        rule.group("rule"),
                        new Explanation(
                                rule.group("rule"),
                                head.group("topic"),
                                rule.group("title"),
                                rule.group("happens"),
                                rule.group("wrong").strip(),
                                rule.group("right").strip()));
            }
        }
        return Collections.unmodifiableMap(all);
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
