package longrun.ui.start;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import longrun.store.StoreRecovery;
import longrun.store.StoreRecovery.DatedCopy;
import longrun.store.StoreTrouble;
import longrun.store.StoreTrouble.Kind;
import longrun.ui.frame.Caution;
import longrun.words.Markup;

/** The words of the page that stands where the saved houses are not opened. */
final class TroubleWords {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.ENGLISH);
    private static final int COPIES_SHOWN = 16;

    /** Its own styles and its two short scripts; no page may frame it, and its buttons reach it alone. */
    static final String POLICY = "default-src 'none'; style-src 'self' 'unsafe-inline'; script-src 'unsafe-inline';"
            + " connect-src 'self'; img-src data:; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private static final String HEAD = """
        <!doctype html><html lang="en"><head><meta charset="utf-8">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <meta name="color-scheme" content="light dark">
        <title>%s \u00b7 Longrun</title>
        <script>(() => { let t = null; try { t = localStorage.getItem('longrun-theme'); } catch (e) { t = null; }
        t = t || (matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light');
        document.documentElement.setAttribute('theme', t); })();</script>
        <link rel="icon" href="data:,">
        <link rel="stylesheet" href="/frontend/look.css"><link rel="stylesheet" href="/frontend/house.css">
        <style>.trouble p,.trouble ol{margin-top:12px;max-width:68ch;overflow-wrap:anywhere}
        .trouble h3{margin-top:32px} .trouble ol{padding-left:1.4em;list-style:decimal} .trouble li{margin-top:4px}
        .trouble .acts{margin-top:16px} .trouble .what{font-size:18px;line-height:28px}
        .trouble h2{margin-top:0}</style>
        </head><body><div class="page"><header class="head"><div><a class="home" href="/">Longrun</a></div>
        <h1>Houses</h1></header>
        <section class="danger" aria-label="Caution"><div><p class="w">Before anything else</p><div>
        <p class="c">%s</p></div></div></section>
        <main class="sheet no-thread no-answer" id="work"><div class="work"><section class="trouble side">
        <div class="sidehead"></div><div>
        """;

    private static final String FOOT = "</div></section></div></main></div></body></html>";

    private TroubleWords() {}

    private static String head(String heading) {
        return String.format(Locale.ROOT, HEAD, heading, Markup.escaped(Caution.TEXT));
    }

    static String heading(Kind kind) {
        return switch (kind) {
            case DAMAGED -> "The saved houses are damaged";
            case MISSING -> "The saved houses are missing";
            case OLDER -> "The saved houses are older than they should be";
            case LATER_VERSION -> "The saved houses are of a later version";
            case OTHER_VERSION -> "The saved houses are of another version";
            case IN_USE -> "Longrun is already running";
            case NOT_WRITABLE -> "Longrun cannot write its houses";
            case NO_ROOM -> "The disk is full";
        };
    }

    static String page(StoreTrouble trouble, StoreRecovery recovery, String token, String said) {
        String heading = Markup.escaped(heading(trouble.kind()));
        StringBuilder page = new StringBuilder(head(heading));
        page.append("<h2 class='place'>").append(heading).append("</h2>");
        if (!said.isEmpty()) {
            paragraph(page, "what", "role='alert'", said);
        }
        paragraph(page, "what", "", trouble.what());
        paragraph(page, "", "", trouble.todo());
        choices(page, trouble.kind(), recovery, token);
        if (isOfTheFile(trouble.kind()) && !recovery.copies().isEmpty()) {
            byHand(page, recovery);
        }
        return page.append(FOOT).toString();
    }

    private static boolean isOfTheFile(Kind kind) {
        return kind != Kind.IN_USE && kind != Kind.NOT_WRITABLE && kind != Kind.NO_ROOM;
    }

    private static void choices(StringBuilder page, Kind kind, StoreRecovery recovery, String token) {
        List<DatedCopy> copies = isOfTheFile(kind) ? recovery.copies() : List.of();
        page.append("<h3>What can be done</h3>");
        if (isOfTheFile(kind)) {
            if (!copies.isEmpty()) {
                paragraph(
                        page,
                        "",
                        "",
                        "Opening a copy brings the houses back as they stood then; what was typed since is not in it."
                                + " The file that lies there now is kept aside.");
            }
        }
        page.append("<div class='acts'>");
        boolean main = true;
        if (kind == Kind.OLDER) {
            page.append(button("go-on", "", "Go on with the houses that are there", true, token));
            main = false;
        }
        if (!copies.isEmpty()) {
            page.append(button("copy", copies.get(0).file(), copyWords(copies.get(0)), main, token));
            main = false;
        }
        page.append(button("again", "", "Try again", main && kind != Kind.DAMAGED, token));
        page.append("</div>");
        if (kind == Kind.DAMAGED) {
            int houses = recovery.readable().size();
            if (houses > 0) {
                paragraph(
                        page,
                        "",
                        "",
                        (houses == 1
                                        ? "One house can still be read as it was stored last."
                                        : houses + " houses can still be read as they were stored last.")
                                + " Save what can be read first; each plan file can be opened again on Houses.");
                page.append("<div class='acts'><a class='act' href='/readable.zip' download>Save what can be"
                        + " read</a></div>");
            }
        }
        if (copies.size() > 1) {
            page.append("<h3>Earlier copies</h3><div class='acts'>");
            copies.stream()
                    .skip(1)
                    .limit(COPIES_SHOWN)
                    .forEach(c -> page.append(button("copy", c.file(), copyWords(c), false, token)));
            page.append("</div>");
        }
        if (kind == Kind.DAMAGED || kind == Kind.MISSING) {
            page.append("<h3>Or begin anew</h3>");
            paragraph(
                    page,
                    "",
                    "",
                    "The list of houses is then empty. What lies there is kept aside, and the copies stay.");
            page.append("<div class='acts'>")
                    .append(button("begin", "", "Begin with no houses", false, token))
                    .append("</div>");
        }
    }

    private static String copyWords(DatedCopy copy) {
        return "Open the copy of " + DAY.format(copy.made());
    }

    private static void byHand(StringBuilder page, StoreRecovery recovery) {
        String place = "<code>" + Markup.escaped(recovery.folder().toString()) + "</code>";
        page.append("<h3>The same by hand</h3><ol><li>Stop Longrun.</li><li>Take <code>longrun.mv.db</code> and"
                        + " <code>longrun.mark</code> out of ")
                .append(place)
                .append(" and keep them.</li><li>Unpack a zip from <code>copies</code> in it: it holds"
                        + " <code>longrun.mv.db</code>. Put that in their place.</li><li>Start Longrun.</li></ol>");
    }

    private static String button(String does, String copy, String says, boolean main, String token) {
        return "<form method='post' action='/choose'><input type='hidden' name='token' value='" + token
                + "'><input type='hidden' name='do' value='" + does + "'><input type='hidden' name='copy' value='"
                + Markup.escaped(copy) + "'><button class='act" + (main ? " main" : "") + "'>" + Markup.escaped(says)
                + "</button></form>";
    }

    private static void paragraph(StringBuilder page, String classes, String attributes, String words) {
        page.append("<p class='")
                .append(classes)
                .append("' ")
                .append(attributes)
                .append('>')
                .append(Markup.escaped(words))
                .append("</p>");
    }

    /** What stands there until Longrun is up again; it goes on by itself. */
    static String startsAgain(String said) {
        StringBuilder page = new StringBuilder(head("Longrun starts again"));
        page.append("<h2 class='place'>Longrun starts again</h2>");
        paragraph(page, "what", "role='status'", said);
        page.append("<p>This page goes on to the houses by itself. If it does not: <a href='/houses'>Houses</a>.</p>")
                .append("<script>(async () => { for (;;) { await new Promise(r => setTimeout(r, 1000));"
                        + " try { const a = await fetch('/api/tables', {cache: 'no-store'});"
                        + " if (a.ok) { location.replace('/houses'); return; }"
                        + " if (a.status === 503) { location.replace('/'); return; } } catch (e) { continue; } } })();"
                        + "</script>");
        return page.append(FOOT).toString();
    }
}
