/**
 * What a person types into a house, and how it stands: the draft and its history, where entries lie, the last
 * review that could be made, the places of a house and what is still open in each. No screens.
 */
@NullMarked
package longrun.draft;

import org.jspecify.annotations.NullMarked;
