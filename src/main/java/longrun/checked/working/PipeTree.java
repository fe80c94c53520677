package longrun.checked.working;

import java.util.ArrayList;
import java.util.List;
import longrun.capacity.CapacityTables;
import longrun.checked.published.CaseInput;
import longrun.origin.DataFile;
import longrun.piping.Piping;
import longrun.plan.Plan;
import longrun.plan.json.PlanReader;
import longrun.plan.json.Reading;
import longrun.quantity.HeatRate;
import longrun.sizing.SectionSize;
import longrun.sizing.Sizing;

/**
 * A tree of pipe behind one regulator, made into a plan from its short form: {@code pipes=a:R:20:0 b:a:10:35} are pieces, each
 * with what it branches from, its length in feet, and the load at its end in thousand Btu/h.
 */
final class PipeTree {

    private final CaseInput given;
    private final Sizing sizing;

    private PipeTree(CaseInput given) {
        this.given = given;
        this.sizing = Sizing.of(Piping.of(plan(given)), CapacityTables.standard());
    }

    static PipeTree of(CaseInput given) {
        return new PipeTree(given);
    }

    /** The size of each piece asked for; tube by its outside diameter where the case names it so. */
    Answer sizes() {
        List<String> out = new ArrayList<>();
        for (SectionSize s : asked()) {
            out.add((byOutside() ? s.sizeOd() : s.size()).orElse("none"));
        }
        return Answer.sizes(out);
    }

    /** Capacity of the size of each piece asked for, thousand Btu/h. */
    Answer capacities() {
        return Answer.numbers(asked().stream()
                .map(s -> s.capacity().map(HeatRate::btuh).orElse(Double.NaN) / 1000)
                .toList());
    }

    /** Load of each piece asked for, thousand Btu/h. */
    Answer loads() {
        return Answer.numbers(asked().stream()
                .map(s -> s.load().map(HeatRate::btuh).orElse(Double.NaN) / 1000)
                .toList());
    }

    private List<SectionSize> asked() {
        List<SectionSize> out = new ArrayList<>();
        for (String id : given.words("ask")) {
            out.add(sizing.section(
                    sizing.piping().findSection(id).orElseThrow(() -> given.fault("there is no piece " + id))));
        }
        return out;
    }

    private boolean byOutside() {
        return given.find("named").filter("outside"::equals).isPresent();
    }

    private static Plan plan(CaseInput given) {
        StringBuilder sections = new StringBuilder();
        StringBuilder appliances = new StringBuilder();
        String own = given.find("own").isPresent() ? ",\"table\":\"own\"" : "";
        for (String pipe : given.words("pipes")) {
            String[] p = pipe.split(":");
            if (p.length != 4) {
                throw given.fault("a piece is written id:from:feet:load, not " + pipe);
            }
            sections.append(sections.isEmpty() ? "" : ",")
                    .append("{\"id\":\"" + p[0] + "\",\"from\":\"" + p[1] + "\",\"material\":\""
                            + given.text("material") + "\",\"legs\":[\"" + p[2] + " ft\"]" + own + "}");
            if (!p[3].equals("0")) {
                appliances
                        .append(appliances.isEmpty() ? "" : ",")
                        .append("{\"id\":\"at-" + p[0] + "\",\"fedBy\":\"" + p[0] + "\",\"input\":\"" + p[3]
                                + " kBtu/h\",\"connection\":[]}");
            }
        }
        String text = "{\"format\":\"longrun-plan/1\",\"fittingAllowance\":\""
                + given.find("allowance").orElse("none") + "\"" + ownTable(given)
                + ",\"regulators\":[{\"id\":\"R\",\"kind\":\"second-stage\",\"fedBy\":\"tank\",\"outlet\":\""
                + given.text("inlet") + "\",\"allowedDrop\":\"" + given.text("drop") + "\"}],\"sections\":[" + sections
                + "],\"appliances\":[" + appliances + "]}";
        return read(given, text);
    }

    static Plan read(CaseInput given, String text) {
        Reading reading = PlanReader.read(text);
        return reading.plan().orElseThrow(() -> given.fault(reading.errors().toString()));
    }

    /** A table for another gas is entered as a person's own table, since the program's tables are for propane alone. */
    private static String ownTable(CaseInput given) {
        return given.find("own")
                .map(name -> {
                    DataFile file = DataFile.read("checked/" + name + ".csv");
                    StringBuilder csv = new StringBuilder(String.join(",", file.headings()));
                    file.rows()
                            .forEach(row -> csv.append("\\n")
                                    .append(String.join(
                                            ",",
                                            file.headings().stream()
                                                    .map(row::text)
                                                    .toList())));
                    return ",\"tubingTables\":[{\"name\":\"own\",\"material\":\"" + given.text("material")
                            + "\",\"inlet\":\"" + given.text("inlet") + "\",\"drop\":\"" + given.text("drop")
                            + "\",\"csv\":\"" + csv + "\"}]";
                })
                .orElse("");
    }
}
