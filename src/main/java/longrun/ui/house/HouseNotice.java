package longrun.ui.house;

import com.vaadin.flow.dom.Element;
import java.time.Instant;
import java.util.function.LongConsumer;
import longrun.draft.HouseSession;
import longrun.draft.SaveState;
import longrun.ui.frame.Dom;

/** What is said, and may be chosen, where a house does not stand with the store as it should, or can't be worked out. */
final class HouseNotice {

    private final HouseSession session;
    private final LongConsumer toHouse;
    private final Runnable forgetTyped;
    private final Element notice = Dom.el("div", "notice").setAttribute("role", "alert");
    private SaveState shown = new SaveState.Saved(Instant.EPOCH);
    private boolean failedShown;

    HouseNotice(HouseSession session, LongConsumer toHouse, Runnable forgetTyped) {
        this.session = session;
        this.toHouse = toHouse;
        this.forgetTyped = forgetTyped;
        Dom.show(notice, false);
    }

    Element element() {
        return notice;
    }

    void show() {
        SaveState now = session.saveState();
        boolean failed = session.isFailed();
        if (now.equals(shown) && failed == failedShown) {
            return;
        }
        shown = now;
        failedShown = failed;
        notice.removeAllChildren();
        Dom.show(notice, failed || !(now instanceof SaveState.Saved));
        if (failed) {
            say(
                    "This house can\u2019t be worked out at the moment; the fault is the program\u2019s, not yours."
                            + " Every entry is kept, and can be changed, taken back and saved to a file. Nothing is known"
                            + " of its sizes until then.",
                    button("Take back the last change", session::undo));
        }
        if (now instanceof SaveState.ChangedElsewhere) {
            say(
                    "Another tab changed this house. Here it stands as you left it, and nothing was overwritten. Which"
                            + " shall it be?",
                    button("Take what the other tab has", () -> {
                        forgetTyped.run();
                        session.saveChoices().takeTheirs();
                    }),
                    button("Keep what is here as the newer", session.saveChoices()::keepMine),
                    copy());
        } else if (now instanceof SaveState.Deleted) {
            say(
                    "This house was deleted in another tab. What you typed is still here.",
                    button("Bring the house back", session.saveChoices()::bringBack),
                    copy());
        } else if (now instanceof SaveState.NotSaved not) {
            say(
                    "Not saved: " + not.why() + ". What you typed is still here and is tried again at the next key.",
                    button("Try again now", session.saveChoices()::tryAgain),
                    copy());
        }
    }

    private Element copy() {
        return button(
                "Keep what is here as a copy",
                () -> session.saveChoices().keepCopy().ifPresent(toHouse));
    }

    private static Element button(String says, Runnable does) {
        Element button = Dom.button("act", says);
        button.addEventListener("click", e -> does.run());
        return button;
    }

    private void say(String words, Element... buttons) {
        notice.appendChild(Dom.text("p", "", words), Dom.el("div", "acts", buttons));
    }
}
