/** What a person enters about one house: immutable records that keep what was typed beside what it means. */
@NullMarked
package longrun.plan;

import org.jspecify.annotations.NullMarked;
