package borderwright.pack.sheets;

/**
 * Where a sheet is used. Sheets of one part follow each other without a break of page, so that a person carries few pages
 * to one place (docs/decisions/0072).
 */
public enum Part {
    /** Read first, at the table. */
    BRIEF("Brief", Reading.SEATED),
    SAW("For the saw", Reading.STANDING),
    BENCH("For the bench", Reading.STANDING),
    GARDEN("For the garden", Reading.STANDING),
    SHOP("For the shop", Reading.SEATED),
    /** The engineer's working and the survey's figures: a file of its own. */
    WORKING("Working", Reading.SEATED),
    /** To cut out: a file of its own. */
    LABELS("To cut out", Reading.SEATED);

    private final String title;
    private final Reading reading;

    Part(String title, Reading reading) {
        this.title = title;
        this.reading = reading;
    }

    /** How a sheet is read: what is used standing, in gloves, is set larger. */
    public enum Reading {
        SEATED,
        STANDING
    }

    /** At the head of its pages. */
    public String title() {
        return title;
    }

    public Reading reading() {
        return reading;
    }
}
