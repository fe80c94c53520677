package longrun.rules.surroundings;

import java.util.ArrayList;
import java.util.List;
import longrun.finding.EntryName;
import longrun.plan.Fact;
import longrun.plan.Regulator;
import longrun.plan.choice.RegulatorKind;
import longrun.plan.choice.Setting;
import longrun.quantity.Length;
import longrun.rules.limit.State;
import longrun.rules.limit.Threshold;
import longrun.rules.regulator.Regulators;
import longrun.rules.shape.House;
import longrun.rules.shape.Judge;
import longrun.rules.shape.Place;
import longrun.rules.shape.Question;
import longrun.rules.shape.Rule;
import longrun.rules.shape.Verdict;

/** A regulator on the wall keeps out of snow and ice sliding off the roof, where there is snow (TR-07). */
final class RegulatorWeather implements Rule {

    @Override
    public String name() {
        return "regulator-weather";
    }

    @Override
    public List<Verdict> judge(House house) {
        Threshold own = house.limits().get(name(), "");
        Fact<Length> snow = Snow.at(house);
        List<Verdict> verdicts = new ArrayList<>();
        for (Regulators.At at : Regulators.listIn(house)) {
            verdicts.add(judge(own, at.regulator(), at.place(), snow));
        }
        return verdicts;
    }

    private Verdict judge(Threshold own, Regulator r, Place place, Fact<Length> snow) {
        if (r.setting().isUnknown() || r.kind().isUnknown()) {
            return Verdict.of(name(), place, State.ASKS); // asked at the regulator
        }
        boolean onTheWall = r.setting().is(Setting.OUTDOORS)
                && r.kind().is(k -> k == RegulatorKind.SECOND_STAGE || k == RegulatorKind.TWO_PSI)
                && !r.fedBy().is("tank");
        if (!onTheWall || snow.isNone() || snow.is(l -> l.feet() <= 0)) {
            return Judge.notFor(own, place);
        }
        if (r.underEaves().is(true)) {
            return Judge.holds(own, place);
        }
        if (snow.isUnknown()) {
            return Snow.ask(own, place);
        }
        String field = place.pointer() + "/underEaves";
        return r.underEaves().isUnknown()
                ? Judge.asks(
                        own,
                        place,
                        "whether {who} hangs under the eaves or on the gable end is not entered",
                        Question.fitter(
                                "Does {who} hang under the eaves, on the gable end, or under a cover of its own?"),
                        field)
                : Judge.broken(
                        own,
                        place,
                        "{who} hangs in the open " + EntryName.entered("underEaves", r.underEaves())
                                + ", where snow lies "
                                + snow.findText().orElse("") + " deep",
                        "Hang it on the gable end or under the eaves, or give it a cover; brace its riser.",
                        field);
    }
}
