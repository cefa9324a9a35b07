package borderwright.engine.garden.vocabulary;

/** Which face of a board is turned out. */
public enum FaceOut {
    @Described("the side nearer the heart of the tree: the edges cup into the box as it dries, held by the screws")
    HEART_OUT,
    @Described("the bark side")
    BARK_OUT,
    @Described("the better face, whichever it is")
    BEST_OUT
}
