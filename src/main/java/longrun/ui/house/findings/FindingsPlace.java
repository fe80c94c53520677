package longrun.ui.house.findings;

import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longrun.draft.PlaceKind;
import longrun.draft.PlaceStatus;
import longrun.draft.WrongEntry;
import longrun.finding.Finding;
import longrun.finding.Severity;
import longrun.review.Review;
import longrun.ui.field.FieldList;
import longrun.ui.frame.Dom;
import longrun.ui.frame.Scale;
import longrun.ui.place.HousePage;
import longrun.ui.place.Place;
import longrun.words.Names;

/**
 * What is wrong or doubtful, and the questions to take along: by severity, by place, or by who can answer. Each has the
 * way to the field that mends it and the answer it was given; below them stand all rules with their state.
 */
public final class FindingsPlace implements Place {

    /** How the findings are sorted. */
    public enum Sorting {
        SEVERITY("By severity", "what could harm first"),
        PLACE("By place", "one thing after another"),
        WHOM("By who can answer", "questions to take along");

        private final String title;
        private final String note;

        Sorting(String title, String note) {
            this.title = title;
            this.note = note;
        }
    }

    private final HousePage desk;
    private final FieldList fields = new FieldList();
    private final Scale<Sorting> sorting;
    private final Element groups = Dom.el("div", "groups");
    private final RuleList rules;
    private final NextQuestions next;
    private final Element element;
    private Sorting by = Sorting.SEVERITY;
    private String shown = "?";

    public FindingsPlace(HousePage desk) {
        this.desk = desk;
        sorting = new Scale<>(
                "sorting", "h-sorting", List.of(Sorting.values()), s -> Scale.Choice.of(s.title, s.note), this::sort);
        sorting.setValue(by);
        rules = new RuleList(desk);
        next = new NextQuestions(desk, fields);
        element = Dom.el(
                "div",
                "place-body",
                Dom.el(
                        "section",
                        "part",
                        Dom.text("h3", "vh", "How they are sorted").setAttribute("id", "h-sorting"),
                        sorting.getElement()),
                groups,
                rules.element());
    }

    /** Sorts them another way. */
    public void sort(Sorting wanted) {
        by = wanted;
        sorting.setValue(wanted);
        show(true);
    }

    @Override
    public void takenAlong() {
        sort(Sorting.WHOM);
    }

    @Override
    public Element element() {
        return element;
    }

    @Override
    public void show(boolean write) {
        List<Finding> now = desk.session().review().map(Review::findings).orElse(List.of());
        // What is typed into an answer does not draw its line anew.
        List<WrongEntry> wrong = WrongEntry.listIn(desk.session());
        String key = by + " " + desk.session().review().isPresent() + " " + wrong + " "
                + desk.session().at("/answers").size() + " "
                + Arrays.stream(PlaceKind.values())
                        .filter(p -> PlaceStatus.isStarted(desk.session(), p))
                        .toList()
                + " "
                + now.stream()
                        .map(f -> f.rule() + f.at() + f.field() + f.found() + f.required() + f.isOpen())
                        .toList();
        boolean fresh = !key.equals(shown);
        if (fresh) {
            shown = key;
            fields.clear();
            groups.removeAllChildren();
            drawWrong(wrong);
            draw(now, wrong.isEmpty());
        }
        fields.show(write || fresh);
        rules.show();
    }

    /** What was not understood stands first: as long as it does, all the rest is of the draft before it. */
    private void drawWrong(List<WrongEntry> wrong) {
        if (!wrong.isEmpty()) {
            Element part = Dom.el("section", "part", Dom.text("h3", "", "Not understood, " + wrong.size()));
            part.appendChild(Dom.text(
                    "p",
                    "lede",
                    desk.session().leavesOut()
                            ? "Until these are mended they are left out, as if they were not known."
                            : "Until these are mended, what stands below is of the entries before them."));
            wrong.forEach(w -> part.appendChild(WrongEntryLine.of(w, desk)));
            groups.appendChild(part);
        }
    }

    private void draw(List<Finding> now, boolean allUnderstood) {
        List<Finding> open = now.stream().filter(Finding::isOpen).toList();
        Map<String, List<Finding>> sorted = switch (by) {
            case SEVERITY -> bySeverity(open);
            case PLACE -> byPlace(open);
            case WHOM -> toMend(open);
        };
        sorted.forEach(this::group);
        boolean asked = switch (by) {
            case SEVERITY -> next.draw(groups);
            case PLACE -> false;
            case WHOM -> next.drawByWhom(groups);
        };
        if (sorted.isEmpty() && !asked && allUnderstood) {
            groups.appendChild(Dom.text(
                    "p",
                    "lede",
                    desk.session().review().isPresent()
                            ? "Nothing is found or asked in what has been entered so far."
                            : "Not known: the house can\u2019t be worked out at the moment."));
        }
        List<Finding> answered = now.stream().filter(f -> !f.isOpen()).toList();
        if (!answered.isEmpty()) {
            group("Answered by whoever decides", answered);
        }
    }

    private static Map<String, List<Finding>> bySeverity(List<Finding> open) {
        Map<String, List<Finding>> out = new LinkedHashMap<>();
        for (Severity each : List.of(Severity.MUST_FIX, Severity.CAUTION)) {
            List<Finding> own = open.stream().filter(f -> f.severity() == each).toList();
            if (!own.isEmpty()) {
                out.put(
                        switch (each) {
                            case MUST_FIX -> "Must fix";
                            case CAUTION, NOTE -> "Caution";
                        },
                        own);
            }
        }
        return out;
    }

    private Map<String, List<Finding>> byPlace(List<Finding> open) {
        Map<String, List<Finding>> out = new LinkedHashMap<>();
        for (Finding f : open) {
            String name = desk.session().review().map(r -> Names.of(r, f.at())).orElse(f.at());
            String title = switch (name) {
                case "plan" -> "The plan as a whole";
                case "site" -> "The house and its ground";
                case "tank" -> "The tank";
                case "hot-water" -> "Hot water";
                default -> Names.capital(name);
            };
            out.computeIfAbsent(title, k -> new ArrayList<>()).add(f);
        }
        return out;
    }

    private static Map<String, List<Finding>> toMend(List<Finding> open) {
        List<Finding> told =
                open.stream().filter(f -> f.severity() != Severity.NOTE).toList();
        return told.isEmpty() ? Map.of() : Map.of("To be mended", told);
    }

    private void group(String title, List<Finding> findings) {
        Element part = Dom.el("section", "part", Dom.text("h3", "", title + ", " + findings.size()));
        findings.forEach(f -> part.appendChild(
                Dom.el("div", "", HouseFinding.of(f, desk).appendChild(FindingReply.of(desk, fields, f)))));
        groups.appendChild(part);
    }

    @Override
    public void focus(String pointer) {
        if (pointer.startsWith("/answers")) {
            fields.focus(pointer);
        }
    }

    @Override
    public Map<String, String> heard() {
        return fields.heard();
    }
}
