package longrun.plan.json;

/** JSON pointers (RFC 6901). */
public final class Pointer {

    private Pointer() {}

    /** The pointer of a field below another. */
    public static String child(String parent, String field) {
        return parent + "/" + field.replace("~", "~0").replace("/", "~1");
    }

    /** The pointer of a list's item. */
    public static String item(String parent, int index) {
        return parent + "/" + index;
    }
}
