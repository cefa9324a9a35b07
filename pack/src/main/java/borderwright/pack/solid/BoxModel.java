package borderwright.pack.solid;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.plan.Plan;
import borderwright.engine.strength.BowShift;
import borderwright.pack.figures.PartWords;
import borderwright.pack.figures.PrintedFigures;
import de.javagl.jgltf.model.creation.AccessorModels;
import de.javagl.jgltf.model.creation.GltfModelBuilder;
import de.javagl.jgltf.model.creation.MaterialBuilder;
import de.javagl.jgltf.model.creation.MeshPrimitiveBuilder;
import de.javagl.jgltf.model.impl.DefaultGltfModel;
import de.javagl.jgltf.model.impl.DefaultMeshModel;
import de.javagl.jgltf.model.impl.DefaultMeshPrimitiveModel;
import de.javagl.jgltf.model.impl.DefaultNodeModel;
import de.javagl.jgltf.model.impl.DefaultSceneModel;
import de.javagl.jgltf.model.io.GltfModelWriter;
import de.javagl.jgltf.model.v2.MaterialModelV2;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Writes all boxes of a plan as a binary glTF file.
 *
 * <p>Pieces of a side that bows carry a morph target named {@code bow}: weight 0 is as built, 1 as it ends up, and a weight of
 * 10 shows ten times the bow.
 */
public final class BoxModel {
    /** Boards are divided this often along their length, so that they can be drawn bent, mm. */
    private static final double BEND_MM = 100;

    private final Map<Piece.Role, MaterialModelV2> materials = new EnumMap<>(Piece.Role.class);

    private final PrintedFigures f;

    private BoxModel(PrintedFigures f) {
        this.f = f;
    }

    /** The model; boxes in plan order, pieces in build order. */
    public static byte[] write(Plan plan) {
        BoxModel model = new BoxModel(PrintedFigures.in(plan.garden().units()));
        DefaultSceneModel scene = new DefaultSceneModel();
        for (int i = 0; i < plan.boxes().size(); i++) {
            Box box = plan.boxes().get(i);
            boolean known = i < plan.strengthReports().size();
            scene.addNode(model.box(
                    box, known ? new BowShift(box, plan.strengthReports().get(i)) : null));
        }
        GltfModelBuilder builder = GltfModelBuilder.create();
        builder.addSceneModel(scene);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            DefaultGltfModel gltf = builder.build();
            gltf.getAssetModel().setGenerator("Borderwright");
            new GltfModelWriter().writeBinary(gltf, out);
        } catch (IOException e) {
            throw new UncheckedIOException("the model could not be written", e);
        }
        return out.toByteArray();
    }

    private DefaultNodeModel box(Box box, @Nullable BowShift bow) {
        DefaultNodeModel node = new DefaultNodeModel();
        node.setName(box.plan().name());
        box.pieces().forEach(piece -> {
            DefaultNodeModel child = piece(piece, bow);
            child.setParent(node);
            node.addChild(child);
        });
        return node;
    }

    private DefaultNodeModel piece(Piece piece, @Nullable BowShift bow) {
        boolean bows = bow != null && bow.moves(piece);
        PrismMesh mesh = bows ? PrismMesh.of(piece.place(), BEND_MM) : PrismMesh.of(piece.place());
        MeshPrimitiveBuilder builder = MeshPrimitiveBuilder.create()
                .setIntIndicesAsShort(mesh.indexBuffer())
                .addPositions3D(mesh.positionBuffer())
                .addNormals3D(mesh.normalBuffer());
        DefaultMeshModel shape = new DefaultMeshModel();
        if (bow != null && bows) {
            builder.addMorphTarget(
                    0,
                    "POSITION",
                    AccessorModels.createFloat3D(mesh.shiftBuffer((place, height) -> bow.at(piece, place, height))));
            shape.setWeights(new float[] {0});
            shape.setExtras(Map.of("targetNames", List.of("bulge")));
        }
        DefaultMeshPrimitiveModel primitive = builder.build();
        primitive.setMaterialModel(materials.computeIfAbsent(piece.role(), this::material));
        shape.setName(piece.label());
        shape.addMeshPrimitiveModel(primitive);
        DefaultNodeModel node = new DefaultNodeModel();
        node.setName(piece.label());
        node.addMeshModel(shape);
        return node;
    }

    /** Wood in tones that tell the roles apart, linear colour as glTF asks. */
    private MaterialModelV2 material(Piece.Role role) {
        float tone = switch (role) {
            case WALL -> 0.52f;
            case DIVIDER -> 0.44f;
            case POST -> 0.26f;
            case BRACE -> 0.31f;
            case TIE -> 0.36f;
            case BEARER, LEG -> 0.21f;
            case SLAT -> 0.40f;
            case CAPPING -> 0.62f;
        };
        MaterialModelV2 material = MaterialBuilder.create()
                .setBaseColorFactor(tone, tone * 0.72f, tone * 0.46f, 1)
                .setMetallicRoughnessFactors(0, 0.9f)
                .build();
        material.setName(f.text(PartWords.role(role)));
        return material;
    }
}
