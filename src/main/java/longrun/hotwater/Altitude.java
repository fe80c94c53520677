package longrun.hotwater;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import longrun.finding.AskWhom;
import longrun.finding.Citation;
import longrun.finding.Finding;
import longrun.finding.FindingBuilder;
import longrun.finding.RuleName;
import longrun.finding.Severity;
import longrun.origin.Confidence;
import longrun.plan.Appliance;
import longrun.plan.Plan;
import longrun.plan.Site;
import longrun.quantity.Elevation;

/**
 * Input lost to altitude, by every burner and engine: 4 % for each 1,000 ft, above 2,000 ft. Two readings are in
 * use, counted from the sea or only from 2,000 ft up; the safer is the lower output. A label that covers the altitude
 * overrules both. NFPA 54 11.1.2, 2018 IFGC 402.2. Pipe is always sized for the whole input.
 */
public final class Altitude {

    private static final double FREE_FT = 2000;
    private static final double LOST_PER_FT = 0.04 / 1000;
    private static final double SAME_FT = 1e-6;

    private Altitude() {}

    /** Share of input left, counted from the sea once the house stands above 2,000 ft. */
    public static double shareFromSea(Elevation elevation) {
        return elevation.feet() <= FREE_FT ? 1 : Math.max(0, 1 - LOST_PER_FT * elevation.feet());
    }

    /** Share of input left, counted only on the height above 2,000 ft. */
    public static double shareAboveFree(Elevation elevation) {
        return Math.max(0, Math.min(1, 1 - LOST_PER_FT * (elevation.feet() - FREE_FT)));
    }

    /** The safer of the two readings: the lower share. */
    public static double share(Elevation elevation) {
        return Math.min(shareFromSea(elevation), shareAboveFree(elevation));
    }

    /** The appliances whose label does not cover the altitude, or the question for the elevation. */
    public static List<Finding> findings(Plan plan) {
        Optional<Elevation> elevation = plan.site().map(Site::elevation).flatMap(f -> f.findValue());
        if (elevation.isEmpty()) {
            return plan.appliances().isEmpty() ? List.of() : List.of(asks());
        }
        List<Finding> found = new ArrayList<>();
        for (int i = 0; i < plan.appliances().size(); i++) {
            Appliance a = plan.appliances().get(i);
            if (elevation.get().feet() > FREE_FT && !isCovered(a, elevation.get())) {
                found.add(derated(a, elevation.get(), i));
            }
        }
        return List.copyOf(found);
    }

    /** Whether the label or the altitude kit of an appliance covers the height it stands at. */
    public static boolean isCovered(Appliance appliance, Elevation elevation) {
        return appliance.altitudeLabel().is(l -> l.feet() >= elevation.feet() - SAME_FT);
    }

    private static Finding asks() {
        return FindingBuilder.finding(
                        new RuleName("altitude"),
                        Severity.NOTE,
                        "site",
                        new Citation("NFPA 54 11.1.2; IFGC 402.2", "2018", Confidence.SECONDARY))
                .found("the elevation of the house is not entered")
                .required("elevation in ft: above 2,000 ft an appliance gives 4 % less for each 1,000 ft")
                .remedy("Enter the elevation of the house.")
                .ask(AskWhom.OWNER, "How high above the sea does the house stand, in ft?")
                .atEntry("/site/elevation");
    }

    private static Finding derated(Appliance a, Elevation elevation, int index) {
        double low = share(elevation);
        double high = shareAboveFree(elevation);
        String input = a.input()
                .findValue()
                .map(in -> String.format(
                        Locale.ROOT,
                        ": of its input of %,.0f Btu/h %,.0f Btu/h counted from the sea, %,.0f Btu/h counted from"
                                + " 2,000 ft",
                        in.btuh(),
                        in.btuh() * low,
                        in.btuh() * high))
                .orElse("; its input is not entered");
        return FindingBuilder.finding(
                        new RuleName("altitude"),
                        Severity.CAUTION,
                        a.id(),
                        new Citation("NFPA 54 11.1.2; IFGC 402.2", "2018", Confidence.SECONDARY))
                .found(String.format(Locale.ROOT, "the house stands at %,.0f ft%s", elevation.feet(), input) + label(a))
                .required(String.format(
                        Locale.ROOT,
                        "output taken as %.0f %% of the input, the lower of two readings, unless the label covers"
                                + " %,.0f ft",
                        low * 100,
                        elevation.feet()))
                .remedy("Read the altitude on the label, or ask the maker for the kit that covers it.")
                .ask(
                        AskWhom.RATING_PLATE,
                        String.format(
                                Locale.ROOT,
                                "Up to which altitude does the label give the full input? The house stands at %,.0f ft.",
                                elevation.feet()))
                .atEntry("/appliances/" + index + "/altitudeLabel");
    }

    private static String label(Appliance a) {
        return a.altitudeLabel()
                .fold(
                        l -> "; its label covers "
                                + a.altitudeLabel().findText().orElse(""),
                        () -> "; its label names no altitude",
                        () -> "");
    }
}
