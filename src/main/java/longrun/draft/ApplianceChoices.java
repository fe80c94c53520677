package longrun.draft;

import java.util.LinkedHashMap;
import java.util.Map;
import longrun.draft.entry.Entered;
import longrun.plan.choice.ApplianceKind;
import longrun.plan.choice.Named;

/** The appliances of a house to choose from. */
public final class ApplianceChoices {

    private ApplianceChoices() {}

    /** What each is called, by its id: its name, else its kind, else the id. */
    public static Map<String, String> of(Entered draft) {
        Map<String, String> out = new LinkedHashMap<>();
        draft.at("/appliances").forEach(a -> {
            String id = a.textOf("id");
            String kind = a.textOf("kind");
            String label = Named.find(ApplianceKind.class, kind)
                    .map(ApplianceKind::label)
                    .orElse(id);
            out.put(id, a.textOf("name", label));
        });
        return out;
    }
}
