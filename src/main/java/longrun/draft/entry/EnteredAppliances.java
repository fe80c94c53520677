package longrun.draft.entry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longrun.plan.ApplianceNames;
import longrun.plan.ApplianceNames.Told;
import longrun.plan.choice.ApplianceKind;
import longrun.plan.choice.Named;
import longrun.words.Names;

/** The appliances of a draft by what each is called, also while the draft can't be read as a plan. */
public final class EnteredAppliances {

    private final List<Told> all = new ArrayList<>();
    private final ApplianceNames names;

    private EnteredAppliances(Entered draft) {
        draft.at("/appliances")
                .forEach(a -> all.add(
                        new Told(a.textOf("id"), a.textOf("name"), Named.find(ApplianceKind.class, a.textOf("kind")))));
        names = ApplianceNames.of(all);
    }

    public static EnteredAppliances of(Entered draft) {
        return new EnteredAppliances(draft);
    }

    /** What the appliance at an index is called, without an article. */
    public String name(int index) {
        return index < all.size() ? names.name(all.get(index)) : "appliance";
    }

    /** What it is called at the head of what is told of it. */
    public String title(int index) {
        return isNamed(index) ? name(index) : Names.capital(name(index));
    }

    /** Whether a person gave it a name. */
    public boolean isNamed(int index) {
        return index < all.size() && all.get(index).isNamed();
    }

    /** What each is called, by its id, in the order of the draft. */
    public Map<String, String> byId() {
        Map<String, String> out = new LinkedHashMap<>();
        all.forEach(a -> out.put(a.id(), names.name(a)));
        return out;
    }
}
