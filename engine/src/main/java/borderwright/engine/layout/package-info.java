/**
 * From the border and the runs requested to the plan outline and bed level of each box.
 *
 * <p><b>Settles</b> where planters stand: how many and how long, how the run turns corners and follows curves, at which
 * level each bed lies, what ground stays open, and whether every place can be reached.
 *
 * <p><b>Takes</b> an adjusted {@link borderwright.engine.survey.Outline}, the {@link
 * borderwright.engine.garden.RunSpec}es in order of precedence, and {@link borderwright.engine.layout.plan.LayoutRules}.
 * <b>Gives</b> a {@link borderwright.engine.layout.plan.Layout}.
 *
 * <p><b>Promises</b> of every box, for every input: its outline is a simple polygon, anticlockwise; it lies inside the
 * border and keeps the clearance of every edge to 1e-6 mm (the gap given for its run where there is one); no two boxes
 * overlap; every angle inside it is 45 to 315 degrees; every side is at least {@link
 * borderwright.engine.layout.plan.LayoutRules#leastEdgeMm()} long; dividers are square to their sides, keep that distance from
 * every corner of their side and from each other. The requested number of planters stands, or a problem says why not. The
 * same input gives the same layout; a turned, shifted or mirrored garden gives the turned, shifted or mirrored layout.
 *
 * <p><b>Units.</b> Millimetres, radians; levels in mm above the garden's datum.
 *
 * <p><b>Method</b>, run by run:
 *
 * <ol>
 *   <li>The edges from the corners named ({@link borderwright.engine.layout.run.RunPath}), and a depth that fits ({@link
 *       borderwright.engine.layout.run.DepthFit}); for rows that stand free, lines at given distances from an edge.
 *   <li>Legs: straight edges as they are, curved ones in facets ({@link borderwright.engine.layout.run.RunEdges}, {@link
 *       borderwright.engine.layout.run.CurveFacets}), and where the lines of two legs cross ({@link
 *       borderwright.engine.layout.room.LegJoint}).
 *   <li>Fit: free stations of each leg, exactly ({@link borderwright.engine.layout.room.Shadow}); what does not fit gives way
 *       for good, one thing at a time ({@link borderwright.engine.layout.run.RunChain}).
 *   <li>Equal planters along the middle line, corner planters' wings at its ends ({@link
 *       borderwright.engine.layout.run.BayLengths}, {@link borderwright.engine.layout.run.BayCuts}).
 *   <li>Outlines, blunt noses, infill planters ({@link borderwright.engine.layout.boxes.BoxOutline}, {@link
 *       borderwright.engine.layout.run.Nose}, {@link borderwright.engine.layout.run.WedgeInfill}).
 *   <li>Bed levels ({@link borderwright.engine.layout.run.BedLevels}), names, sides ({@link
 *       borderwright.engine.layout.boxes.RunLayout}).
 *   <li>At the end, over all runs: a last check of overlap, reach ({@link borderwright.engine.layout.boxes.ReachCheck}), open
 *       ground.
 * </ol>
 *
 * <p><b>Sources.</b> Sag of a chord R (1 - cos(a/2)), mitred front and back differing by depth x tan(90 - C/2) per wing:
 * plane geometry, checked against worked values. Defaults (gaps, reach 600 mm from one side, sag 40 mm) are common
 * practice, no source.
 *
 * <p><b>Does not cover</b> ranges of depth and height, more than one depth in a run, paths other than those between the
 * free rows of one run.
 *
 * <p><b>Start reading</b> at {@link borderwright.engine.layout.BorderLayout}.
 */
@NullMarked
package borderwright.engine.layout;

import org.jspecify.annotations.NullMarked;
