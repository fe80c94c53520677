package longrun.sizing;

import java.util.Locale;
import longrun.Samples;
import longrun.capacity.CapacityTables;
import longrun.piping.Piping;
import longrun.plan.Plan;

/** A plan written in a few words and sized. */
final class Sized {

    private final StringBuilder sections = new StringBuilder();
    private final StringBuilder appliances = new StringBuilder();
    private final String regulator;
    private String more = "";

    private Sized(String outlet, String drop) {
        regulator = "{\"id\":\"R\",\"kind\":\"second-stage\",\"fedBy\":\"tank\",\"outlet\":\"" + outlet
                + "\",\"allowedDrop\":\"" + drop + "\"}";
    }

    static Sized from(String outlet, String drop) {
        return new Sized(outlet, drop);
    }

    Sized with(String entry) {
        more += "," + entry;
        return this;
    }

    /** A section; legs as typed, separated by semicolons. */
    Sized section(String id, String from, String material, String legs, String... entries) {
        sections.append(sections.isEmpty() ? "" : ",")
                .append(String.format(
                        Locale.ROOT,
                        "{\"id\":\"%s\",\"from\":\"%s\",\"material\":\"%s\",\"legs\":[\"%s\"]%s}",
                        id,
                        from,
                        material,
                        legs.replace(";", "\",\""),
                        entries.length == 0 ? "" : "," + String.join(",", entries)));
        return this;
    }

    Sized appliance(String id, String on, String input, String... entries) {
        appliances
                .append(appliances.isEmpty() ? "" : ",")
                .append(String.format(
                        Locale.ROOT,
                        "{\"id\":\"%s\",\"fedBy\":\"%s\",\"input\":\"%s\"%s}",
                        id,
                        on,
                        input,
                        entries.length == 0 ? "" : "," + String.join(",", entries)));
        return this;
    }

    Plan plan() {
        return Samples.plan("{\"format\":\"longrun-plan/1\"" + more + ",\"regulators\":[" + regulator
                + "],\"sections\":[" + sections + "],\"appliances\":[" + appliances + "]}");
    }

    Sizing size() {
        return Sizing.of(Piping.of(plan()), CapacityTables.standard());
    }

    /** The size of the only section, or of the section at an index. */
    String size(int section) {
        return size().section(section).size().orElse("none");
    }
}
