/** How our figure of a published case is worked out: by the same code that answers a person. */
@NullMarked
package longrun.checked.working;

import org.jspecify.annotations.NullMarked;
