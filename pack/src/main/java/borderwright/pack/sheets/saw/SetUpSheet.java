package borderwright.pack.sheets.saw;

import borderwright.engine.message.Message;
import borderwright.engine.plan.Plan;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.sheets.Part;
import borderwright.pack.sheets.Sheet;
import java.util.List;

/**
 * One card for each saw set-up.
 *
 * @param plan the plan
 * @param drawings one for each set-up, in order
 * @param columnMm width of a column of cards
 * @param pageMm height of a page between its margins
 */
public record SetUpSheet(Plan plan, List<Drawing> drawings, double columnMm, double pageMm) implements Sheet {
    public SetUpSheet {
        drawings = List.copyOf(drawings);
    }

    @Override
    public String title() {
        return "Saw set-up cards";
    }

    @Override
    public Part part() {
        return Part.SAW;
    }

    /** The board as it lies on the saw. */
    public Drawing drawing(CardText card) {
        return drawings.get(card.number() - 1);
    }

    /** What is read before the first card. */
    public String intro(PrintedFigures f) {
        boolean stops =
                plan.cutting().setUps().stream().anyMatch(setUp -> setUp.stop().ticks() > 0);
        boolean byHand = plan.cutting().setUps().stream().anyMatch(setUp -> setUp.kind() == null);
        List<Message> kerfs = plan.garden().saws().stream()
                .filter(saw -> plan.cutting().setUps().stream()
                        .anyMatch(setUp -> setUp.saw().equals(saw.name())))
                .map(saw -> CardMessage.SAW_KERF.of(saw.name(), saw.kerfMm()))
                .toList();
        return f.text(CardMessage.CARDS_INTRO.of(stops ? "yes" : "no", byHand ? "yes" : "no", kerfs));
    }

    /** The pages of cards, each with a left and a right column. */
    public List<List<List<CardText>>> pages(PrintedFigures f) {
        return new CardColumns(columnMm, pageMm)
                        .pages(
                                cards(f),
                                intro(f),
                                drawings.stream().map(Drawing::heightMm).toList())
                        .stream()
                        .map(page -> List.of(page.left(), page.right()))
                        .toList();
    }

    /** All cards in the order of work, as they are printed. */
    public List<CardText> cards(PrintedFigures f) {
        return plan.cutting().setUps().stream()
                .map(setUp -> CardText.of(setUp, plan.cutting(), f))
                .toList();
    }
}
