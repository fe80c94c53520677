package longrun.ui.house.figure;

import com.vaadin.flow.dom.Element;
import java.util.List;
import longrun.ui.frame.Dom;

/** A table told month by month, written with the months across: a year is read along its rows. */
public final class MonthsAcross {

    private MonthsAcross() {}

    /**
     * Writes the table.
     *
     * @param corner what stands over the names of the rows
     * @param months headings first, then a list a month: its name, and a value under each heading
     * @param marked name of the month that is meant
     */
    public static void write(Element head, Element body, String corner, List<List<String>> months, String marked) {
        head.removeAllChildren();
        body.removeAllChildren();
        Element top = Dom.el("tr", "", Dom.text("th", "", corner).setAttribute("scope", "col"));
        List<List<String>> all = months.subList(1, months.size());
        all.forEach(
                m -> top.appendChild(Dom.text("th", css(m, marked), m.get(0)).setAttribute("scope", "col")));
        head.appendChild(top);
        for (int row = 1; row < months.get(0).size(); row++) {
            int at = row;
            String unit = unit(all.stream().map(m -> m.get(at)).toList());
            String name = months.get(0).get(row) + (unit.isEmpty() ? "" : ", " + unit);
            Element tr = Dom.el("tr", "", Dom.text("th", "", name).setAttribute("scope", "row"));
            // what is not known of the whole year is said once, not twelve times across the page
            if (all.size() > 1
                    && all.stream().map(m -> m.get(at)).distinct().count() == 1
                    && !isNumber(all.get(0).get(at))) {
                tr.appendChild(Dom.text("td", "all", all.get(0).get(at)).setAttribute("colspan", all.size() + ""));
            } else {
                all.forEach(m -> tr.appendChild(Dom.text("td", css(m, marked), bare(m.get(at), unit))));
            }
            body.appendChild(tr);
        }
    }

    private static boolean isNumber(String value) {
        return !value.isEmpty() && Character.isDigit(value.charAt(0));
    }

    private static String css(List<String> month, String marked) {
        return month.get(0).equals("Year") ? "tot" : month.get(0).equals(marked) ? "own" : "";
    }

    /** The unit all values of a row have, said once beside its name. */
    private static String unit(List<String> values) {
        String first = values.get(0);
        int blank = first.indexOf(' ');
        String unit = blank < 0 ? "" : first.substring(blank + 1);
        return isNumber(first) && values.stream().allMatch(v -> v.endsWith(" " + unit)) ? unit : "";
    }

    private static String bare(String value, String unit) {
        return unit.isEmpty() ? value : value.substring(0, value.length() - unit.length() - 1);
    }
}
