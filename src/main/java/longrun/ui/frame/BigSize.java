package longrun.ui.frame;

import com.vaadin.flow.dom.Element;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The size of the selected section or line, the largest text on the page, with fractions built up. */
public final class BigSize {

    private static final Pattern SIZE = Pattern.compile("(?:(\\d+)-)?(\\d+)/(\\d+)");

    private BigSize() {}

    /** @param beside what the size is of, shown beside it, one line of text for each line */
    public static Element of(String size, String beside) {
        Element big = Dom.el("span", "big").setAttribute("data-fig", "");
        Matcher m = SIZE.matcher(size);
        if (m.matches()) {
            if (m.group(1) != null) {
                big.appendChild(Dom.text("span", "whole", m.group(1)).setAttribute("aria-hidden", "true"));
            }
            big.appendChild(Dom.el("span", "fr", Dom.text("i", "", m.group(2)), Dom.text("i", "", m.group(3)))
                    .setAttribute("aria-hidden", "true"));
            big.appendChild(Dom.text("span", "vh", size));
        } else {
            big.appendChild(Dom.text("span", "whole", size));
        }
        Element small = Dom.el("small", "");
        for (String line : beside.split("\n")) {
            if (small.getChildCount() > 0) {
                small.appendChild(Dom.el("br", ""));
            }
            small.appendChild(Dom.words(line));
        }
        return big.appendChild(small);
    }

    /** A word in place of a size. */
    public static Element word(String word) {
        return Dom.text("span", "big word", word);
    }
}
