package longrun.plan;

import java.util.Collection;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import longrun.plan.choice.ApplianceKind;

/**
 * The names of the appliances of one plan: the name a person gave it, else its kind, else its id. Two that would have the
 * same name are followed by their ids, so that a sentence about one is never read as about the other.
 */
public final class ApplianceNames {

    /** Names, in small letters, that more than one appliance would have. */
    private final Set<String> alike;

    /**
     * What an appliance is named by.
     *
     * @param name its name as typed; blank where none is
     * @param kind its kind; empty where it is not entered
     */
    public record Identity(String id, String name, Optional<ApplianceKind> kind) {

        static Identity of(Appliance a) {
            return new Identity(
                    a.id(), a.name().findValue().orElse(""), a.kind().findValue());
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
        return of(plan.appliances().stream().map(Identity::of).toList());
    }

    public static ApplianceNames of(Collection<Identity> appliances) {
        Set<String> once = new HashSet<>();
        Set<String> alike = new HashSet<>();
        for (Identity each : appliances) {
            if (!once.add(each.key())) {
                alike.add(each.key());
            }
        }
        return new ApplianceNames(alike);
    }

    /** Its name without an article, such as {@code furnace} or, of two, {@code furnace attic}. */
    public String name(Identity appliance) {
        String alone = appliance.alone();
        return alike.contains(appliance.key()) ? alone + " " + appliance.id() : alone;
    }

    /** Whether another appliance would have the same name. */
    public boolean isAlike(Appliance appliance) {
        return alike.contains(Identity.of(appliance).key());
    }

    /** As {@link #name(Identity)}. */
    public String name(Appliance appliance) {
        return name(Identity.of(appliance));
    }

    /** Its name within a sentence, such as {@code the furnace}. */
    public String called(Appliance appliance) {
        return "the " + name(appliance);
    }
}
