package longrun.words;

import java.util.Locale;
import longrun.plan.Appliance;
import longrun.review.Review;

/** The names of appliances and other parts, as a sentence or a heading has them. */
public final class Names {

    private Names() {}

    /** An appliance within a sentence: its own name, else "the" and its kind. For any other part its id. */
    public static String of(Review review, String id) {
        return review.plan().appliances().stream()
                .filter(a -> a.id().equals(id))
                .findFirst()
                .map(a -> isNamed(a)
                        ? IsolatedName.of(review.piping().names().name(a))
                        : review.piping().names().called(a))
                .orElseGet(() -> IsolatedName.of(id));
    }

    /** What an appliance is called at the head of what is told of it. */
    public static String of(Review review, Appliance a) {
        String name = review.piping().names().name(a);
        return IsolatedName.of(isNamed(a) ? name : capital(name));
    }

    private static boolean isNamed(Appliance a) {
        return a.name().is(n -> !n.isBlank());
    }

    /** The words with a capital at their start. */
    public static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
