package longrun.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import longrun.paper.page.Html;
import longrun.paper.page.SheetWords;
import longrun.plan.Appliance;
import longrun.plan.Use;
import longrun.quantity.Show;
import longrun.review.Review;
import longrun.tank.Demand;
import longrun.words.Names;
import org.jsoup.nodes.Element;

/** The loads, by appliance and by occasion, with what the tank makes of each; the smaller ones gathered where many are. */
final class LoadTables {

    private static final int NAME = 24;

    private final Review review;
    private final int most;

    /** @param most rows in either table */
    LoadTables(Review review, int most) {
        this.review = review;
        this.most = Math.max(3, most);
    }

    /** Rows the longer of both tables would have. */
    static int rows(Review review) {
        return Math.max(
                review.plan().appliances().size(),
                review.tank().map(t -> t.demands().size()).orElse(0));
    }

    Element element() {
        return Html.besideEachOther(appliances(), occasions()).addClass("loads");
    }

    private List<Element> appliances() {
        List<List<String>> rows = new ArrayList<>();
        List<Appliance> all = review.plan().appliances();
        int own = all.size() > most ? most - 1 : all.size();
        List<Appliance> largest = all.stream()
                .sorted(Comparator.comparingDouble(LoadTables::unknownFirst).reversed())
                .limit(own)
                .toList();
        for (Appliance a : all) {
            if (largest.contains(a)) {
                rows.add(List.of(SheetWords.shortened(review, a, NAME), use(a), input(a)));
            }
        }
        if (own < all.size()) {
            double rest = all.stream()
                    .filter(a -> !largest.contains(a))
                    .mapToDouble(a -> a.input().findValue().orElseThrow().btuh())
                    .sum();
            rows.add(List.of((all.size() - own) + " smaller ones", "", Show.whole(rest)));
        }
        if (rows.isEmpty()) {
            rows.add(List.of("none entered yet", "", SheetWords.BLANK));
        }
        return List.of(
                Html.heading("Load by appliance", "inputs on the plates"),
                Html.table(
                        "Inputs of the appliances",
                        List.of("Appliance", "Use", "Input, Btu/h"),
                        List.of("s", "", "r"),
                        rows));
    }

    /** One that nobody has read is never gathered with others. */
    private static double unknownFirst(Appliance a) {
        return a.input().findValue().map(h -> h.btuh()).orElse(Double.MAX_VALUE);
    }

    private static String input(Appliance a) {
        return a.input().findValue().map(h -> Show.whole(h.btuh())).orElse(SheetWords.BLANK);
    }

    private String use(Appliance a) {
        Map<Integer, String> said = new TreeMap<>();
        review.plan().use().ifPresent(u -> {
            if (u.heating().stream().anyMatch(h -> h.appliance().is(a.id()))) {
                said.put(0, "heats the house");
            }
            if (u.hotWater()
                    .flatMap(w -> w.onDemand())
                    .filter(o -> o.appliance().is(a.id()))
                    .isPresent()) {
                said.put(1, "hot water");
            }
            u.others().stream()
                    .filter(o -> o.appliance().is(a.id()))
                    .findFirst()
                    .ifPresent(o -> said.put(2, other(o)));
        });
        return said.isEmpty() ? "not said" : SheetWords.shortened(String.join(", ", said.values()), 22);
    }

    private static String other(Use.Other other) {
        return other.volumePerYear()
                .findText()
                .map(v -> v + " a year")
                .or(() -> other.hoursPerDay().findValue().map(h -> Show.plain(h) + " h a day"))
                .orElse("gallons not said");
    }

    private List<Element> occasions() {
        List<Demand> all = review.tank().map(t -> t.demands()).orElse(List.of());
        List<Demand> shown = all.stream()
                .filter(d -> all.size() <= most || isKept(all, d))
                .limit(most)
                .toList();
        List<List<String>> rows = new ArrayList<>();
        for (Demand d : shown) {
            rows.add(List.of(
                    SheetWords.shortened(Names.capital(d.name()), NAME),
                    d.btuh().isKnown() ? SheetWords.roughly(d.btuh().number()) : SheetWords.BLANK,
                    status(d),
                    d.withoutEnd() ? "to the last" : d.lasts().orElse(SheetWords.BLANK)));
        }
        if (rows.isEmpty()) {
            rows.add(List.of("Everything firing", SheetWords.BLANK, "not known", SheetWords.BLANK));
        }
        String at = SupplierQuestions.air(review.plan())
                        .map(t -> "at " + t + ", ")
                        .orElse("")
                + SupplierQuestions.refill(review.plan()).map(g -> "gauge " + g).orElse("at the refill gauge")
                + (shown.size() < all.size() ? "; the largest" : "");
        return List.of(
                Html.heading("Load by occasion", at),
                Html.table(
                        "What is asked of the tank, and whether it gives it",
                        List.of("Occasion", "Btu/h", "This tank", "Held for"),
                        List.of("s", "r i", "", ""),
                        rows));
    }

    /** Where many are: everything firing, the day's mean, and the largest of the rest. */
    private boolean isKept(List<Demand> all, Demand d) {
        if (d.equals(all.get(0)) || d.mean()) {
            return true;
        }
        return all.stream()
                .filter(o -> !o.mean() && !o.equals(all.get(0)))
                .sorted(Comparator.comparingDouble(LoadTables::largestFirst))
                .limit(Math.max(1, most - 2))
                .anyMatch(d::equals);
    }

    private static double largestFirst(Demand d) {
        return d.btuh().isKnown() ? -d.btuh().number() : Double.NEGATIVE_INFINITY;
    }

    private static String status(Demand d) {
        return switch (d.status()) {
            case CARRIES -> "carries it";
            case DOUBTFUL -> "in doubt, question 2";
            case SHORT -> "gives less";
            case UNKNOWN -> "not known";
        };
    }
}
