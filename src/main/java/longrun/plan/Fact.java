package longrun.plan;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * What is known of one entry: a value with the text it was typed as, "none" (somebody looked and there is none), or nothing.
 * Unknown is never taken as zero or as a pass.
 *
 * @param <T> the value
 */
public sealed interface Fact<T> {

    /** A value, and the text a person typed for it. */
    record Known<T>(T value, String text) implements Fact<T> {}

    /** Someone looked, and there is none. */
    record None<T>() implements Fact<T> {}

    /** Nobody has said. */
    record Unknown<T>() implements Fact<T> {}

    static <T> Fact<T> known(T value, String text) {
        return new Known<>(value, text);
    }

    static <T> Fact<T> known(T value) {
        return new Known<>(value, String.valueOf(value));
    }

    static <T> Fact<T> none() {
        return new None<>();
    }

    static <T> Fact<T> unknown() {
        return new Unknown<>();
    }

    /** The one way to look at all three states. */
    default <R> R fold(
            Function<? super T, ? extends R> known, Supplier<? extends R> none, Supplier<? extends R> unknown) {
        if (this instanceof Known<T> k) {
            return known.apply(k.value());
        }
        return this instanceof None<T> ? none.get() : unknown.get();
    }

    /** The value, where there is one. */
    default Optional<T> findValue() {
        return this instanceof Known<T> k ? Optional.of(k.value()) : Optional.empty();
    }

    /** The text as typed, "none", or empty. */
    default Optional<String> findText() {
        if (this instanceof Known<T> k) {
            return Optional.of(k.text());
        }
        return this instanceof None<T> ? Optional.of("none") : Optional.empty();
    }

    default boolean isKnown() {
        return this instanceof Known<T>;
    }

    default boolean isNone() {
        return this instanceof None<T>;
    }

    default boolean isUnknown() {
        return this instanceof Unknown<T>;
    }

    /** Whether there is a value and it passes the test. */
    default boolean is(Predicate<? super T> test) {
        return this instanceof Known<T> k && test.test(k.value());
    }

    /** Whether the value is exactly this one. */
    default boolean is(T wanted) {
        return this instanceof Known<T> k && k.value().equals(wanted);
    }
}
