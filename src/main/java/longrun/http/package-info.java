/** The service: plans in, reviews and tables out, on this computer alone. */
@NullMarked
package longrun.http;

import org.jspecify.annotations.NullMarked;
