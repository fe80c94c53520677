package longrun.store;

import java.util.Random;

/** Draft texts for the store's tests. */
final class Texts {

    private Texts() {}

    /** A JSON text of that many characters that holds the number, the rest letters that compress little. */
    static String ofLength(int length, int number) {
        StringBuilder text = new StringBuilder("{\"n\":" + number + ",\"note\":\"");
        new Random(number).ints(length - text.length() - 2L, 'A', 'Z' + 1).forEach(text::appendCodePoint);
        return text.append("\"}").toString();
    }
}
