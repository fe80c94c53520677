/**
 * What a person types into a house: the draft and its history, the addresses of its entries, its last review, and the
 * places of a house with what is still open in each. No screens.
 */
@NullMarked
package longrun.draft;

import org.jspecify.annotations.NullMarked;
