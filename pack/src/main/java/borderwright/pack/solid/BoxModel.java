package borderwright.pack.solid;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.plan.Plan;
import borderwright.engine.strength.BowShift;
import borderwright.pack.figures.PartWords;
import borderwright.pack.figures.PrintedFigures;
import de.javagl.jgltf.model.creation.AccessorModels;
import de.javagl.jgltf.model.creation.GltfModelBuilder;
import de.javagl.jgltf.model.creation.MeshPrimitiveBuilder;
import de.javagl.jgltf.model.impl.DefaultGltfModel;
import de.javagl.jgltf.model.impl.DefaultMeshModel;
import de.javagl.jgltf.model.impl.DefaultMeshPrimitiveModel;
import de.javagl.jgltf.model.impl.DefaultNodeModel;
import de.javagl.jgltf.model.impl.DefaultSceneModel;
import de.javagl.jgltf.model.io.GltfModelWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Writes all boxes of a plan, and the garden that they stand in, as a binary glTF file.
 *
 * <p>Screws, soil, ground and the border's edges are nodes beside the boxes, so that a viewer can hide each. Every node says what it is
 * in its {@code extras}.
 *
 * <p>Pieces of a side that bows carry a morph target named {@code bow}: weight 0 is as built, 1 as it ends up, and a weight of
 * 10 shows ten times the bow.
 */
public final class BoxModel {
    /** Boards are divided this often along their length, so that they can be drawn bent, mm. */
    private static final double BEND_MM = 100;

    private final ModelColours colours = new ModelColours();
    private final PrintedFigures f;

    private BoxModel(PrintedFigures f) {
        this.f = f;
    }

    /** The model; boxes in plan order, pieces in build order, then screws, soil, ground and edges. */
    public static byte[] write(Plan plan) {
        BoxModel model = new BoxModel(PrintedFigures.in(plan.garden().units()));
        DefaultSceneModel scene = new DefaultSceneModel();
        for (int i = 0; i < plan.boxes().size(); i++) {
            Box box = plan.boxes().get(i);
            boolean known = i < plan.strengthReports().size();
            scene.addNode(model.box(
                    box, known ? new BowShift(box, plan.strengthReports().get(i)) : null));
        }
        scene.addNode(new ScrewModel(plan, model.colours).node());
        new SiteModel(plan, model.colours, model.f).nodes().forEach(scene::addNode);
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
        node.setExtras(Map.of("kind", "box"));
        box.pieces().forEach(piece -> {
            DefaultNodeModel child = piece(piece, bow);
            child.setParent(node);
            node.addChild(child);
        });
        return node;
    }

    private DefaultNodeModel piece(Piece piece, @Nullable BowShift bow) {
        boolean bows = bow != null && bow.moves(piece);
        TriangleMesh mesh = bows ? TriangleMesh.of(piece.place(), BEND_MM) : TriangleMesh.of(piece.place());
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
        primitive.setMaterialModel(colours.of(piece.role(), f));
        shape.setName(piece.label());
        shape.addMeshPrimitiveModel(primitive);
        DefaultNodeModel node = new DefaultNodeModel();
        node.setName(piece.label());
        node.setExtras(extras(piece));
        node.addMeshModel(shape);
        return node;
    }

    /** What a viewer may sort or filter by; the order is that of the file. */
    private Map<String, Object> extras(Piece piece) {
        Map<String, Object> extras = new LinkedHashMap<>();
        extras.put("kind", "piece");
        extras.put("role", f.text(PartWords.role(piece.role())));
        extras.put("section", piece.section());
        extras.put("lengthMm", piece.length().mm());
        return extras;
    }
}
