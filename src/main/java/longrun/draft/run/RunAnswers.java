package longrun.draft.run;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longrun.draft.sections.Allowance;

/** What a run is answered, at each position of the fitting switch, and what stands while an entry is not understood. */
public final class RunAnswers {

    private final Sizer sizer;
    private final Map<Allowance, RunAnswer> answers = new EnumMap<>(Allowance.class);

    public RunAnswers(Sizer sizer) {
        this.sizer = sizer;
    }

    /** Sizes the run as typed, and tells which entries keep an answer from being made. */
    public Sizer.Result size(RunDraft draft) {
        return sizer.size(draft.whole());
    }

    /**
     * Takes the answer that stands now. While an entry is not understood it is the answer to what stood there before
     * it, if that was asked alike: a half-typed number is no entry.
     *
     * @param wrong which entries are not understood
     * @param before the draft before the entry
     */
    public void take(RunDraft draft, Sizer.Result now, List<String> wrong, Optional<RunDraft> before) {
        Optional<RunDraft> answered = wrong.isEmpty() ? Optional.of(draft) : before.filter(d -> d.isAskedLike(draft));
        Sizer.Result shown = wrong.isEmpty() ? now : answered.map(this::size).orElse(Sizer.Result.NONE);
        answers.clear();
        answers.putAll(shown.others());
        answered.ifPresent(d -> answers.put(d.allowance(), shown.answer()));
    }

    /** The answer at a position of the switch. */
    public RunAnswer at(Allowance allowance) {
        return answers.getOrDefault(allowance, RunAnswer.NOTHING);
    }
}
