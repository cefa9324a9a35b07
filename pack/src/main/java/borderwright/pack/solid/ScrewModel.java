package borderwright.pack.solid;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Joint;
import borderwright.engine.buildup.parts.ScrewLine;
import borderwright.engine.plan.Plan;
import de.javagl.jgltf.model.creation.MeshPrimitiveBuilder;
import de.javagl.jgltf.model.impl.DefaultMeshModel;
import de.javagl.jgltf.model.impl.DefaultMeshPrimitiveModel;
import de.javagl.jgltf.model.impl.DefaultNodeModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The screws of the boxes as plain pins, so that a viewer sees where each goes and where it ends. */
final class ScrewModel {
    /** The same for all: a pin shows a place, not a make. */
    private static final double WIDE_MM = 5;

    private static final String KIND = "screws";

    private final Plan plan;
    private final ModelColours colours;

    ScrewModel(Plan plan, ModelColours colours) {
        this.plan = plan;
        this.colours = colours;
    }

    /** One node over all boxes, with one node for each. */
    DefaultNodeModel node() {
        DefaultNodeModel all = named(KIND);
        for (Box box : plan.boxes()) {
            TriangleMesh pins = TriangleMesh.pins(screws(box), WIDE_MM);
            if (pins.size() > 0) {
                DefaultNodeModel node = named(KIND + " " + box.plan().name());
                node.addMeshModel(mesh(node.getName(), pins));
                node.setParent(all);
                all.addChild(node);
            }
        }
        return all;
    }

    private static List<ScrewLine> screws(Box box) {
        List<ScrewLine> screws = new ArrayList<>();
        for (Joint joint : box.joints()) {
            joint.screws().stream().filter(screw -> screw.lengthMm() > 0).forEach(screws::add);
        }
        return screws;
    }

    private static DefaultNodeModel named(String name) {
        DefaultNodeModel node = new DefaultNodeModel();
        node.setName(name);
        node.setExtras(Map.of("kind", KIND));
        return node;
    }

    private DefaultMeshModel mesh(String name, TriangleMesh pins) {
        DefaultMeshPrimitiveModel primitive = MeshPrimitiveBuilder.create()
                .setIntIndices(pins.indexBuffer())
                .addPositions3D(pins.positionBuffer())
                .addNormals3D(pins.normalBuffer())
                .build();
        primitive.setMaterialModel(colours.of(ModelColours.Part.SCREW, KIND));
        DefaultMeshModel shape = new DefaultMeshModel();
        shape.setName(name);
        shape.addMeshPrimitiveModel(primitive);
        return shape;
    }
}
