/**
 * What a rule requires, from {@code data/rules}: thresholds by code with their source, amended where the plan says
 * so.
 */
@NullMarked
package longrun.rules.limit;

import org.jspecify.annotations.NullMarked;
