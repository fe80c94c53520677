package longrun.store;

/** A step's text and the checksum it was stored with. */
record StoredText(String body, long checksum) {}
