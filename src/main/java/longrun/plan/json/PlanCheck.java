package longrun.plan.json;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import longrun.plan.Appliance;
import longrun.plan.Fact;
import longrun.plan.Leg;
import longrun.plan.NominalSize;
import longrun.plan.Plan;
import longrun.plan.Regulator;
import longrun.plan.Section;
import longrun.plan.SizeNames;
import longrun.plan.choice.Material;
import longrun.quantity.NotAQuantity;
import longrun.quantity.Pressure;

/** What single entries can't show: ids, references, loops, turns, sizes and pressures that contradict one another. */
final class PlanCheck {

    private static final JsonPointer PRICES = JsonPointer.compile("/prices");

    private final Plan plan;
    private final JsonNode document;
    private final AsWritten written;
    private final BiConsumer<String, String> error;

    private PlanCheck(Plan plan, JsonNode document, AsWritten written, BiConsumer<String, String> error) {
        this.plan = plan;
        this.document = document;
        this.written = written;
        this.error = (inFull, message) -> error.accept(written.pointer(inFull), message);
    }

    static void check(Plan plan, JsonNode document, AsWritten written, BiConsumer<String, String> error) {
        PlanCheck check = new PlanCheck(plan, document, written, error);
        References references = new References(plan, written, check.error);
        references.check();
        check.legs(references);
        check.sizes();
        check.partSizes();
        check.pressures();
        AmountCheck.check(plan, check.error);
    }

    private void legs(References references) {
        for (int i = 0; i < plan.sections().size(); i++) {
            Section section = plan.sections().get(i);
            List<Leg> legs = section.legs().findValue().orElse(List.of());
            Optional<Leg> before = references.parentSection(section).flatMap(PlanCheck::lastLeg);
            String pointer = "/sections/" + i + "/legs";
            if (!written.isWhole(pointer)) {
                continue; // a leg between two may be the one that can't be read
            }
            for (int k = 0; k < legs.size(); k++) {
                Leg leg = legs.get(k);
                if (before.isPresent() && reverses(before.get(), leg)) {
                    error.accept(
                            pointer + "/" + k,
                            "\"" + leg.text() + "\" turns straight back on \""
                                    + before.get().text() + "\": write the way the pipe really goes, or leave the"
                                    + " direction out");
                }
                before = Optional.of(leg);
            }
        }
    }

    private static Optional<Leg> lastLeg(Section section) {
        List<Leg> legs = section.legs().findValue().orElse(List.of());
        return legs.isEmpty() ? Optional.empty() : Optional.of(legs.get(legs.size() - 1));
    }

    private static boolean reverses(Leg before, Leg after) {
        return before.direction().isPresent()
                && after.direction().isPresent()
                && before.direction().get().opposite() == after.direction().get();
    }

    private void sizes() {
        Map<String, Set<String>> ownSizes = ownSizes();
        for (int i = 0; i < plan.sections().size(); i++) {
            Section section = plan.sections().get(i);
            Optional<Material> material = section.material().findValue();
            String at = "/sections/" + i;
            if (material.isEmpty()) {
                anySize(section.installedSize(), at + "/installedSize");
                anySize(section.chosenSize(), at + "/chosenSize");
            } else {
                Set<String> own = section.table().findValue().map(ownSizes::get).orElse(Set.of());
                size(material.get(), section.installedSize(), own, at + "/installedSize");
                size(material.get(), section.chosenSize(), own, at + "/chosenSize");
            }
        }
        Set<String> anyOwn = new HashSet<>();
        plan.tubingTables().forEach(t -> anyOwn.addAll(columns(t)));
        plan.availableSizes().forEach((material, names) -> {
            for (int k = 0; k < names.size(); k++) {
                String at = "/availableSizes/" + material.written() + "/" + k;
                size(material, Fact.known(names.get(k)), anyOwn, at);
            }
        });
        plan.prices().keySet().forEach(this::priceName);
    }

    /** While nobody says what a section is made of, its size is at least one that some pipe is made in. */
    private void anySize(Fact<String> size, String pointer) {
        boolean any = Arrays.stream(Material.values()).anyMatch(m -> size.is(text -> isSize(m, text)));
        if (size.isKnown() && !any) {
            error.accept(
                    pointer,
                    Values.shown(document.at(written.pointer(pointer)))
                            + " is not a size of any material: enter the material, then a size" + " such as "
                            + String.join(", ", SizeNames.standard(Material.STEEL)));
        }
    }

    private static boolean isSize(Material material, String text) {
        try {
            SizeNames.read(material, text, Set.of());
            return true;
        } catch (NotAQuantity e) {
            return false;
        }
    }

    private void partSizes() {
        for (int i = 0; i < plan.appliances().size(); i++) {
            List<Appliance.Part> parts =
                    plan.appliances().get(i).connection().findValue().orElse(List.of());
            for (int k = 0; k < parts.size(); k++) {
                String at = "/appliances/" + i + "/connection/" + k + "/size";
                parts.get(k).size().findValue().ifPresent(text -> {
                    try {
                        NominalSize.read(text);
                    } catch (NotAQuantity e) {
                        error.accept(at, e.advice());
                    }
                });
            }
        }
    }

    private void priceName(String key) {
        String at = PRICES.appendProperty(key).toString();
        for (Material material : Material.values()) {
            if (key.startsWith(material.written() + " ")) {
                size(material, Fact.known(key.substring(material.written().length() + 1)), Set.of(), at);
                return;
            }
        }
        error.accept(at, "\"" + key + "\" names no material and size: write, for example, \"steel 1/2\"");
    }

    /** The columns of the person's own tables by the table's name. */
    private Map<String, Set<String>> ownSizes() {
        Map<String, Set<String>> own = new HashMap<>();
        plan.tubingTables()
                .forEach(t -> t.name()
                        .findValue()
                        .ifPresent(name ->
                                own.computeIfAbsent(name, n -> new HashSet<>()).addAll(columns(t))));
        return own;
    }

    private static List<String> columns(Plan.TubingTable table) {
        String head = table.csv().findValue().orElse("").split("\\R", 2)[0];
        List<String> out = new ArrayList<>(List.of(head.split(",")));
        out.replaceAll(String::strip);
        return out.subList(1, Math.max(1, out.size()));
    }

    private void size(Material material, Fact<String> size, Set<String> own, String pointer) {
        size.findValue().ifPresent(text -> {
            try {
                SizeNames.read(material, text, own);
            } catch (NotAQuantity e) {
                error.accept(pointer, e.advice());
            }
        });
    }

    private void pressures() {
        for (int i = 0; i < plan.regulators().size(); i++) {
            Regulator r = plan.regulators().get(i);
            String at = "/regulators/" + i;
            positive(r.outlet(), at + "/outlet", "an outlet pressure");
            positive(r.allowedDrop(), at + "/allowedDrop", "an allowed drop");
            Optional<Pressure> outlet = r.outlet().findValue();
            Optional<Pressure> drop = r.allowedDrop().findValue();
            if (outlet.isPresent()
                    && drop.isPresent()
                    && drop.get().psi() >= outlet.get().psi()) {
                error.accept(
                        at + "/allowedDrop",
                        "\"" + r.allowedDrop().findText().orElse("") + "\" uses up the whole outlet pressure \""
                                + r.outlet().findText().orElse("") + "\": write a drop smaller than the outlet");
            }
        }
    }

    private void positive(Fact<Pressure> pressure, String pointer, String what) {
        if (pressure.is(p -> p.psi() <= 0)) {
            error.accept(
                    pointer,
                    "\"" + pressure.findText().orElse("") + "\" is not a pressure to work with: write " + what
                            + " above zero");
        }
    }
}
