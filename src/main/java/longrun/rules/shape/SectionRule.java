package longrun.rules.shape;

import java.util.ArrayList;
import java.util.List;
import longrun.plan.Section;
import longrun.rules.limit.Threshold;

/** A rule judged at every section of the route. */
public abstract class SectionRule implements Rule {

    @Override
    public Precedence precedence() {
        return Precedence.MISSING;
    }

    @Override
    public final List<Verdict> judge(House house) {
        Threshold own = house.limits().get(name(), "");
        List<Verdict> verdicts = new ArrayList<>();
        List<Section> sections = house.plan().sections();
        for (int i = 0; i < sections.size(); i++) {
            verdicts.add(judge(house, own, sections.get(i), house.section(i)));
        }
        return verdicts;
    }

    public abstract Verdict judge(House house, Threshold own, Section section, Place place);
}
