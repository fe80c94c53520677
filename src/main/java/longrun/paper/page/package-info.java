/** What every sheet is made of: text as harmless mark-up, the paper it stands on, the facts of the house, blanks to sign. */
@NullMarked
package longrun.paper.page;

import org.jspecify.annotations.NullMarked;
