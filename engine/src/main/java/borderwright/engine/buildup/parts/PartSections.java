package borderwright.engine.buildup.parts;

import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.BuildSpec.BoxPart;
import borderwright.engine.garden.SectionSpec;

/** Which section each part is made of. */
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
        return new PartSections(
                means.section(rules.walls()),
                means.section(rules.section(BoxPart.BRACES)),
                means.section(rules.section(BoxPart.POSTS)),
                means.section(rules.section(BoxPart.TIES)),
                means.section(rules.section(BoxPart.DIVIDERS)),
                means.section(rules.section(BoxPart.CAPPING)),
                means.section(rules.section(BoxPart.BEARERS)),
                means.section(rules.section(BoxPart.SLATS)));
    }
}
