/** The HTTP service: it takes plans and answers with reviews, sheets and tables, to programs on this computer. */
@NullMarked
package longrun.http;

import org.jspecify.annotations.NullMarked;
