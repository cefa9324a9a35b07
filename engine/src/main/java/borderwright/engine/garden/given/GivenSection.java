package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.BoardMoisture;
import borderwright.engine.garden.vocabulary.BoardSurface;
import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.measure.Length;
import org.jspecify.annotations.Nullable;

/** A board's cross-section, as measured, and what it is made of. */
@Described("a board's cross-section as measured on a few boards, and what it is made of")
public record GivenSection(
        @Described(value = "name used in build, price lists and stock", example = "larch 25 x 150")
        String name,

        @Described(value = "measured thickness", example = "25 mm", atLeast = 6, atMost = 150)
        Length thickness,

        @Described(value = "measured width", example = "150 mm", atLeast = 15, atMost = 400)
        Length width,

        @Described(
                value = "how far a board may differ from these sizes, either way",
                otherwise = "3 mm rough, 1 mm planed",
                atLeast = 0,
                atMost = 20)
        @Nullable
        Length tolerance,

        @Described(value = "its surface", otherwise = "rough") @Nullable
        BoardSurface surface,

        @Described(value = "the wood", example = "larch") @Nullable
        String species,

        @Described(value = "whether it is preservative treated", otherwise = "no") @Nullable
        Boolean treated,

        @Described(value = "how wet it arrives", otherwise = "wet") @Nullable
        BoardMoisture moisture,

        @Described(value = "whether either face may go out, so that a board may be turned over", otherwise = "yes")
        @Nullable
        Boolean bothFacesGood,

        @Described(value = "strength class or grade, if it is stamped", example = "C16") @Nullable
        String grade,

        @Described(value = "density as it arrives, kg/m3", otherwise = "700 wet, 550 dry", atLeast = 200, atMost = 1300)
        @Nullable
        Double density) {

    /** A section of which only name and size are given. */
    public static GivenSection of(String name, Length thickness, Length width) {
        return GivenSection.builder(name, thickness, width).build();
    }

    /** Begins with what is needed; what is not given is absent. */
    public static Builder builder(String name, Length thickness, Length width) {
        return new Builder(name, thickness, width);
    }

    /** Gives it key by key. */
    public static final class Builder {
        private final String name;
        private final Length thickness;
        private final Length width;
        private @Nullable Length tolerance;
        private @Nullable BoardSurface surface;
        private @Nullable String species;
        private @Nullable Boolean treated;
        private @Nullable BoardMoisture moisture;
        private @Nullable Boolean bothFacesGood;
        private @Nullable String grade;
        private @Nullable Double density;

        private Builder(String name, Length thickness, Length width) {
            this.name = name;
            this.thickness = thickness;
            this.width = width;
        }

        public Builder tolerance(@Nullable Length given) {
            tolerance = given;
            return this;
        }

        public Builder surface(@Nullable BoardSurface given) {
            surface = given;
            return this;
        }

        public Builder species(@Nullable String given) {
            species = given;
            return this;
        }

        public Builder treated(@Nullable Boolean given) {
            treated = given;
            return this;
        }

        public Builder moisture(@Nullable BoardMoisture given) {
            moisture = given;
            return this;
        }

        public Builder bothFacesGood(@Nullable Boolean given) {
            bothFacesGood = given;
            return this;
        }

        public Builder grade(@Nullable String given) {
            grade = given;
            return this;
        }

        public Builder density(@Nullable Double given) {
            density = given;
            return this;
        }

        public GivenSection build() {
            return new GivenSection(
                    name,
                    thickness,
                    width,
                    tolerance,
                    surface,
                    species,
                    treated,
                    moisture,
                    bothFacesGood,
                    grade,
                    density);
        }
    }
}
