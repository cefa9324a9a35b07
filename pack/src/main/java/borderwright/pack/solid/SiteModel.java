package borderwright.pack.solid;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.filling.SoilVolume;
import borderwright.engine.garden.SurveySpec.EdgeSpec;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import borderwright.engine.plan.Plan;
import borderwright.engine.survey.Outline;
import borderwright.pack.figures.PartWords;
import borderwright.pack.figures.PrintedFigures;
import de.javagl.jgltf.model.creation.MeshPrimitiveBuilder;
import de.javagl.jgltf.model.impl.DefaultMeshModel;
import de.javagl.jgltf.model.impl.DefaultMeshPrimitiveModel;
import de.javagl.jgltf.model.impl.DefaultNodeModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Soil in the planters, the ground inside the border, and what stands along its edges. */
final class SiteModel {
    private static final double EDGE_THICKNESS_MM = 40;
    private static final double GROUND_NET_MM = 500;
    private static final double MOST_CELLS = 4000;

    private final Plan plan;
    private final ModelColours colours;
    private final PrintedFigures f;

    SiteModel(Plan plan, ModelColours colours, PrintedFigures f) {
        this.plan = plan;
        this.colours = colours;
        this.f = f;
    }

    /** One node each for soil, ground and edges; what a garden has none of is left out. */
    List<DefaultNodeModel> nodes() {
        List<DefaultNodeModel> nodes = new ArrayList<>();
        gather("soil", soil(), nodes);
        Outline outline = plan.outline();
        TriangleMesh ground = TriangleMesh.under(outline.ring(), outline.ground()::heightMm, netMm(outline));
        gather("ground", List.of(node("ground surface", ModelColours.Part.GROUND, ground)), nodes);
        gather("edges", edges(), nodes);
        return nodes;
    }

    /** Wide enough that the corners of all triangles can be numbered in 16 bits. */
    private static double netMm(Outline outline) {
        return StrictMath.max(GROUND_NET_MM, StrictMath.sqrt(outline.ring().areaMm2() / MOST_CELLS));
    }

    private static void gather(String kind, List<DefaultNodeModel> parts, List<DefaultNodeModel> nodes) {
        if (!parts.isEmpty()) {
            DefaultNodeModel node = new DefaultNodeModel();
            node.setName(kind);
            node.setExtras(Map.of("kind", kind));
            parts.forEach(part -> {
                part.setParent(node);
                node.addChild(part);
            });
            nodes.add(node);
        }
    }

    private List<DefaultNodeModel> soil() {
        List<DefaultNodeModel> soil = new ArrayList<>();
        int next = 0;
        for (Box box : plan.boxes()) {
            for (Ring inside : box.inside()) {
                SoilVolume volume = plan.site().filling().planters().get(next++);
                double bottom = box.plan().bedMm() + box.plan().platformMm();
                if (volume.depthMm() > 0) {
                    soil.add(node(
                            "soil " + volume.planter(),
                            ModelColours.Part.SOIL,
                            TriangleMesh.of(new Prism(inside, bottom, bottom + volume.depthMm()))));
                }
            }
        }
        return soil;
    }

    /** Walls, fences and hedges as high as given or usual, outside the border's line. */
    private List<DefaultNodeModel> edges() {
        List<DefaultNodeModel> edges = new ArrayList<>();
        Outline outline = plan.outline();
        for (EdgeSpec spec : plan.garden().survey().edges()) {
            for (int i = 0; i < outline.ring().size(); i++) {
                String ends = spec.edge().first() + " " + spec.edge().last();
                boolean same = outline.edgeName(i).equals(ends)
                        || outline.edgeName(i)
                                .equals(spec.edge().last() + " " + spec.edge().first());
                if (same && spec.height().mm() > 0) {
                    edges.add(node(
                            f.text(PartWords.edge(spec.kind())) + " " + ends,
                            ModelColours.Part.EDGE,
                            along(outline, i, spec.height().mm())));
                }
            }
        }
        return edges;
    }

    /** A thin upright slab for each stretch of the edge, its foot as low as the ground there. */
    private static TriangleMesh along(Outline outline, int edge, double heightMm) {
        TriangleMesh mesh = new TriangleMesh(new ArrayList<>(), new ArrayList<>());
        List<Point> places = outline.placesAlong(edge);
        for (int i = 0; i + 1 < places.size(); i++) {
            Point a = places.get(i);
            Point b = places.get(i + 1);
            Point out = b.minus(a).unit().left().times(-EDGE_THICKNESS_MM);
            double atA = outline.ground().heightMm(a);
            double atB = outline.ground().heightMm(b);
            TriangleMesh slab = TriangleMesh.of(new Prism(
                    new Ring(List.of(a, a.plus(out), b.plus(out), b)),
                    StrictMath.min(atA, atB),
                    StrictMath.max(atA, atB) + heightMm));
            mesh.positions().addAll(slab.positions());
            mesh.normals().addAll(slab.normals());
        }
        return mesh;
    }

    private DefaultNodeModel node(String name, ModelColours.Part part, TriangleMesh mesh) {
        DefaultMeshPrimitiveModel primitive = MeshPrimitiveBuilder.create()
                .setIntIndicesAsShort(mesh.indexBuffer())
                .addPositions3D(mesh.positionBuffer())
                .addNormals3D(mesh.normalBuffer())
                .build();
        primitive.setMaterialModel(colours.of(part, part.name().toLowerCase(Locale.ROOT)));
        DefaultMeshModel shape = new DefaultMeshModel();
        shape.setName(name);
        shape.addMeshPrimitiveModel(primitive);
        DefaultNodeModel node = new DefaultNodeModel();
        node.setName(name);
        node.setExtras(Map.of("kind", part.name().toLowerCase(Locale.ROOT)));
        node.addMeshModel(shape);
        return node;
    }
}
