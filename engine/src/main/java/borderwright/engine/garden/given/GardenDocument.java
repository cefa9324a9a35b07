package borderwright.engine.garden.given;

import java.util.List;

/**
 * A whole garden document: the garden and its named variants, each complete in itself.
 *
 * @param garden as given
 * @param variants in the order in which they were written; a variant's overrides are already laid over the garden
 */
public record GardenDocument(GivenGarden garden, List<Variant> variants) {
    public GardenDocument {
        variants = List.copyOf(variants);
    }

    /**
     * The garden with some requests changed.
     *
     * @param name what the person calls it
     * @param changed the field paths that differ, such as {@code build.walls}, in the order written
     * @param garden complete
     */
    public record Variant(String name, List<String> changed, GivenGarden garden) {
        public Variant {
            changed = List.copyOf(changed);
        }
    }
}
