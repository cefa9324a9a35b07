package borderwright.engine.garden;

import borderwright.engine.garden.vocabulary.CornerStyle;
import borderwright.engine.garden.vocabulary.FaceOut;
import borderwright.engine.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How boxes are put together: which section for what, and how far apart.
 *
 * @param parts which section each part is made of
 * @param corners how the walls meet at a corner, where its angle allows it
 * @param bracing how far apart uprights and ties stand
 * @param floor a false floor's slats and bearers
 * @param cappingOverhang how far the capping stands out over the wall outside
 * @param faceOut which face of a board goes out
 * @param screws through the walls; nothing where they go by the boards' thickness
 */
public record BuildSpec(
        PartSpec parts,
        CornerStyle corners,
        BracingSpec bracing,
        FloorSpec floor,
        Length cappingOverhang,
        FaceOut faceOut,
        Optional<ScrewSize> screws) {

    /** The parts of a box that may be of a section of their own. */
    public enum BoxPart {
        WALLS,
        BRACES,
        POSTS,
        TIES,
        DIVIDERS,
        CAPPING,
        BEARERS,
        SLATS
    }

    /**
     * A part and its section.
     *
     * @param part of a box
     * @param section by its name
     * @param as the part whose section it takes; nothing where it has one of its own
     */
    public record PartChoice(BoxPart part, String section, Optional<BoxPart> as) {}

    /** Each part with its section. */
    public record PartSpec(List<PartChoice> choices) {
        public PartSpec {
            choices = List.copyOf(choices);
        }

        /**
         * Name of a part's section.
         *
         * @throws IllegalArgumentException where the part is none of these
         */
        public String section(BoxPart part) {
            return choice(part).section();
        }

        /** The same with another section for a part, and for those that take the part's. */
        PartSpec with(BoxPart part, String section) {
            List<PartChoice> own = new ArrayList<>(choices);
            own.replaceAll(choice -> choice.part() == part ? new PartChoice(part, section, Optional.empty()) : choice);
            PartSpec changed = new PartSpec(own);
            return new PartSpec(own.stream()
                    .map(choice ->
                            new PartChoice(choice.part(), changed.origin(choice).section(), choice.as()))
                    .toList());
        }

        private PartChoice origin(PartChoice choice) {
            return choice.as().map(as -> origin(choice(as))).orElse(choice);
        }

        private PartChoice choice(BoxPart part) {
            return choices.stream()
                    .filter(choice -> choice.part() == part)
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("no section for " + part));
        }
    }

    /**
     * How far apart uprights and ties stand, and how deep.
     *
     * @param braces greatest distance between braces, posts and dividers; nothing for as far as the walls hold
     * @param ties greatest distance between ties, 0 for none; nothing for as far as the walls hold
     * @param postFooting how deep posts and braces are let into the ground; 0 for not at all
     */
    public record BracingSpec(Optional<Length> braces, Optional<Length> ties, Length postFooting) {}

    /**
     * A false floor.
     *
     * @param slatGap gap between its slats
     * @param bearerSpacing greatest distance between its bearers; nothing for as far as it holds
     */
    public record FloorSpec(Length slatGap, Optional<Length> bearerSpacing) {}

    /** A screw's size. */
    public record ScrewSize(Length diameter, Length length) {}

    /** Name of the section of a part. */
    public String section(BoxPart part) {
        return parts.section(part);
    }

    /** Name of the section of the walls. */
    public String walls() {
        return section(BoxPart.WALLS);
    }

    /** The same with walls of another section; what goes by the walls' section goes by the new one. */
    public BuildSpec withWalls(String other) {
        return with(parts.with(BoxPart.WALLS, other));
    }

    /** The same with posts and braces of another section. */
    public BuildSpec withUprights(String other) {
        return with(parts.with(BoxPart.BRACES, other).with(BoxPart.POSTS, other));
    }

    private BuildSpec with(PartSpec other) {
        return new BuildSpec(other, corners, bracing, floor, cappingOverhang, faceOut, screws);
    }

    /** The same with corners that meet in another way. */
    public BuildSpec withCorners(CornerStyle other) {
        return new BuildSpec(parts, other, bracing, floor, cappingOverhang, faceOut, screws);
    }

    /** The same with posts and braces let into the ground. */
    public BuildSpec withPostFooting(Length depth) {
        BracingSpec footed = new BracingSpec(bracing.braces(), bracing.ties(), depth);
        return new BuildSpec(parts, corners, footed, floor, cappingOverhang, faceOut, screws);
    }

    /** The same with a false floor's bearers no further apart. */
    public BuildSpec withBearerSpacing(Length spacing) {
        FloorSpec closer = new FloorSpec(floor.slatGap(), Optional.of(spacing));
        return new BuildSpec(parts, corners, bracing, closer, cappingOverhang, faceOut, screws);
    }

    /** Whether posts and braces are let into the ground. */
    public boolean isFooted() {
        return bracing.postFooting().ticks() > 0;
    }

    /** How deep posts and braces are let into the ground, mm; 0 for not at all. */
    public double postFootingMm() {
        return bracing.postFooting().mm();
    }
}
