/** The demo house and the walk through it. */
@NullMarked
package longrun.draft.demo;

import org.jspecify.annotations.NullMarked;
