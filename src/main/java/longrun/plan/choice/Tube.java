package longrun.plan.choice;

/** A type of copper tube. */
public enum Tube implements Named {
    K,
    L,
    M,
    ACR;

    @Override
    public String written() {
        return name();
    }
}
