package longrun.draft;

/** A file that is no plan, or none that a page can show, with the reason in words. */
public final class NotAPlan extends Exception {

    private static final long serialVersionUID = 1L;

    public NotAPlan(String why) {
        super(why);
    }
}
