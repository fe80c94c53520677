package longrun.words;

/** What the code profiles are called. */
public final class CodeNames {

    private CodeNames() {}

    /** @param profile as written in the plan; empty where none is entered */
    public static String of(String profile) {
        return switch (profile) {
            case "nfpa-54-58" -> "NFPA 54 and 58";
            case "plumbing-code" -> "plumbing code";
            case "", "fuel-gas-2018" -> "fuel gas code, 2018";
            default -> profile;
        };
    }
}
