package borderwright.engine.strength.timber;

import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import java.util.List;

/**
 * How long a load acts in all: EN 1995-1-1 table 2.1 (from memory), with the NDS load duration factor of table 2.3.2 (from
 * memory) that corresponds to it.
 */
public enum LoadDuration implements MessageCode {
    /** More than ten years: soil, own weight. */
    PERMANENT(0.9),
    /** Six months to ten years: storage. */
    LONG(1.0),
    /** A week to six months: a wet season. */
    MEDIUM(1.15),
    /** Less than a week: a person, a day's compaction, standing water after rain. */
    SHORT(1.25),
    /** An accident. */
    INSTANTANEOUS(1.6);

    private static final String CODE = "load-duration-";

    private final double ndsFactor;

    LoadDuration(double ndsFactor) {
        this.ndsFactor = ndsFactor;
    }

    public double ndsFactor() {
        return ndsFactor;
    }

    @Override
    public List<Slot> slots() {
        return List.of();
    }

    @Override
    public String key() {
        return CODE + MessageCode.super.key();
    }
}
