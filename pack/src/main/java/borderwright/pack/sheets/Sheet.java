package borderwright.pack.sheets;

import borderwright.pack.paper.Orientation;

/** One sheet of the pack, of one page or more: what its page template needs. */
public interface Sheet {
    /** Its name, its first heading. */
    String title();

    /** Where it is used. */
    Part part();

    /** Whether it begins on a page of its own even within its part. */
    default boolean startsPage() {
        return false;
    }

    /** Which way its pages lie. */
    default Orientation orientation() {
        return Orientation.PORTRAIT;
    }
}
