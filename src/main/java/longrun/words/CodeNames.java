package longrun.words;

import longrun.plan.choice.CodeProfile;
import longrun.plan.choice.Named;

/** The names of the code profiles (an edition of the code with its amendments). */
public final class CodeNames {

    private CodeNames() {}

    /**
     * The name of a code profile.
     *
     * @param profile as written in the plan; empty where none is entered, which gives the name of the 2018 code
     */
    public static String of(String profile) {
        return profile.isEmpty()
                ? CodeProfile.FUEL_GAS_2018.label()
                : Named.find(CodeProfile.class, profile).map(CodeProfile::label).orElse(profile);
    }
}
