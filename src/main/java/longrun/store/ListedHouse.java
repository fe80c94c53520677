package longrun.store;

import java.time.Instant;

/**
 * One line in the list of houses.
 *
 * @param id of the house
 * @param name as typed; may hold anything, so escape it where it is shown
 * @param version of its draft
 * @param changed when that version was stored
 */
public record ListedHouse(long id, String name, long version, Instant changed) {}
