package longrun.plan;

import longrun.quantity.Length;

/**
 * How far something is. A person who only knows that it is more than some length writes {@code "> 25 ft"}.
 *
 * @param length as measured, or the length it is known to exceed
 * @param orMore whether it is only known to be more than that
 */
public record Distance(Length length, boolean orMore) {

    public static Distance of(Length length) {
        return new Distance(length, false);
    }
}
