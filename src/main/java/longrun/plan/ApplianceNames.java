package longrun.plan;

import java.util.Collection;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import longrun.plan.choice.ApplianceKind;

/**
 * What the appliances of one plan are called: each by the name a person gave it, else by its kind, else by its id. Two
 * that would be called alike have their ids behind, so that a sentence about one is never read of the other.
 */
public final class ApplianceNames {

    /** What it would be called is written the same, but for capitals, at more than one. */
    private final Set<String> alike;

    /**
     * What an appliance is told by.
     *
     * @param name as typed; blank where none is
     * @param kind empty where it is not entered
     */
    public record Told(String id, String name, Optional<ApplianceKind> kind) {

        static Told of(Appliance a) {
            return new Told(a.id(), a.name().findValue().orElse(""), a.kind().findValue());
        }

        /** Whether a person gave it a name. */
        public boolean isNamed() {
            return !name.isBlank();
        }

        private String alone() {
            return isNamed()
                    ? name
                    : kind.filter(k -> k != ApplianceKind.OTHER)
                            .map(ApplianceKind::label)
                            .orElseGet(() -> ("appliance " + id).strip());
        }

        private String key() {
            return alone().strip().toLowerCase(Locale.ROOT);
        }
    }

    private ApplianceNames(Set<String> alike) {
        this.alike = alike;
    }

    public static ApplianceNames of(Plan plan) {
        return of(plan.appliances().stream().map(Told::of).toList());
    }

    public static ApplianceNames of(Collection<Told> appliances) {
        Set<String> once = new HashSet<>();
        Set<String> alike = new HashSet<>();
        for (Told each : appliances) {
            if (!once.add(each.key())) {
                alike.add(each.key());
            }
        }
        return new ApplianceNames(alike);
    }

    /** Its name without an article, such as {@code furnace} or, of two, {@code furnace attic}. */
    public String name(Told appliance) {
        String alone = appliance.alone();
        return alike.contains(appliance.key()) ? alone + " " + appliance.id() : alone;
    }

    /** Whether another would be called the same. */
    public boolean isAlike(Appliance appliance) {
        return alike.contains(Told.of(appliance).key());
    }

    /** As {@link #name(Told)}. */
    public String name(Appliance appliance) {
        return name(Told.of(appliance));
    }

    /** What it is called within a sentence, such as {@code the furnace}. */
    public String called(Appliance appliance) {
        return "the " + name(appliance);
    }
}
