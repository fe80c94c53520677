package longrun.store;

import org.jspecify.annotations.Nullable;
import org.springframework.data.annotation.Id;

/** A row of steps: the whole text of a house's draft after one change, numbered upwards without gaps. */
record Step(@Id @Nullable Long id, long house, int number, String body) {}
