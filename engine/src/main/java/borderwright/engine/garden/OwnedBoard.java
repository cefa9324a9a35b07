package borderwright.engine.garden;

import borderwright.engine.measure.Length;
import java.util.Optional;

/** Boards or offcuts of one true length already in the shed, with the mark on them, if they have one; used first. */
public record OwnedBoard(String section, Length length, int count, Optional<String> label) {}
