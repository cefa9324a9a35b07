package borderwright.engine.strength.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.garden.vocabulary.ground.FoundationSoil;
import borderwright.engine.strength.worked.Working;
import org.junit.jupiter.api.Test;

class PostFootingTest {
    private static final double KN_PER_KIP = 4.4482216152605;
    private static final double M_PER_FT = 0.3048;

    /**
     * T. Christy, Engineering with the Spreadsheet, ASCE 2006, template 16 (pole foundation by UBC 1806.7.2.1 and IBC
     * 1805.7.2.1): 0.51 kip at 4 ft, post 1 ft wide; depth found 5.02 ft at 266 psf/ft. Here with 200 psf/ft of table 1806.2
     * and the load in proportion: what the equation gives for S1 alone is linear.
     */
    @Test
    void thePoleOfTheAsceTemplateIsUsedInFull() {
        double push = 0.510 * KN_PER_KIP * 200 / 266;
        PostFooting pole = new PostFooting(5.02 * M_PER_FT, M_PER_FT, FoundationSoil.GRAVEL);
        double use = pole.use(push, push * 4 * M_PER_FT, Working.SILENT);
        assertThat(use).isCloseTo(1, within(0.005));
    }

    /** IBC 2012 table 1806.2: 100 psf/ft in clay. */
    @Test
    void lateralBearingIsTheTables() {
        assertThat(FoundationSoil.CLAY.lateralKnPerM3()).isCloseTo(15.71, within(0.005));
        assertThat(FoundationSoil.UNKNOWN.lateralKnPerM3()).isZero();
    }

    @Test
    void twiceTheDepthBearsFarMoreThanTwiceTheLoad() {
        PostFooting shallow = new PostFooting(0.4, 0.1, FoundationSoil.SAND);
        PostFooting deep = new PostFooting(0.8, 0.1, FoundationSoil.SAND);
        assertThat(shallow.use(0.1, 0.03, Working.SILENT)).isGreaterThan(4 * deep.use(0.1, 0.03, Working.SILENT));
    }
}
