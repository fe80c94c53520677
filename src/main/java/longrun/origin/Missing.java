package longrun.origin;

/**
 * An entry a figure cannot do without.
 *
 * @param field JSON pointer of the entry
 * @param words what to enter there, in trade words
 */
public record Missing(String field, String words) {}
