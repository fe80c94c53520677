package longrun.draft;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** Where entries stand that a plan may write once or as a list. */
public final class WrittenPlaces {

    private WrittenPlaces() {}

    /** The pointers of what stands there; the plain one where nothing does. */
    public static List<String> of(HouseSession session, String... pointers) {
        List<String> out = new ArrayList<>();
        for (String pointer : pointers) {
            JsonNode there = session.at(pointer);
            if (there.isArray()) {
                for (int i = 0; i < there.size(); i++) {
                    out.add(pointer + "/" + i);
                }
            } else if (there.isObject()) {
                out.add(pointer);
            }
        }
        return out.isEmpty() ? List.of(pointers[0]) : List.copyOf(out);
    }
}
