package longrun.quantity;

/** What a person wrote can't be taken as the quantity asked for; the message says what to write instead. */
public final class NotAQuantity extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    public NotAQuantity(String message) {
        super(message);
    }
}
