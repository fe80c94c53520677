/** The demo house and the tour of it. */
@NullMarked
package longrun.draft.demo;

import org.jspecify.annotations.NullMarked;
