package longrun.store;

import org.springframework.dao.DataAccessResourceFailureException;

/** A change that was not stored, or a house that was not read; the message says why, in words that end no sentence. */
public final class NotStored extends DataAccessResourceFailureException {

    private static final long serialVersionUID = 1L;

    NotStored(String why, Throwable cause) {
        super(why, cause);
    }

    NotStored(String why) {
        super(why);
    }

    /** Why a call of the store failed, in words that end no sentence. */
    public static String why(RuntimeException e) {
        return e instanceof NotStored ? String.valueOf(e.getMessage()) : "the store did not take it";
    }
}
