package borderwright.engine.buildup.parts;

import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.BuildSpec.BoxPart;
import borderwright.engine.garden.SectionSpec;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

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
        return PartSections.builder()
                .walls(means.section(rules.walls()))
                .braces(means.section(rules.section(BoxPart.BRACES)))
                .posts(means.section(rules.section(BoxPart.POSTS)))
                .ties(means.section(rules.section(BoxPart.TIES)))
                .dividers(means.section(rules.section(BoxPart.DIVIDERS)))
                .capping(means.section(rules.section(BoxPart.CAPPING)))
                .bearers(means.section(rules.section(BoxPart.BEARERS)))
                .slats(means.section(rules.section(BoxPart.SLATS)))
                .build();
    }

    public static Builder builder() {
        return new Builder();
    }

    /** Sets the parts one by one; none may be left out. */
    public static final class Builder {
        private @Nullable SectionSpec walls;
        private @Nullable SectionSpec braces;
        private @Nullable SectionSpec posts;
        private @Nullable SectionSpec ties;
        private @Nullable SectionSpec dividers;
        private @Nullable SectionSpec capping;
        private @Nullable SectionSpec bearers;
        private @Nullable SectionSpec slats;

        private Builder() {}

        public Builder walls(SectionSpec set) {
            walls = set;
            return this;
        }

        public Builder braces(SectionSpec set) {
            braces = set;
            return this;
        }

        public Builder posts(SectionSpec set) {
            posts = set;
            return this;
        }

        public Builder ties(SectionSpec set) {
            ties = set;
            return this;
        }

        public Builder dividers(SectionSpec set) {
            dividers = set;
            return this;
        }

        public Builder capping(SectionSpec set) {
            capping = set;
            return this;
        }

        public Builder bearers(SectionSpec set) {
            bearers = set;
            return this;
        }

        public Builder slats(SectionSpec set) {
            slats = set;
            return this;
        }

        /**
         * With all that was set.
         *
         * @throws NullPointerException where a part without a value is missing; its name is the message
         */
        public PartSections build() {
            return new PartSections(
                    Objects.requireNonNull(walls, "walls"),
                    Objects.requireNonNull(braces, "braces"),
                    Objects.requireNonNull(posts, "posts"),
                    Objects.requireNonNull(ties, "ties"),
                    Objects.requireNonNull(dividers, "dividers"),
                    Objects.requireNonNull(capping, "capping"),
                    Objects.requireNonNull(bearers, "bearers"),
                    Objects.requireNonNull(slats, "slats"));
        }
    }
}
