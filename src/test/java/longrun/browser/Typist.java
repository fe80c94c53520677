package longrun.browser;

import com.microsoft.playwright.Keyboard;
import com.microsoft.playwright.Page;
import java.util.Locale;

/** Hands on the keyboard, a key every 30 ms: what a walk takes is counted and told, never judged. */
public final class Typist {

    private static final int KEY_MS = 30;
    private static final int MOST_TABS = 60;

    private final Page page;
    private final long began = System.nanoTime();
    private int keys;

    public Typist(Page page) {
        this.page = page;
    }

    public Page page() {
        return page;
    }

    public void type(String text) {
        page.keyboard().type(text, new Keyboard.TypeOptions().setDelay(KEY_MS));
        keys += text.length();
    }

    public void press(String... each) {
        for (String key : each) {
            page.waitForTimeout(KEY_MS);
            page.keyboard().press(key);
            keys++;
        }
    }

    /** Presses Tab until a field has the focus. */
    public void tabTo(String selector) {
        for (int tabs = 0; !hasFocus(selector); tabs++) {
            if (tabs == MOST_TABS) {
                throw new AssertionError("Tab never comes to " + selector);
            }
            press("Tab");
        }
    }

    private boolean hasFocus(String selector) {
        return (boolean) page.evaluate("s => document.activeElement.matches(s)", selector);
    }

    /** The fields of a line one after another, then the next line. */
    public void line(String... fields) {
        for (int i = 0; i < fields.length; i++) {
            type(fields[i]);
            press(i < fields.length - 1 ? "Tab" : "Enter");
        }
    }

    /**
     * Tells the counts of a walk. The program's seconds are those beyond the keys themselves.
     *
     * @param questions how many were seen at its end
     */
    public void tell(String walk, int questions) {
        double all = (System.nanoTime() - began) / 1e9;
        System.out.printf(
                Locale.ROOT,
                "%s: %d keys, %d questions seen, %.1f s, of it %.1f s of the program%n",
                walk,
                keys,
                questions,
                all,
                Math.max(0, all - keys * KEY_MS / 1000.0));
    }
}
