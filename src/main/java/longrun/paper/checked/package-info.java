/** What the program was checked against, as a page to be kept and as a PDF. */
@NullMarked
package longrun.paper.checked;

import org.jspecify.annotations.NullMarked;
