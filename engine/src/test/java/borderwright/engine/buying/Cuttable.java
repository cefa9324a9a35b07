package borderwright.engine.buying;

import borderwright.engine.stock.StockCase;
import java.util.ArrayList;
import java.util.List;

/** Whether boards of given numbers give all pieces of a small case, by trying everything. */
public final class Cuttable {
    private Cuttable() {}

    /** Piece by piece on every board that has room. */
    public static boolean from(StockCase stock, int[] boards) {
        List<Long> pieces = new ArrayList<>();
        for (int i = 0; i < stock.sizes(); i++) {
            for (int n = 0; n < stock.demand(i); n++) {
                pieces.add(stock.size(i));
            }
        }
        List<Long> rooms = new ArrayList<>();
        for (int j = 0; j < boards.length; j++) {
            for (int n = 0; n < boards[j]; n++) {
                rooms.add(stock.capacity(j));
            }
        }
        return cuts(pieces, 0, rooms);
    }

    private static boolean cuts(List<Long> pieces, int next, List<Long> rooms) {
        if (next == pieces.size()) {
            return true;
        }
        for (int r = 0; r < rooms.size(); r++) {
            long room = rooms.get(r);
            if (room >= pieces.get(next) && rooms.indexOf(room) == r) {
                rooms.set(r, room - pieces.get(next));
                boolean fits = cuts(pieces, next + 1, rooms);
                rooms.set(r, room);
                if (fits) {
                    return true;
                }
            }
        }
        return false;
    }
}
