package longrun.tank;

import java.util.List;
import longrun.origin.DataFile;
import longrun.plan.choice.Placement;

/**
 * How far a tank may be filled: 80 % of its water capacity in practice, less where the liquid is cold, because the code
 * limits weight: share = filling density / (specific gravity at 60 degF x volume factor) (29 CFR 1910.110; NFPA 58).
 */
public final class FillLimit {

    /** The share a tank is filled to in practice. */
    public static final double USUAL = 0.80;

    private static final double GRAVITY = 0.504;
    private static final List<Band> BANDS = DataFile.read("tanks/filling-density.csv").rows().stream()
            .map(r -> new Band(
                    r.choice("placement", Placement.class) == Placement.UNDERGROUND,
                    r.number("over_gal"),
                    r.number("up_to_gal"),
                    r.number("percent") / 100))
            .toList();

    /** Filling density of tanks over one capacity up to another. */
    private record Band(boolean underground, double overGal, double upToGal, double density) {}

    private FillLimit() {}

    /** The code's own limit: share of the water capacity liquid at this temperature may take up. */
    public static double byWeight(double liquidF, double waterGal, boolean underground) {
        return byWeight(liquidF, waterGal, underground, GRAVITY);
    }

    /**
     * The same for propane of another weight.
     *
     * @param gravity weight at 60 degF over that of water, within the filling density's 0.504 to 0.510
     */
    public static double byWeight(double liquidF, double waterGal, boolean underground, double gravity) {
        return density(waterGal, underground) / (gravity * Propane.volumeFactor(liquidF));
    }

    /** What a delivery fills to: the lesser of 80 % and the code's limit. */
    public static double share(double liquidF, double waterGal, boolean underground) {
        return Math.min(USUAL, byWeight(liquidF, waterGal, underground));
    }

    private static double density(double waterGal, boolean underground) {
        for (Band b : BANDS) {
            if (b.underground() == underground && waterGal > b.overGal() && waterGal <= b.upToGal()) {
                return b.density();
            }
        }
        return BANDS.get(0).density(); // no tank holds nothing: the least density does no harm
    }
}
