package longrun.plan.json;

/**
 * Something in a plan that can't be read.
 *
 * @param pointer JSON pointer (RFC 6901) of the place
 * @param message what to write instead
 */
public record PlanError(String pointer, String message) {}
