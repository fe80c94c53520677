/** What the pages share: head, caution, answer, and the components for whatever comes again. */
@NullMarked
package longrun.ui.frame;

import org.jspecify.annotations.NullMarked;
