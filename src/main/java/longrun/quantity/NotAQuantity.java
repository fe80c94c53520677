package longrun.quantity;

/** What a person wrote can't be taken as the quantity asked for; the message says what to write instead. */
public class NotAQuantity extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final String advice;

    public NotAQuantity(String advice) {
        super(advice);
        this.advice = advice;
    }

    /** What is wrong and what to write instead. */
    public String advice() {
        return advice;
    }
}
