/**
 * The papers of a house: what each is for, what is still open in it, how it will look, and where it is saved.
 */
@NullMarked
package longrun.ui.house.papers;

import org.jspecify.annotations.NullMarked;
