/** Published cases: what is given, what the publication answers, how close the program's answer must be and why. */
@NullMarked
package longrun.checked.published;

import org.jspecify.annotations.NullMarked;
