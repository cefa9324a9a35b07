package borderwright.pack.sheets;

import borderwright.pack.paper.Orientation;

/** One sheet of the pack, of one page or more: what its page template needs. */
public interface Sheet {
    /** Its name, at the head of each of its pages. */
    String title();

    /** Which way its pages lie. */
    default Orientation orientation() {
        return Orientation.PORTRAIT;
    }
}
