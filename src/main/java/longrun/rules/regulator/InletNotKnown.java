package longrun.rules.regulator;

import java.util.Optional;
import java.util.OptionalInt;
import longrun.piping.Piping;
import longrun.piping.Stage;
import longrun.rules.shape.House;
import longrun.rules.shape.Question;

/**
 * Why the inlet pressure of a regulator on a pipe is not known, or not for good: the first entry that lacks.
 *
 * @param words what lacks, as the end of a sentence
 * @param question what to ask
 * @param field the entry that answers it
 */
record InletNotKnown(String words, Question question, String field) {

    /** Empty where the inlet is known, and for a regulator at the tank. */
    static Optional<InletNotKnown> find(House house, int regulator) {
        Piping piping = house.pressures().sizing().piping();
        int feeder = piping.sectionFeeding(regulator);
        if (feeder < 0) {
            return house.plan().regulators().get(regulator).fedBy().isKnown()
                    ? Optional.empty()
                    : Optional.of(new InletNotKnown(
                            "what feeds it is not entered",
                            Question.fitter("Which pipe or tank feeds {who}?"),
                            "/regulators/" + regulator + "/fedBy"));
        }
        int stage = piping.stageIndex(feeder);
        if (stage < 0) {
            int top = feeder;
            while (piping.parent(top) >= 0) {
                top = piping.parent(top);
            }
            return Optional.of(section(piping, top, "from", "what it leaves"));
        }
        boolean known = house.pressures().regulator(regulator).inlet().isPresent() && piping.isComplete(stage);
        return known
                ? Optional.empty()
                : Optional.of(within(house, piping, piping.stages().get(stage), feeder));
    }

    /** What lacks in the stage whose pipe ends at the regulator. */
    private static InletNotKnown within(House house, Piping piping, Stage stage, int feeder) {
        String pointer = "/regulators/" + stage.regulatorIndex();
        if (!stage.regulator().outlet().isKnown()) {
            return new InletNotKnown(
                    "what " + stage.id() + " is set to is not entered",
                    Question.supplier("What outlet pressure is regulator " + stage.id() + " set to?"),
                    pointer + "/outlet");
        }
        if (!stage.regulator().allowedDrop().isKnown()) {
            return new InletNotKnown(
                    "the pressure drop the pipe after " + stage.id() + " is allowed is not entered",
                    Question.fitter("Which pressure drop is the pipe after " + stage.id() + " sized for?"),
                    pointer + "/allowedDrop");
        }
        for (int s : stage.sections().stream().sorted().toList()) {
            if (!piping.section(s).material().isKnown()) {
                return section(piping, s, "material", "its material");
            }
            if (piping.measured(s).isEmpty()) {
                return section(piping, s, "legs", "its length");
            }
        }
        OptionalInt assumed = piping.findAssumed(stage.regulatorIndex());
        if (assumed.isPresent()) {
            String id = piping.section(assumed.getAsInt()).id();
            return new InletNotKnown(
                    "section " + id + " ahead of it is assumed, not seen",
                    Question.fitter("Is section " + id + ", ahead of {who}, as entered?"),
                    "/sections/" + assumed.getAsInt() + "/assumed");
        }
        Optional<String> load =
                house.network().servedBy(stage.id()).missing().or(() -> piping.findLoose(stage.regulatorIndex()));
        return load.map(field -> new InletNotKnown(
                        "not everything that " + stage.id() + " feeds is entered",
                        Question.fitter("What does " + stage.id() + " serve beside what is entered, with which INPUT?"),
                        field))
                .orElseGet(() -> section(piping, feeder, "installedSize", "a size that carries its load"));
    }

    private static InletNotKnown section(Piping piping, int s, String entry, String what) {
        String id = piping.section(s).id();
        return new InletNotKnown(
                "of section " + id + " ahead of it " + what + " is not entered",
                Question.fitter("What is to be entered for section " + id + ", ahead of {who}: " + what + "?"),
                "/sections/" + s + "/" + entry);
    }
}
