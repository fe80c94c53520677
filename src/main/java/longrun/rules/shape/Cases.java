package longrun.rules.shape;

import java.util.List;

/**
 * Which places of a house a rule is judged at.
 *
 * @param <T> what is judged there
 */
public interface Cases<T> {

    List<Case<T>> in(House house);
}
