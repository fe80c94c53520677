/**
 * Papers as files: many in one zip, the pages of a PDF as pictures, and the plan that lies in a PDF.
 */
@NullMarked
package longrun.paper.file;

import org.jspecify.annotations.NullMarked;
