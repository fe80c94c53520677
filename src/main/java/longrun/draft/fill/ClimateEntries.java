package longrun.draft.fill;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import longrun.draft.entry.DraftEdit;
import longrun.draft.entry.DraftValue;
import longrun.draft.entry.MonthlyMeans;
import longrun.fuel.StartingClimate;
import longrun.quantity.Measure;
import longrun.quantity.Show;
import longrun.quantity.Typed;
import longrun.words.UnitSystem;

/**
 * The climate in a plan document: twelve monthly means and the winter design temperature. A plan holds all twelve or none;
 * while one cannot be read, what is typed is kept beside the plan.
 */
public final class ClimateEntries {

    private static final String SITE = "site";
    private static final String DESIGN = "winterDesignTemp";
    private static final String COLDEST = "coldest";
    private static final String CLIMATE = "climate";
    private static final MonthlyMeans MEANS = new MonthlyMeans("/" + FillDraft.OWN + "/months");

    private ClimateEntries() {}

    /** Enters a published climate as starting values. */
    public static void begin(ObjectNode plan, StartingClimate climate) {
        write(plan, climate.meansF().stream().map(ClimateEntries::written).toList());
        plan.withObject("/" + SITE).put(DESIGN, written(climate.designF()));
        ObjectNode own = plan.withObject("/" + FillDraft.OWN);
        own.put(CLIMATE, climate.id());
        own.remove(COLDEST);
        FillDraft.setStartingValue(plan, FillEntry.DESIGN.name(), true);
    }

    private static String written(double degF) {
        return Show.plain(Math.round(degF * 10) / 10.0) + " degF";
    }

    /** The published climate that was entered, while its twelve months are unchanged; else empty. */
    public static Optional<StartingClimate> begun(ObjectNode plan) {
        return StartingClimate.find(plan.path(FillDraft.OWN).path(CLIMATE).asText())
                .filter(c -> texts(plan)
                        .equals(c.meansF().stream().map(ClimateEntries::written).toList()));
    }

    /** The texts of the twelve fields, as stored. */
    public static List<String> texts(ObjectNode plan) {
        return MEANS.texts(DraftValue.of(plan));
    }

    /** Stores what was typed for a month, January 0. */
    public static void typeMonth(ObjectNode plan, int month, String typed, UnitSystem units) {
        List<String> texts = texts(plan);
        texts.set(month, typed.isBlank() ? "" : Typed.quantity(typed, FillEntry.COLDEST.unit(units)));
        plan.withObject("/" + FillDraft.OWN).remove(COLDEST);
        write(plan, texts);
    }

    /** Stores what was typed for the coldest month and moves all twelve by as much; text that is not a temperature is kept as typed. */
    public static void typeColdest(ObjectNode plan, String typed, UnitSystem units) {
        String stored = typed.isBlank() ? "" : Typed.quantity(typed, FillEntry.COLDEST.unit(units));
        ObjectNode own = plan.withObject("/" + FillDraft.OWN);
        List<Double> now = means(plan);
        Optional<Double> wanted = read(stored);
        own.put(COLDEST, stored);
        if (wanted.isEmpty() || now.isEmpty()) {
            return;
        }
        double by = wanted.get() - Collections.min(now);
        write(plan, now.stream().map(m -> exactly(m + by)).toList());
        plan.withObject("/" + FillDraft.OWN).put(COLDEST, stored);
    }

    /** Unrounded, so that a month moved up and down again is as it was. */
    private static String exactly(double degF) {
        return Show.plain(degF) + " degF";
    }

    /** The text of the field of the coldest month: what was typed there, else the coldest of the twelve; blank without them. */
    public static String coldest(ObjectNode plan) {
        JsonNode typed = plan.path(FillDraft.OWN).path(COLDEST);
        List<Double> means = means(plan);
        return typed.isTextual() ? typed.asText() : means.isEmpty() ? "" : exactly(Collections.min(means));
    }

    /** The coldest month, January 0; empty while there is no climate. */
    public static Optional<Integer> coldestMonth(ObjectNode plan) {
        List<Double> means = means(plan);
        return means.isEmpty() ? Optional.empty() : Optional.of(means.indexOf(Collections.min(means)));
    }

    private static List<Double> means(ObjectNode plan) {
        List<Double> out = new ArrayList<>();
        texts(plan).forEach(t -> read(t).ifPresent(out::add));
        return out.size() == 12 ? out : List.of();
    }

    private static Optional<Double> read(String stored) {
        return MonthlyMeans.reads(stored)
                ? Optional.of(Measure.TEMPERATURE.read(stored).degF())
                : Optional.empty();
    }

    private static void write(ObjectNode plan, List<String> texts) {
        MEANS.write(new DraftEdit(plan), texts);
    }
}
