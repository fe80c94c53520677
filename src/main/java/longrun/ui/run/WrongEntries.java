package longrun.ui.run;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import longrun.draft.run.Line;
import longrun.draft.run.RunDraft;
import longrun.draft.run.Sizer;
import longrun.ui.frame.Entry;

/** Puts what is wrong beside its field. */
final class WrongEntries {

    private WrongEntries() {}

    /** Shows each error at its entry and tells where they are, in words; empty where nothing keeps an answer from being made. */
    static List<String> show(RunDraft draft, LinesTable lines, List<Sizer.EntryError> errors) {
        Set<String> where = new LinkedHashSet<>();
        List<Line> all = draft.lines();
        for (Sizer.EntryError error : errors) {
            Optional<Integer> line = draft.lineAt(error.pointer()).filter(i -> i < all.size());
            if (line.isEmpty()) {
                where.add(error.message());
                continue;
            }
            Entry entry = lines.row(line.get()).entry(column(error.pointer()));
            if (!entry.isWrong()) {
                entry.wrong(error.message());
            }
        }
        for (int i = 0; i < all.size(); i++) {
            for (Line.Column column : List.of(Line.Column.LENGTH, Line.Column.INPUT)) {
                if (lines.row(i).entry(column).isWrong()) {
                    where.add("line " + all.get(i).id() + ", " + column.written());
                }
            }
            lines.row(i).markWrong();
        }
        return new ArrayList<>(where);
    }

    private static Line.Column column(String pointer) {
        return pointer.startsWith("/appliances") ? Line.Column.INPUT : Line.Column.LENGTH;
    }
}
