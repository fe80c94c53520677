package longrun.words;

/** What the kinds of regulator are called, with where they stand. */
public final class RegulatorNames {

    private RegulatorNames() {}

    /** The name of a kind of regulator as written in a plan; "regulator" where it is unknown. */
    public static String of(String kind) {
        return switch (kind) {
            case "first-stage" -> "first stage, at the tank";
            case "second-stage" -> "second stage, on the wall";
            case "integral-two-stage" -> "both stages in one, at the tank";
            case "two-psi" -> "2 psi regulator, on the wall";
            case "line" -> "line regulator, near the appliances";
            case "single-stage" -> "single stage";
            default -> "regulator";
        };
    }
}
