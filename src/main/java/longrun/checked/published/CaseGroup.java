package longrun.checked.published;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import longrun.origin.DataFile;
import longrun.origin.DataRow;

/**
 * The published cases on one subject, from one file of {@code data/checked}.
 *
 * @param title the subject
 */
public record CaseGroup(String title, List<PublishedCase> cases) {

    private static final List<String> FILES = List.of("pipe", "air", "tank", "water", "year");
    private static final List<CaseGroup> ALL = load();

    /** All groups. */
    public static List<CaseGroup> listAll() {
        return ALL;
    }

    private static List<CaseGroup> load() {
        List<CaseGroup> all = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (String name : FILES) {
            DataFile file = DataFile.read("checked/" + name + ".csv");
            List<PublishedCase> cases = new ArrayList<>();
            for (DataRow row : file.rows()) {
                PublishedCase each = PublishedCase.of(row);
                if (!ids.add(each.id())) {
                    throw row.fault("id", each.id() + " is used twice");
                }
                cases.add(each);
            }
            all.add(new CaseGroup(file.need("title").value(), List.copyOf(cases)));
        }
        return List.copyOf(all);
    }
}
