package longrun.draft.entry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longrun.plan.ApplianceNames;
import longrun.plan.ApplianceNames.Identity;
import longrun.plan.choice.ApplianceKind;
import longrun.plan.choice.Named;
import longrun.words.Names;

/** The names of the appliances of a draft, also while the draft can't be read as a plan. */
public final class DraftAppliances {

    private final List<Identity> all = new ArrayList<>();
    private final ApplianceNames names;

    private DraftAppliances(DraftValue draft) {
        draft.at("/appliances")
                .forEach(a -> all.add(new Identity(
                        a.textOf("id"), a.textOf("name"), Named.find(ApplianceKind.class, a.textOf("kind")))));
        names = ApplianceNames.of(all);
    }

    /** The appliances of a draft. */
    public static DraftAppliances of(DraftValue draft) {
        return new DraftAppliances(draft);
    }

    /** The name of the appliance at an index, without an article. */
    public String name(int index) {
        return index < all.size() ? names.name(all.get(index)) : "appliance";
    }

    /** Its name as a heading. */
    public String title(int index) {
        return isNamed(index) ? name(index) : Names.capital(name(index));
    }

    /** Whether a person gave it a name. */
    public boolean isNamed(int index) {
        return index < all.size() && all.get(index).isNamed();
    }

    /** The names by id, in the order of the draft. */
    public Map<String, String> byId() {
        Map<String, String> out = new LinkedHashMap<>();
        all.forEach(a -> out.put(a.id(), names.name(a)));
        return out;
    }
}
