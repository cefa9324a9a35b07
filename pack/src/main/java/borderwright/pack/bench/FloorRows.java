package borderwright.pack.bench;

import borderwright.engine.assembly.FloorBench;
import borderwright.engine.assembly.FloorStrip;
import borderwright.engine.assembly.Span;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.pack.figures.PartWords;
import borderwright.pack.figures.PrintedFigures;
import java.util.ArrayList;
import java.util.List;

/** The positions on a floor, as lines of text: along the slats, and across them. */
final class FloorRows {
    private static final double SAME_MM = 0.5;

    private final PrintedFigures f;
    private final HookedTape tape;

    FloorRows(PrintedFigures f) {
        this.f = f;
        this.tape = new HookedTape(f, HookedTape.On.CORNER);
    }

    List<BenchRow> rows(FloorBench floor) {
        return floor.strips().stream().map(this::row).toList();
    }

    private BenchRow row(FloorStrip strip) {
        boolean slat = strip.role() == Role.SLAT;
        Span along = slat ? strip.low() : strip.edges();
        Span across = slat ? strip.edges() : strip.low();
        List<String> notes = new ArrayList<>();
        if (strip.role() != Role.LEG
                && (StrictMath.abs(strip.low().fromMm() - strip.high().fromMm()) > SAME_MM
                        || StrictMath.abs(strip.low().toMm() - strip.high().toMm()) > SAME_MM)) {
            notes.add(f.text(BenchMessage.STRIP_FAR_EDGE.of(tape.range(strip.high()))));
        }
        notes.add(f.text(BenchMessage.STRIP_HEIGHT.of(tape.range(strip.height()))));
        double left = strip.overall().fromMm();
        for (FloorStrip.Notch notch : strip.notches()) {
            notes.add(f.text(BenchMessage.STRIP_NOTCHED.of(
                    notch.edge(),
                    StrictMath.max(0, notch.along().fromMm() - left),
                    StrictMath.min(strip.overall().toMm(), notch.along().toMm()) - left,
                    notch.depthMm())));
        }
        return new BenchRow(
                f.text(PartWords.role(strip.role())),
                strip.label(),
                f.text(BenchMessage.ALONG_AND_ACROSS.of(tape.range(along), tape.range(across))),
                "",
                "",
                notes);
    }
}
