package longrun.words;

import longrun.plan.choice.CodeProfile;
import longrun.plan.choice.Named;

/** What the code profiles are called. */
public final class CodeNames {

    private CodeNames() {}

    /** @param profile as written in the plan; empty where none is entered */
    public static String of(String profile) {
        return profile.isEmpty()
                ? CodeProfile.FUEL_GAS_2018.label()
                : Named.find(CodeProfile.class, profile).map(CodeProfile::label).orElse(profile);
    }
}
