package longrun.hotwater;

/**
 * A starting value that stands in for an entry.
 *
 * @param field JSON pointer of the entry
 * @param value what stands in, in words
 * @param required what to enter
 * @param question whose answer would be entered
 */
public record StandIn(String field, String value, String required, String question) {}
