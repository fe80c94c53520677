package longrun.words;

/** What regulators are called, with what they do. */
public final class RegulatorNames {

    private RegulatorNames() {}

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
