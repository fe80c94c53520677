package longrun.ui.house.papers;

import com.vaadin.flow.server.StreamResource;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.Function;
import longrun.draft.HouseSession;
import longrun.draft.PlanFiles;
import longrun.paper.Papers;
import longrun.paper.page.PaperSize;
import longrun.paper.page.Printing;

/** The papers of the house as it stands, made when one is asked for and not before. */
final class HousePapers {

    private volatile Optional<Printing> printing = Optional.empty();
    private volatile PaperSize size;

    HousePapers(PaperSize size) {
        this.size = size;
    }

    /** Takes the house as it stands; whether it is another than before. */
    boolean take(HouseSession session) {
        Optional<Printing> now = session.review()
                .map(r -> new Printing(r, session.draft().toString(), LocalDate.now(ZoneId.systemDefault()), size));
        boolean changed = !now.equals(printing);
        printing = now;
        return changed;
    }

    PaperSize size() {
        return size;
    }

    void size(PaperSize other) {
        size = other;
    }

    Optional<Printing> printing() {
        return printing;
    }

    /** One sheet; empty while there is nothing to print. */
    Optional<byte[]> sheet(String slug) {
        return printing.flatMap(p -> Papers.findPdf(slug, p));
    }

    byte[] all() {
        return printing.map(Papers::pdf).orElse(new byte[0]);
    }

    /** Everything in one zip; the plan file in it is the house. */
    byte[] zip() {
        return printing.map(p -> Papers.zip(p, PlanFiles.fileName(p.house()))).orElse(new byte[0]);
    }

    byte[] drawing() {
        return text(p -> Papers.drawing(p.review()));
    }

    byte[] materials() {
        return text(p -> Papers.materials(p.review()));
    }

    private byte[] text(Function<Printing, String> made) {
        return printing.map(made).orElse("").getBytes(StandardCharsets.UTF_8);
    }

    /** What a file is called where the browser keeps it: by the house, as every computer takes it. */
    String fileName(String what) {
        String plan = PlanFiles.fileName(printing.map(Printing::house).orElse("house"));
        return plan.substring(0, plan.length() - ".json".length()) + " - " + what;
    }

    /** What makes a file's bytes. */
    interface Made {
        byte[] bytes();
    }

    /** A file made when it is asked for, while the page goes on. */
    static StreamResource file(String name, String type, Made made) {
        StreamResource file = new StreamResource(name, (out, session) -> {
            try {
                out.write(made.bytes());
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        });
        file.setContentType(type);
        file.setCacheTime(0);
        return file;
    }
}
