package longrun.checked.working;

import java.util.List;

/**
 * Our answer to a published case: sizes in words, or numbers in the case's unit.
 *
 * @param sizes empty where it is numbers
 * @param numbers empty where it is sizes; NaN where one is not known
 */
public record Answer(List<String> sizes, List<Double> numbers) {

    static Answer sizes(List<String> sizes) {
        return new Answer(List.copyOf(sizes), List.of());
    }

    static Answer numbers(List<Double> numbers) {
        return new Answer(List.of(), List.copyOf(numbers));
    }

    static Answer number(double number) {
        return numbers(List.of(number));
    }
}
