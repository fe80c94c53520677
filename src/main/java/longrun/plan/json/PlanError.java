package longrun.plan.json;

/**
 * Something in a plan that can't be read.
 *
 * @param pointer JSON pointer (RFC 6901) of the place
 * @param message what to write instead, for whoever writes plans as JSON
 * @param kind what is wrong, for whoever says it in other words
 */
public record PlanError(String pointer, String message, Kind kind) {

    /** What is wrong with an entry. */
    public enum Kind {
        /** A bare number is wanted: in JSON one without quotes, at a screen one in digits. */
        NOT_A_NUMBER,
        OTHER
    }

    public PlanError(String pointer, String message) {
        this(pointer, message, Kind.OTHER);
    }
}
