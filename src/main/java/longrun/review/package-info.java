/** Makes a review of a plan. Screens, service and papers all get their figures and findings here. */
@NullMarked
package longrun.review;

import org.jspecify.annotations.NullMarked;
