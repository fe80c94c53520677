package longrun.store;

/** A step's text, and the sum it was stored with. */
record StoredText(String body, long mark) {}
