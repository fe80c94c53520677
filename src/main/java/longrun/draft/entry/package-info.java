/** The entries of a draft: read, changed, named and removed. The only room in which screens meet the plan's JSON. */
@NullMarked
package longrun.draft.entry;

import org.jspecify.annotations.NullMarked;
