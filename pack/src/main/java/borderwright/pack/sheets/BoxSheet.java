package borderwright.pack.sheets;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.cautions.PieceLift;
import borderwright.engine.message.Message;
import borderwright.pack.alike.Alike;
import borderwright.pack.alike.AlikePieces;
import borderwright.pack.alike.PieceGroup;
import borderwright.pack.figures.PartWords;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.Orientation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Boxes that are all alike: their layers and their pieces.
 *
 * @param alike the boxes, the first stands for all
 * @param layers one drawing for each layer
 * @param orientation landscape where the box is so long that it needs the long side of the paper
 * @param lifts who lifts each piece, by its label
 */
public record BoxSheet(List<Box> alike, List<Drawing> layers, Orientation orientation, Map<String, PieceLift> lifts)
        implements Sheet {
    public BoxSheet {
        alike = List.copyOf(alike);
        layers = List.copyOf(layers);
    }

    @Override
    public String title() {
        return alike.size() == 1
                ? "Box " + first().plan().name()
                : alike.size() + " boxes like " + first().plan().name();
    }

    @Override
    public Part part() {
        return Part.WORKING;
    }

    public Box first() {
        return alike.get(0);
    }

    /** Names of all of them, in short. */
    public String names() {
        return Alike.inShort(alike.stream().map(box -> box.plan().name()).toList());
    }

    /** What a piece weighs as it arrives, and who should lift it where that is more than one person's. */
    public String weight(Piece piece, PrintedFigures f) {
        PieceLift lift = lifts.get(piece.label());
        return lift == null ? "" : f.pieceWeight(lift.kg()) + (lift.people() > 1 ? ", two people" : "");
    }

    /** Pieces of the first box by what they do. */
    public List<PieceGroup> pieces(PrintedFigures f) {
        return PieceGroup.of(first().pieces(), f);
    }

    /** Which face of each piece goes out. */
    public List<String> faces(PrintedFigures f) {
        return AlikePieces.faces(first().pieces(), f);
    }

    /** An end cut in a few words; its angle is from square, and which end it is stands at the head of its column. */
    public String cut(Piece piece, EndCut cut, PrintedFigures f) {
        if (cut.isSquare()) {
            return f.text(SheetMessage.END_SQUARE.of());
        }
        Message point = PartWords.longPoint(piece.role(), cut.longPoint());
        return f.text(
                cut.tiltDeg() > 0
                        ? SheetMessage.END_BEVELLED.of(cut.tiltDeg(), point, cut.offsetMm())
                        : SheetMessage.END_MITRED.of(cut.fenceDeg(), point, cut.offsetMm()));
    }

    /** What else is to be known of a piece. */
    public String pieceNotes(Piece piece, PrintedFigures f) {
        List<String> notes = new ArrayList<>();
        if (piece.rip() != null) {
            notes.add(f.text(SheetMessage.PIECE_RIPPED.of(piece.rip().words())));
        }
        for (Piece.Notch notch : piece.notches()) {
            notes.add(f.text(SheetMessage.PIECE_NOTCHED.of(
                    notch.width().mm(), notch.depth().mm(), notch.fromLeft().mm(), notch.edge())));
        }
        if (piece.touchesGround()) {
            notes.add(f.text(SheetMessage.PIECE_ON_GROUND.of()));
        }
        return String.join("; ", notes);
    }
}
