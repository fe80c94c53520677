/** The report on what was checked, in parts to be shown on a page, on paper or in a file. */
@NullMarked
package longrun.checked.report;

import org.jspecify.annotations.NullMarked;
