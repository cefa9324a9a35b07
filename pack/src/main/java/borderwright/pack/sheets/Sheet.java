package borderwright.pack.sheets;

/** One sheet of the pack, of one page or more: what its page template needs. */
public interface Sheet {
    /** Its name, at the head of each of its pages. */
    String title();

    /** Whether it lies on its long side. */
    default boolean wide() {
        return false;
    }
}
