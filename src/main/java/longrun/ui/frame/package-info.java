/** What the pages share: frame, caution, answer, and components that are used on several pages. */
@NullMarked
package longrun.ui.frame;

import org.jspecify.annotations.NullMarked;
