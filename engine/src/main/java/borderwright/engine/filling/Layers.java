package borderwright.engine.filling;

import borderwright.engine.garden.FillingSpec;
import borderwright.engine.garden.FillingSpec.MixPart;
import borderwright.engine.garden.SoilSpec;
import borderwright.engine.message.Message;
import java.util.ArrayList;
import java.util.List;

/**
 * Divides what fills the planters into materials: gravel and coarse base at the bottom, no deeper than the planter, then earth
 * dug on the spot, then the mix.
 *
 * <p>Gravel does not settle; every other material is ordered with the settlement allowed for.
 */
record Layers(SoilSpec soil, FillingSpec spec) {
    /**
     * The materials, bottom first.
     *
     * @param planters what fills each planter
     * @param dugLooseM3 earth dug in the garden, m3 loose
     */
    List<Material> of(List<SoilVolume> planters, double dugLooseM3) {
        double gravelM3 = 0;
        double baseM3 = 0;
        double filledM3 = 0;
        for (SoilVolume planter : planters) {
            double gravel = share(planter, 0, spec.drainageMm());
            double base = share(planter, spec.drainageMm(), spec.baseMm());
            gravelM3 += gravel;
            baseM3 += base;
            filledM3 += planter.filledM3();
        }
        double settled = soil.loose(1);
        double topM3 = filledM3 - gravelM3 - baseM3;
        double reusedM3 = Math.min(topM3 * settled, dugLooseM3 * spec.reused());
        List<Material> materials = new ArrayList<>();
        add(materials, Material.bought("gravel", FillMessage.LAYER_OF_DRAINAGE.of(), gravelM3, gravelM3));
        if (spec.coarseLayer().isPresent()) {
            FillingSpec.CoarseLayer base = spec.coarseLayer().get();
            Message coarse = FillMessage.LAYER_OF_COARSE_FILL.of();
            double looseM3 = baseM3 * settled;
            add(
                    materials,
                    base.isAtHand()
                            ? Material.atHand(base.item(), coarse, baseM3, looseM3)
                            : Material.bought(base.item(), coarse, baseM3, looseM3));
        }
        add(materials, Material.atHand("dug earth", FillMessage.LAYER_OF_DUG_EARTH.of(), reusedM3 / settled, reusedM3));
        mix(materials, topM3 - reusedM3 / settled, settled);
        return materials;
    }

    private void mix(List<Material> materials, double filledM3, double settled) {
        List<MixPart> parts = spec.mix();
        double sum = parts.stream().mapToDouble(MixPart::parts).sum();
        for (MixPart part : parts) {
            double m3 = filledM3 * part.parts() / sum;
            FillMessage layer = parts.size() == 1 ? FillMessage.LAYER_OF_SOIL : FillMessage.LAYER_OF_MIX;
            add(materials, Material.bought(part.item(), layer.of(), m3, m3 * settled));
        }
    }

    /** Volume of a layer in a planter: its share of the depth. */
    private static double share(SoilVolume planter, double fromMm, double depthMm) {
        double left = Math.max(0, Math.min(depthMm, planter.depthMm() - fromMm));
        return planter.depthMm() <= 0 ? 0 : planter.filledM3() * left / planter.depthMm();
    }

    private static void add(List<Material> materials, Material material) {
        if (material.orderedM3() > 1e-9) {
            materials.add(material);
        }
    }
}
