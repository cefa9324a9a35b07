package borderwright.pack.solid;

import borderwright.engine.buildup.parts.Piece;
import borderwright.pack.figures.PartWords;
import borderwright.pack.figures.PrintedFigures;
import de.javagl.jgltf.model.creation.MaterialBuilder;
import de.javagl.jgltf.model.v2.MaterialModelV2;
import java.util.EnumMap;
import java.util.Map;

/** A colour for each kind of piece, and for what stands round the boxes; linear, as glTF asks. Each is made once. */
final class ModelColours {
    private final Map<Piece.Role, MaterialModelV2> pieces = new EnumMap<>(Piece.Role.class);
    private final Map<Part, MaterialModelV2> parts = new EnumMap<>(Part.class);

    /** What is no wood of a box. */
    enum Part {
        SOIL(0.06f, 0.035f, 0.02f),
        GROUND(0.16f, 0.24f, 0.09f),
        EDGE(0.42f, 0.40f, 0.38f),
        SCREW(0.70f, 0.08f, 0.06f);

        private final float red;
        private final float green;
        private final float blue;

        Part(float red, float green, float blue) {
            this.red = red;
            this.green = green;
            this.blue = blue;
        }
    }

    MaterialModelV2 of(Piece.Role role, PrintedFigures f) {
        return pieces.computeIfAbsent(role, r -> named(f.text(PartWords.role(r)), colour(r)));
    }

    MaterialModelV2 of(Part part, String name) {
        return parts.computeIfAbsent(part, p -> named(name, p.red, p.green, p.blue));
    }

    /** Hues far enough apart to tell a post from a brace; walls and capping stay the colour of wood. */
    private static float[] colour(Piece.Role role) {
        return switch (role) {
            case WALL -> new float[] {0.52f, 0.37f, 0.24f};
            case CAPPING -> new float[] {0.66f, 0.52f, 0.36f};
            case DIVIDER -> new float[] {0.58f, 0.26f, 0.10f};
            case POST -> new float[] {0.12f, 0.24f, 0.40f};
            case BRACE -> new float[] {0.14f, 0.38f, 0.24f};
            case TIE -> new float[] {0.62f, 0.46f, 0.06f};
            case BEARER -> new float[] {0.34f, 0.14f, 0.34f};
            case LEG -> new float[] {0.20f, 0.08f, 0.22f};
            case SLAT -> new float[] {0.40f, 0.30f, 0.30f};
        };
    }

    private static MaterialModelV2 named(String name, float... rgb) {
        MaterialModelV2 material = MaterialBuilder.create()
                .setBaseColorFactor(rgb[0], rgb[1], rgb[2], 1)
                .setMetallicRoughnessFactors(0, 0.9f)
                .build();
        material.setName(name);
        return material;
    }
}
