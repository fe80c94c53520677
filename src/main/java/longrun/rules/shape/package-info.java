/**
 * What rules are made of: what a rule sees of a house, where it looks, how it judges, and the shapes that many
 * rules share (distances, order, flags, parts that are not there).
 */
@NullMarked
package longrun.rules.shape;

import org.jspecify.annotations.NullMarked;
