package longrun.store;

import java.time.Instant;

/**
 * A saved house as it stands.
 *
 * @param id of the house, the same for as long as it is kept
 * @param name as typed; may hold anything, so escape it where it is shown
 * @param json the draft's text, character for character as it was stored
 * @param version goes up by one with every stored change of the text, undo and redo included, but not with a rename
 * @param changed when this version was stored
 * @param undos how many steps can be undone
 * @param redos how many undone steps can be done again
 */
public record Draft(long id, String name, String json, long version, Instant changed, int undos, int redos) {}
