package borderwright.engine.buildup.parts;

import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.SectionSpec;
import org.jspecify.annotations.Nullable;

/** Which section each part is made of, with the defaults of {@link BuildSpec} where nothing is given. */
public record PartSections(
        SectionSpec walls,
        SectionSpec braces,
        SectionSpec posts,
        SectionSpec ties,
        SectionSpec dividers,
        SectionSpec capping,
        SectionSpec bearers,
        SectionSpec slats) {

    /**
     * Those of a box.
     *
     * @throws IllegalArgumentException where the rules name a section that the means lack
     */
    public static PartSections of(BuildSpec rules, BuildMeans means) {
        String braces = first(rules.braces(), rules.posts(), rules.walls());
        return new PartSections(
                means.section(rules.walls()),
                means.section(braces),
                means.section(first(rules.posts(), braces)),
                means.section(first(rules.ties(), rules.walls())),
                means.section(first(rules.dividers(), rules.walls())),
                means.section(first(rules.capping(), rules.walls())),
                means.section(first(rules.bearers(), braces)),
                means.section(first(rules.slats(), rules.walls())));
    }

    private static String first(@Nullable String said, String otherwise) {
        return said != null ? said : otherwise;
    }

    private static String first(@Nullable String said, @Nullable String next, String otherwise) {
        return said != null ? said : first(next, otherwise);
    }
}
