package borderwright.app.document;

/** How much a document may hold. A garden of sixty beds with three price lists needs about a twentieth of each. */
final class DocumentLimits {
    /** 1 MiB. */
    static final int MOST_BYTES = 1 << 20;

    /** Groups and lists within each other; a garden needs 6, in a variant 9. */
    static final int MOST_DEPTH = 20;

    /** Keys, texts, groups and lists together. */
    static final int MOST_NODES = 100_000;

    /** Keys of one group: each is compared with the others. */
    static final int MOST_KEYS = 100;

    /** Characters of one text. */
    static final int MOST_TEXT = 2_000;

    /** Variants: each is bound as a whole garden. */
    static final int MOST_VARIANTS = 20;

    /** Faults that are shown; a person mends these and reads again. */
    static final int MOST_FAULTS = 500;

    private DocumentLimits() {}
}
