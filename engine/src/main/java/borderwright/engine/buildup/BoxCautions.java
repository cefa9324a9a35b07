package borderwright.engine.buildup;

import borderwright.engine.buildup.draft.Draft;
import borderwright.engine.buildup.parts.BuildMessage;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.SectionSpec;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What may hurt someone or spoil the wood in this box, each caution once. */
final class BoxCautions {
    private final Draft draft;

    BoxCautions(Draft draft) {
        this.draft = draft;
    }

    void add() {
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
        if (draft.rules.isFooted()) {
            draft.note(BuildMessage.UPRIGHTS_INTO_GROUND.of(draft.plan.name(), draft.rules.postFootingMm()));
        }
        List<String> treated = draft.means.sections().stream()
                .filter(section -> used.contains(section.name()) && section.isTreated())
                .map(SectionSpec::name)
                .toList();
        if (!treated.isEmpty()) {
            draft.note(BuildMessage.TREATED_TIMBER.of(treated));
        }
        if (shortPieces) {
            draft.note(BuildMessage.SHORT_PIECES.of());
        }
        if (byHand) {
            draft.note(BuildMessage.CUTS_BEYOND_SAWS.of());
        }
        if (ripped) {
            draft.note(BuildMessage.RIPPING_WITH_CARE.of());
        }
        draft.note(BuildMessage.PILOT_HOLES.of(50));
    }
}
