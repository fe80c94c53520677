package longrun.draft;

/** A file is not a plan, or not one that a page can show. The message says why, as a clause without a full stop. */
public final class NotAPlan extends Exception {

    private static final long serialVersionUID = 1L;

    public NotAPlan(String why) {
        super(why);
    }
}
