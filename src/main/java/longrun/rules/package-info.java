/**
 * The rules of the trade, one package a topic. A rule sees one {@link longrun.rules.shape.House} and says at each place whether it
 * holds, is broken, asks, or is not for this plan. Thresholds are data, by code.
 */
@NullMarked
package longrun.rules;

import org.jspecify.annotations.NullMarked;
