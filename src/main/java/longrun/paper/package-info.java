/** Sheets of paper made from a review: for the supplier, the fitter, the inspector. The same plan and date give the same bytes. */
@NullMarked
package longrun.paper;

import org.jspecify.annotations.NullMarked;
