package longrun.store;

import org.springframework.dao.DataAccessResourceFailureException;

/** A change was not stored, or a house was not read. The message says why, as a clause without a full stop. */
public final class NotStored extends DataAccessResourceFailureException {

    private static final long serialVersionUID = 1L;

    /** The reason where none is known. */
    static final String REFUSED = "the database of saved houses reported an error";

    NotStored(String why, Throwable cause) {
        super(why, cause);
    }

    NotStored(String why) {
        super(why);
    }

    /** Why a call of {@link DraftStore} failed, as a clause without a full stop. */
    public static String why(RuntimeException e) {
        return e instanceof NotStored ? String.valueOf(e.getMessage()) : REFUSED;
    }
}
