package longrun.rules.shape;

import longrun.finding.AskWhom;

/** A question to take along, and who can answer it. */
public record Question(String text, AskWhom whom) {

    public static Question fitter(String text) {
        return new Question(text, AskWhom.FITTER);
    }

    public static Question inspector(String text) {
        return new Question(text, AskWhom.INSPECTOR);
    }

    public static Question plate(String text) {
        return new Question(text, AskWhom.RATING_PLATE);
    }

    public static Question supplier(String text) {
        return new Question(text, AskWhom.SUPPLIER);
    }

    public static Question owner(String text) {
        return new Question(text, AskWhom.OWNER);
    }

    public Question about(Place place) {
        return new Question(place.named(text), whom);
    }
}
