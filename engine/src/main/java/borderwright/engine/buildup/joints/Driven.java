package borderwright.engine.buildup.joints;

import borderwright.engine.buildup.parts.ScrewLine;
import borderwright.engine.buildup.parts.ScrewRules.Screw;
import java.util.List;

/** The screws of one joint: which, and where each goes. */
record Driven(Screw screw, List<ScrewLine> lines) {
    Driven {
        lines = List.copyOf(lines);
    }
}
