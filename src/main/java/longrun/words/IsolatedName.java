package longrun.words;

import java.util.PrimitiveIterator;

/**
 * Makes a name a person typed safe inside a sentence. A name that runs from right to left, or holds a mark that changes the
 * direction, is put between isolate characters, so that the words and figures around it keep their order (Unicode Standard
 * Annex 9, rules X5c and X6a). Direction marks inside it are left out, since they could end the isolation.
 */
public final class IsolatedName {

    private static final char FIRST_STRONG_ISOLATE = '\u2068';
    private static final char POP_DIRECTIONAL_ISOLATE = '\u2069';

    private IsolatedName() {}

    /** The name as it can stand among other words; a name that runs from left to right stays as it is. */
    public static String of(String name) {
        if (name.codePoints().noneMatch(c -> isRightToLeft(c) || isDirectionMark(c))) {
            return name;
        }
        return FIRST_STRONG_ISOLATE + withoutMarks(name) + POP_DIRECTIONAL_ISOLATE;
    }

    /** A text without the marks that change its direction. */
    public static String withoutMarks(String text) {
        if (text.codePoints().noneMatch(IsolatedName::isDirectionMark)) {
            return text;
        }
        StringBuilder out = new StringBuilder(text.length());
        PrimitiveIterator.OfInt letters = text.codePoints().iterator();
        while (letters.hasNext()) {
            int letter = letters.nextInt();
            if (!isDirectionMark(letter)) {
                out.appendCodePoint(letter);
            }
        }
        return out.toString();
    }

    private static boolean isRightToLeft(int letter) {
        return switch (Character.getDirectionality(letter)) {
            case Character.DIRECTIONALITY_RIGHT_TO_LEFT,
                    Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC,
                    Character.DIRECTIONALITY_ARABIC_NUMBER -> true;
            default -> false;
        };
    }

    /** Unicode Standard Annex 9, sections 2.1 to 2.6: embeddings, overrides, isolates and marks. */
    private static boolean isDirectionMark(int letter) {
        return letter >= 0x202A && letter <= 0x202E
                || letter >= 0x2066 && letter <= 0x2069
                || letter == 0x200E
                || letter == 0x200F
                || letter == 0x061C;
    }
}
