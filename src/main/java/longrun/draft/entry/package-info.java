/** What a draft holds, entry by entry: read, changed, named, taken away. The one place where screens meet the plan's tree. */
@NullMarked
package longrun.draft.entry;

import org.jspecify.annotations.NullMarked;
