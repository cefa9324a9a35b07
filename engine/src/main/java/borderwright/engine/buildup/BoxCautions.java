package borderwright.engine.buildup;

import borderwright.engine.buildup.draft.Draft;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.SectionSpec;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What may hurt someone or spoil the wood in this box, said once. */
final class BoxCautions {
    private final Draft draft;

    BoxCautions(Draft draft) {
        this.draft = draft;
    }

    void tell() {
        Set<String> used = new TreeSet<>();
        boolean shortPieces = false;
        boolean byHand = false;
        boolean ripped = false;
        for (Piece piece : draft.pieces()) {
            used.add(piece.section());
            shortPieces |= piece.length().mm() < 300;
            byHand |= !piece.left().inRange() || !piece.right().inRange();
            ripped |= piece.rip() != null;
        }
        if (draft.rules.postFooting() != null) {
            draft.note("Let every post and brace of " + draft.plan.name() + " "
                    + draft.format.length(draft.rules.postFootingMm()) + " into the ground, on a hand of gravel that"
                    + " drains, in concrete that falls away from the post: look for cables and pipes before you dig, wear"
                    + " gloves and goggles (wet concrete burns), and take timber that is treated or durable enough for"
                    + " the ground, its factory end down.");
        }
        List<SectionSpec> treated = draft.means.sections().stream()
                .filter(section -> used.contains(section.name()) && section.isTreated())
                .toList();
        if (!treated.isEmpty()) {
            draft.note("Treated timber ("
                    + String.join(", ", treated.stream().map(SectionSpec::name).toList())
                    + "): brush two full coats of preservative on every cut end, notch and hole; keep factory ends, not"
                    + " cut ones, in the ground; never rip it lengthwise; wear gloves and a dust mask, and neither burn"
                    + " nor compost its sawdust; use stainless or hot-dip galvanised screws.");
        }
        if (shortPieces) {
            draft.note(
                    "Short pieces: hold the long part of the board, not the short piece; no stop against the piece that"
                            + " comes free; hands at least 150 mm from the blade; let the blade stop before you reach for it.");
        }
        if (byHand) {
            draft.note("Some cuts lie outside what the saws at hand do as they stand: each says how else to make it.");
        }
        if (ripped) {
            draft.note("Ripping: riving knife and guard on, push stick for the last 300 mm, nobody behind the blade.");
        }
        draft.note("Drill pilot holes within " + draft.format.length(50)
                + " of any end, and try each new saw setting on an offcut before the first good board.");
    }
}
