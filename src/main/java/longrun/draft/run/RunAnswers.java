package longrun.draft.run;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.draft.sections.Allowance;

/** The answers to a run for each fitting allowance, and the answer shown while an entry is not understood. */
public final class RunAnswers {

    private final Sizer sizer;
    private final Map<Allowance, RunAnswer> answers = new EnumMap<>(Allowance.class);

    public RunAnswers(Sizer sizer) {
        this.sizer = sizer;
    }

    /** Sizes the run as typed; the result holds the answer, or the entries that prevent it. */
    public Sizer.Result size(RunDraft draft) {
        return sizer.size(draft.whole());
    }

    /**
     * Sets the answers to show. While an entry is not understood they are those to the draft before it, if that has the same
     * materials and start: a half-typed number is not an entry.
     *
     * @param wrong the entries that are not understood
     * @param before the draft before the entry; empty where there is none
     */
    public void take(RunDraft draft, Sizer.Result now, List<String> wrong, Optional<RunDraft> before) {
        Optional<RunDraft> answered =
                wrong.isEmpty() ? Optional.of(draft) : before.filter(d -> d.hasSameMaterialsAndStart(draft));
        Sizer.Result shown = wrong.isEmpty() ? now : answered.map(this::size).orElse(Sizer.Result.NONE);
        answers.clear();
        answers.putAll(shown.others());
        answered.ifPresent(d -> answers.put(d.allowance(), shown.answer()));
    }

    /** The answer with a fitting allowance. */
    public RunAnswer at(Allowance allowance) {
        return answers.getOrDefault(allowance, RunAnswer.NOTHING);
    }
}
