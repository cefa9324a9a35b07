package borderwright.pack.form;

import borderwright.engine.garden.given.GivenArc;
import borderwright.engine.garden.given.GivenGround;
import borderwright.engine.garden.given.GivenMeasure;
import borderwright.engine.garden.given.GivenNearby;
import borderwright.engine.garden.given.GivenSurvey;
import borderwright.engine.garden.vocabulary.ArcBulge;
import borderwright.engine.garden.vocabulary.ArcTaken;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.NearbyKind;
import borderwright.engine.garden.vocabulary.RingDirection;
import borderwright.engine.garden.vocabulary.TapeHeld;
import borderwright.engine.garden.vocabulary.ground.DugSoil;
import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import borderwright.pack.paper.PaperSize;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * What the survey form asks for.
 *
 * @param paper that it is printed on
 * @param units in which its squares are
 */
public record SurveyForm(PaperSize paper, UnitSystem units) {

    public List<FormMessage> cautions() {
        return List.of(
                FormMessage.FORM_CAUTION_SERVICES,
                FormMessage.FORM_CAUTION_BOUNDARY,
                FormMessage.FORM_CAUTION_WALLS,
                FormMessage.FORM_CAUTION_ROOF);
    }

    public List<FormMessage> bring() {
        return List.of(
                FormMessage.FORM_BRING_TAPES,
                FormMessage.FORM_BRING_PEGS,
                FormMessage.FORM_BRING_LEVEL,
                FormMessage.FORM_BRING_PLUMB,
                FormMessage.FORM_BRING_GAUGE,
                FormMessage.FORM_BRING_PEN,
                FormMessage.FORM_BRING_PHOTOS,
                FormMessage.FORM_BRING_HELPER);
    }

    /** The keys of {@code survey} itself that are written on a line: the corners, and how wide a strip is. */
    public List<String> surveyLines() {
        return Arrays.stream(GivenSurvey.class.getRecordComponents())
                .filter(component -> component.getType() == Names.class || component.getType() == Length.class)
                .map(DocumentKeys::key)
                .toList();
    }

    /** Which way the corners go round. */
    public FormChoice goingRound() {
        return FormChoice.of(GivenSurvey.class, RingDirection.class);
    }

    /** What the ground is. */
    public List<FormChoice> ground() {
        return List.of(
                FormChoice.of(GivenGround.class, GroundSurface.class), FormChoice.of(GivenGround.class, DugSoil.class));
    }

    /** The load limit of a roof, written on a line. */
    public String loadLimit() {
        return DocumentKeys.key(DocumentKeys.component(GivenGround.class, "load limit"));
    }

    public FormTable edges() {
        return FormTable.of(
                GivenSurvey.GivenEdge.class,
                Set.of(),
                FormMessage.FORM_EDGES.of(),
                FormMessage.FORM_EDGES_HOW.of(DocumentKeys.choices(EdgeKind.class)),
                4);
    }

    public FormTable tapes() {
        return measures(
                GivenMeasure.GivenTapeLength.class,
                FormMessage.FORM_TAPES,
                FormMessage.FORM_TAPES_HOW.of(DocumentKeys.choices(TapeHeld.class)),
                tallRows());
    }

    public FormTable levels() {
        return measures(
                GivenMeasure.GivenLevelReading.class,
                FormMessage.FORM_LEVELS,
                FormMessage.FORM_LEVELS_HOW.of(),
                tallRows());
    }

    /** How straight a line is, is hardly ever known; the rest of its keys is asked for. */
    public FormTable chains() {
        return FormTable.of(
                GivenMeasure.GivenTapeChain.class,
                Set.of("straight"),
                FormMessage.FORM_CHAINS.of(),
                FormMessage.FORM_CHAINS_HOW.of(),
                2);
    }

    public FormTable offsets() {
        return measures(
                GivenMeasure.GivenBaselineOffset.class, FormMessage.FORM_OFFSETS, FormMessage.FORM_OFFSETS_HOW.of(), 4);
    }

    public FormTable angles() {
        return measures(
                GivenMeasure.GivenGaugeAngle.class, FormMessage.FORM_ANGLES, FormMessage.FORM_ANGLES_HOW.of(), 2);
    }

    public FormTable leans() {
        return measures(GivenMeasure.GivenWallLean.class, FormMessage.FORM_LEANS, FormMessage.FORM_LEANS_HOW.of(), 2);
    }

    public FormTable arcs() {
        return measures(
                GivenArc.class,
                FormMessage.FORM_ARCS,
                FormMessage.FORM_ARCS_HOW.of(
                        DocumentKeys.choices(ArcTaken.class), DocumentKeys.choices(ArcBulge.class)),
                1);
    }

    public FormTable rises() {
        return measures(GivenMeasure.GivenRise.class, FormMessage.FORM_RISES, FormMessage.FORM_RISES_HOW.of(), 1);
    }

    public FormTable near() {
        return FormTable.of(
                GivenNearby.class,
                Set.of(),
                FormMessage.FORM_NEAR.of(),
                FormMessage.FORM_NEAR_HOW.of(DocumentKeys.choices(NearbyKind.class)),
                4);
    }

    private static FormTable measures(Class<? extends GivenMeasure> kind, FormMessage title, Message how, int rows) {
        return FormTable.of(kind.asSubclass(Record.class), Set.of(), title.of(), how, rows);
    }

    private int tallRows() {
        return paper == PaperSize.A4 ? 7 : 5;
    }
}
