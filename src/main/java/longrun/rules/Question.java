package longrun.rules;

import longrun.finding.AskWhom;

/** A question to take along, and who can answer it. */
record Question(String text, AskWhom whom) {

    static Question fitter(String text) {
        return new Question(text, AskWhom.FITTER);
    }

    static Question inspector(String text) {
        return new Question(text, AskWhom.INSPECTOR);
    }

    static Question plate(String text) {
        return new Question(text, AskWhom.RATING_PLATE);
    }

    static Question supplier(String text) {
        return new Question(text, AskWhom.SUPPLIER);
    }

    static Question owner(String text) {
        return new Question(text, AskWhom.OWNER);
    }

    Question about(Place place) {
        return new Question(text.replace("{who}", place.label()), whom);
    }
}
