package borderwright.engine.strength.timber;

/**
 * How long a load lasts in all: EN 1995-1-1 table 2.1 (from memory), with the NDS load duration factor of table 2.3.2 (from
 * memory) that answers to it.
 */
public enum LoadDuration {
    /** More than ten years: soil, own weight. */
    PERMANENT("permanent", 0.9),
    /** Six months to ten years: storage. */
    LONG("long term", 1.0),
    /** A week to six months: a wet season. */
    MEDIUM("medium term", 1.15),
    /** Less than a week: a person, a day's compaction, standing water after rain. */
    SHORT("short term", 1.25),
    /** An accident. */
    INSTANTANEOUS("instantaneous", 1.6);

    private final String words;
    private final double ndsFactor;

    LoadDuration(String words, double ndsFactor) {
        this.words = words;
        this.ndsFactor = ndsFactor;
    }

    public String words() {
        return words;
    }

    double ndsFactor() {
        return ndsFactor;
    }
}
