/** What a person sees. Screens hold no arithmetic: every number they show comes from a review. */
@NullMarked
package longrun.ui;

import org.jspecify.annotations.NullMarked;
