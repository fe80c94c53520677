/** What an entry of a plan may be chosen from: kinds, materials, settings, each with the name a plan writes. */
@NullMarked
package longrun.plan.choice;

import org.jspecify.annotations.NullMarked;
