package longrun.draft;

import java.util.List;
import java.util.stream.Stream;
import longrun.origin.DataFile;
import longrun.origin.DataRow;
import longrun.quantity.Show;

/** The climate a house may begin with: the one full row of published monthly means that is held. */
public final class Climate {

    public static final List<String> MONTHS =
            List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");
    /** Where the row is from. */
    public static final String SOURCE = "typical-year means of a cold inland place, from a secondary source";

    private Climate() {}

    /** Twelve means as written in a plan, January first. */
    public static List<String> coldInland() {
        DataRow row = DataFile.read("climate/climate-samples.csv").rows().stream()
                .filter(r -> r.text("item").equals("monthly_mean_f"))
                .findFirst()
                .orElseThrow();
        return Stream.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")
                .map(m -> Show.plain(row.number(m)) + " degF")
                .toList();
    }

    /** Twelve means as written in a plan, to a tenth of a degree. */
    public static List<String> written(List<Double> means) {
        return means.stream()
                .map(m -> Show.plain(Math.round(m * 10) / 10.0) + " degF")
                .toList();
    }
}
