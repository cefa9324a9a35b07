package borderwright.app.document;

/**
 * Where something stands in a document.
 *
 * @param line from 1
 * @param column from 1, in characters
 * @param path field path, such as {@code runs[0].depth}; empty for the whole document
 */
record Place(int line, int column, String path) {
    /** A hostile document could make paths as long as its depth allows; beyond this the parent's path must do. */
    private static final int MOST_PATH = 160;

    static final Place START = new Place(1, 1, "");

    /** The place of a key's value. */
    Place child(int childLine, int childColumn, String key) {
        return new Place(childLine, childColumn, shorter(join(path, key)));
    }

    /** The place of an item in a list. */
    Place item(int itemLine, int itemColumn, int index) {
        return new Place(itemLine, itemColumn, shorter(path + "[" + index + "]"));
    }

    private String shorter(String longer) {
        return longer.length() > MOST_PATH ? path : longer;
    }

    static String join(String parent, String key) {
        return parent.isEmpty() ? key : parent + "." + key;
    }
}
