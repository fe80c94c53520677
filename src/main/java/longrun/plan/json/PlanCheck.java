package longrun.plan.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import longrun.plan.Fact;
import longrun.plan.FittingAllowance;
import longrun.plan.Leg;
import longrun.plan.Material;
import longrun.plan.Plan;
import longrun.plan.Regulator;
import longrun.plan.Section;
import longrun.plan.SizeNames;
import longrun.quantity.NotAQuantity;
import longrun.quantity.Pressure;

/** What single entries can't show: ids, references, loops, turns, sizes and pressures that contradict one another. */
final class PlanCheck {

    private final Plan plan;
    private final JsonNode document;
    private final BiConsumer<String, String> error;

    private PlanCheck(Plan plan, JsonNode document, BiConsumer<String, String> error) {
        this.plan = plan;
        this.document = document;
        this.error = error;
    }

    static void check(Plan plan, JsonNode document, BiConsumer<String, String> error) {
        PlanCheck check = new PlanCheck(plan, document, error);
        References references = new References(plan, error);
        references.check();
        check.legs(references);
        check.sizes();
        check.pressures();
        check.counts();
        check.amounts();
    }

    private void legs(References references) {
        for (int i = 0; i < plan.sections().size(); i++) {
            Section section = plan.sections().get(i);
            List<Leg> legs = section.legs().findValue().orElse(List.of());
            Optional<Leg> before = references.parentSection(section).flatMap(PlanCheck::lastLeg);
            String pointer = Pointer.child(Pointer.item("/sections", i), "legs");
            for (int k = 0; k < legs.size(); k++) {
                Leg leg = legs.get(k);
                if (before.isPresent() && reverses(before.get(), leg)) {
                    String at = document.at(pointer).isArray() ? Pointer.item(pointer, k) : pointer;
                    error.accept(
                            at,
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
        for (int i = 0; i < plan.sections().size(); i++) {
            Section section = plan.sections().get(i);
            Optional<Material> material = section.material().findValue();
            if (material.isPresent()) {
                String at = Pointer.item("/sections", i);
                Set<String> own = ownSizes(section);
                size(material.get(), section.installedSize(), own, Pointer.child(at, "installedSize"));
                size(material.get(), section.chosenSize(), own, Pointer.child(at, "chosenSize"));
            }
        }
        Set<String> anyOwn = new HashSet<>();
        plan.tubingTables().forEach(t -> anyOwn.addAll(columns(t)));
        plan.availableSizes().forEach((material, names) -> {
            for (int k = 0; k < names.size(); k++) {
                String at = Pointer.item(Pointer.child("/availableSizes", material.written()), k);
                size(material, Fact.known(names.get(k)), anyOwn, at);
            }
        });
        plan.prices().keySet().forEach(this::priceName);
    }

    private void priceName(String key) {
        String at = Pointer.child("/prices", key);
        for (Material material : Material.values()) {
            if (key.startsWith(material.written() + " ")) {
                size(material, Fact.known(key.substring(material.written().length() + 1)), Set.of(), at);
                return;
            }
        }
        error.accept(at, "\"" + key + "\" names no material and size: write, for example, \"steel 1/2\"");
    }

    private Set<String> ownSizes(Section section) {
        Set<String> own = new HashSet<>();
        section.table()
                .findValue()
                .ifPresent(name -> plan.tubingTables().stream()
                        .filter(t -> t.name().is(name))
                        .forEach(t -> own.addAll(columns(t))));
        return own;
    }

    private static List<String> columns(Plan.TubingTable table) {
        String head = table.csv().findValue().orElse("").split("\\R", 2)[0];
        List<String> out = new ArrayList<>(List.of(head.split(",")));
        out.replaceAll(String::strip);
        return out.subList(1, Math.max(1, out.size()));
    }

    private void size(Material material, Fact<String> written, Set<String> own, String pointer) {
        written.findValue().ifPresent(text -> {
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
            String at = Pointer.item("/regulators", i);
            positive(r.outlet(), Pointer.child(at, "outlet"), "an outlet pressure");
            positive(r.allowedDrop(), Pointer.child(at, "allowedDrop"), "an allowed drop");
            Optional<Pressure> outlet = r.outlet().findValue();
            Optional<Pressure> drop = r.allowedDrop().findValue();
            if (outlet.isPresent()
                    && drop.isPresent()
                    && drop.get().psi() >= outlet.get().psi()) {
                error.accept(
                        Pointer.child(at, "allowedDrop"),
                        "\"" + r.allowedDrop().findText().orElse("") + "\" uses up the whole outlet pressure \""
                                + r.outlet().findText().orElse("") + "\": write a drop smaller than the outlet");
            }
        }
    }

    private void positive(Fact<Pressure> pressure, String pointer, String what) {
        if (pressure.is(p -> p.psi() <= 0)) {
            error.accept(
                    pointer,
                    "\"" + pressure.findText().orElse("") + "\" is no pressure to work with: write " + what
                            + " above zero");
        }
    }

    private void counts() {
        plan.site().ifPresent(site -> {
            if (site.monthlyMeanTemp().is(t -> t.size() != 12)) {
                error.accept("/site/monthlyMeanTemp", "write twelve temperatures, January first");
            }
            site.coldWater().ifPresent(c -> oneOrTwelve(c.temp(), "/site/coldWater/temp"));
        });
        plan.use()
                .flatMap(longrun.plan.Use::hotWater)
                .flatMap(longrun.plan.Use.HotWater::storage)
                .ifPresent(s -> oneOrTwelve(s.roomTemp(), "/use/hotWater/storage/roomTemp"));
        plan.use().ifPresent(use -> {
            for (int i = 0; i < use.others().size(); i++) {
                if (use.others().get(i).months().is(m -> m.stream().anyMatch(PlanCheck::noMonth))) {
                    error.accept("/use/others/" + i + "/months", "write months as whole numbers from 1 to 12");
                }
            }
        });
    }

    private static boolean noMonth(double month) {
        return month < 1 || month > 12 || month != Math.rint(month);
    }

    private void oneOrTwelve(Fact<? extends List<?>> values, String pointer) {
        if (values instanceof Fact.Known<? extends List<?>> known
                && known.value().size() != 1
                && known.value().size() != 12) {
            error.accept(pointer, "write one temperature, or twelve, January first");
        }
    }

    private void amounts() {
        for (int i = 0; i < plan.appliances().size(); i++) {
            if (plan.appliances().get(i).input().is(h -> h.btuh() <= 0)) {
                error.accept(
                        "/appliances/" + i + "/input",
                        "an input of zero fires nothing: write the INPUT of the rating plate, propane line");
            }
        }
        plan.diversity().ifPresent(d -> {
            if (d.share().is(s -> s.fraction() <= 0 || s.fraction() > 1)) {
                error.accept("/diversity/share", "write a share above 0 and up to 100 %");
            }
        });
        if (plan.fittingAllowance()
                .is(a -> a instanceof FittingAllowance.Share s && s.share().fraction() > 3)) {
            error.accept(
                    "/fittingAllowance", "more than 300 % for fittings: write none, counted, or a share such as 20 %");
        }
        for (Map.Entry<Material, List<String>> e : plan.availableSizes().entrySet()) {
            if (e.getValue().isEmpty()) {
                error.accept(
                        Pointer.child("/availableSizes", e.getKey().written()),
                        "an empty list leaves no size to choose: name the sizes, or leave the entry out");
            }
        }
    }
}
