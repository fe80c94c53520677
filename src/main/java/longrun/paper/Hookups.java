package longrun.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longrun.paper.page.Html;
import longrun.paper.page.SheetWords;
import longrun.plan.Appliance;
import longrun.plan.Appliance.Part;
import longrun.plan.Distance;
import longrun.plan.Fact;
import longrun.quantity.Length;
import longrun.quantity.Show;
import longrun.review.Review;
import longrun.words.Names;
import longrun.words.Sentence;
import org.jsoup.nodes.Element;

/** Each appliance's last parts in the order the gas meets them. */
final class Hookups {

    private Hookups() {}

    static List<Element> elements(Review review) {
        if (review.plan().appliances().isEmpty()) {
            return List.of();
        }
        List<List<String>> rows = new ArrayList<>();
        for (Appliance a : review.plan().appliances()) {
            rows.add(List.of(
                    Names.of(review, a),
                    a.fedBy().findValue().orElse("no section feeds it"),
                    a.input().findText().map(Sentence::units).orElse(SheetWords.BLANK),
                    parts(a)));
        }
        return List.of(
                Html.heading("Connections", "parts in the order the gas meets them"),
                Html.table(
                        "Each appliance's parts in order",
                        List.of("Appliance", "Ends section", "Input", "From the end of the pipe to the burner"),
                        List.of("z s", "", "r", ""),
                        rows));
    }

    private static String parts(Appliance a) {
        Optional<List<Part>> parts = a.connection().findValue();
        if (parts.isEmpty()) {
            return "not entered yet";
        }
        if (parts.get().isEmpty()) {
            return "no parts";
        }
        return String.join(" \u2192 ", parts.get().stream().map(Hookups::part).toList());
    }

    private static String part(Part p) {
        String name =
                p.part().findValue().map(k -> k.written().replace('-', ' ')).orElse("part not named");
        List<String> said = new ArrayList<>();
        p.size().findText().ifPresent(t -> said.add(t));
        distance(p.distance()).ifPresent(d -> said.add(d + " from the appliance"));
        length(p.nipple()).ifPresent(l -> said.add("nipple " + l));
        length(p.length()).ifPresent(said::add);
        p.capacity().findValue().ifPresent(c -> said.add("rated " + Show.btuh(c.btuh())));
        if (!p.isSeen()) {
            said.add("assumed, not seen");
        }
        return said.isEmpty() ? name : name + " (" + String.join(", ", said) + ")";
    }

    private static Optional<String> distance(Fact<Distance> d) {
        return d.findText();
    }

    private static Optional<String> length(Fact<Length> l) {
        return l.findText();
    }
}
