package borderwright.engine.buildup.parts;

import borderwright.engine.garden.BuildRules;
import borderwright.engine.garden.SectionNote;
import org.jspecify.annotations.Nullable;

/** Which section each part is made of, with the habits of {@link BuildRules} where nothing is said. */
public record PartSections(
        SectionNote walls,
        SectionNote braces,
        SectionNote posts,
        SectionNote ties,
        SectionNote dividers,
        SectionNote capping,
        SectionNote bearers,
        SectionNote slats) {

    /**
     * Those of a box.
     *
     * @throws IllegalArgumentException where the rules name a section that the means lack
     */
    public static PartSections of(BuildRules rules, BuildMeans means) {
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
