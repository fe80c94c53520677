package longrun.checked.working;

import java.util.ArrayList;
import java.util.List;
import longrun.capacity.CapacityTables;
import longrun.checked.published.Given;
import longrun.origin.DataFile;
import longrun.piping.Piping;
import longrun.plan.Plan;
import longrun.plan.json.PlanReader;
import longrun.plan.json.Reading;
import longrun.quantity.HeatRate;
import longrun.sizing.SectionSize;
import longrun.sizing.Sizing;

/**
 * Pipe behind one regulator, written in a few words and made a plan: {@code pipes=a:R:20:0 b:a:10:35} are pieces with what
 * each hangs on, its feet, and the thousand Btu/h at its end.
 */
final class Tree {

    private final Given given;
    private final Sizing sizing;

    private Tree(Given given) {
        this.given = given;
        this.sizing = Sizing.of(Piping.of(plan(given)), CapacityTables.standard());
    }

    static Tree of(Given given) {
        return new Tree(given);
    }

    /** The sizes asked for, tube by its outside diameter where the case names it so. */
    Answer sizes() {
        List<String> out = new ArrayList<>();
        for (SectionSize s : asked()) {
            out.add((byOutside() ? s.sizeOd() : s.size()).orElse("none"));
        }
        return Answer.sizes(out);
    }

    /** What the size of each piece asked for carries, thousand Btu/h. */
    Answer capacities() {
        return Answer.numbers(asked().stream()
                .map(s -> s.capacity().map(HeatRate::btuh).orElse(Double.NaN) / 1000)
                .toList());
    }

    /** What each piece asked for must carry, thousand Btu/h. */
    Answer loads() {
        return Answer.numbers(asked().stream()
                .map(s -> s.load().map(HeatRate::btuh).orElse(Double.NaN) / 1000)
                .toList());
    }

    private List<SectionSize> asked() {
        List<SectionSize> out = new ArrayList<>();
        for (String id : given.words("ask")) {
            out.add(sizing.section(sizing.piping().findSection(id).orElseThrow(() -> given.fault("no piece " + id))));
        }
        return out;
    }

    private boolean byOutside() {
        return given.find("named").filter("outside"::equals).isPresent();
    }

    private static Plan plan(Given given) {
        StringBuilder sections = new StringBuilder();
        StringBuilder appliances = new StringBuilder();
        String own = given.find("own").isPresent() ? ",\"table\":\"own\"" : "";
        for (String pipe : given.words("pipes")) {
            String[] p = pipe.split(":");
            if (p.length != 4) {
                throw given.fault("a piece is id:from:feet:load, not " + pipe);
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

    static Plan read(Given given, String text) {
        Reading reading = PlanReader.read(text);
        return reading.plan().orElseThrow(() -> given.fault(reading.errors().toString()));
    }

    /** A table for another gas goes in as a person's own, since the program's tables are for propane alone. */
    private static String ownTable(Given given) {
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
