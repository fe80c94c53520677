package longrun.checked.working;

import java.util.List;

/**
 * The program's answer to a published case: sizes, or numbers in the case's unit.
 *
 * @param sizes pipe sizes as written; empty where the answer is numbers
 * @param numbers the numbers, NaN for one that is not known; empty where the answer is sizes
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
