package borderwright.engine.buildup.parts;

import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.measure.UnitSystem;
import java.util.List;
import java.util.Map;

/**
 * What there is to build with, the same for every box of a garden.
 *
 * @param sections the sections in question, as measured
 * @param saws the saws at hand
 * @param longestMm longest piece that a board of each section can give, trims taken off, mm, by section name; a section
 *     that is not named has no limit
 * @param units how lengths are written
 * @param steps to which pieces are cut
 */
public record BuildMeans(
        List<SectionSpec> sections,
        List<SawSpec> saws,
        Map<String, Double> longestMm,
        UnitSystem units,
        CutSteps steps) {
    /** For designs that nobody cuts: lengths as they come. */
    public BuildMeans(List<SectionSpec> sections, List<SawSpec> saws, Map<String, Double> longestMm, UnitSystem units) {
        this(sections, saws, longestMm, units, CutSteps.FINEST);
    }

    public BuildMeans {
        sections = List.copyOf(sections);
        saws = List.copyOf(saws);
        longestMm = Map.copyOf(longestMm);
    }

    public double longestMm(String section) {
        Double longest = longestMm.get(section);
        return longest == null ? Double.POSITIVE_INFINITY : longest;
    }

    /**
     * The section of that name.
     *
     * @throws IllegalArgumentException where there is none
     */
    public SectionSpec section(String name) {
        for (SectionSpec section : sections) {
            if (section.name().equals(name)) {
                return section;
            }
        }
        throw new IllegalArgumentException("no section is named " + name + "; the sections are "
                + sections.stream().map(SectionSpec::name).toList());
    }
}
