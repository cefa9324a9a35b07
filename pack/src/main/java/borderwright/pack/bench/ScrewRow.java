package borderwright.pack.bench;

import borderwright.pack.paper.TypeFace;
import java.util.List;

/**
 * A fixing of a bench drawing, as printed.
 *
 * @param fixing its name and holes
 * @param where how they are spread over the boards
 * @param places each place with what it holds
 * @param count how many in all
 */
public record ScrewRow(String fixing, String where, List<String> places, int count) {
    public ScrewRow {
        places = List.copyOf(places);
    }

    /** Whether the places are few enough to stand behind the heading. */
    public boolean isShort() {
        return places.size() <= 2 || (places.size() == 3 && columns() == 3);
    }

    /** The places in rows. */
    public List<List<String>> rows(int columns) {
        return Rows.of(places, columns);
    }

    /** How many places stand side by side on a page. */
    public int columns() {
        return Rows.columns(
                places.stream().mapToDouble(TypeFace.REGULAR::widthEm).max().orElse(0));
    }
}
