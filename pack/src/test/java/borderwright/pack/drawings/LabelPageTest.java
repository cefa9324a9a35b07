package borderwright.pack.drawings;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.measure.UnitSystem;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.DrawingBuilder;
import borderwright.pack.paper.Mark;
import borderwright.pack.paper.Spot;
import borderwright.pack.paper.TextSize;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LabelPageTest {
    private static final int DOTS_PER_MM = 12;

    @Test
    void aReaderReadsTheCodeBack() throws ReaderException {
        String text = "Board 7\nlarch 25 x 150, 3.600 m\nF1-1a, F1-1b, F2-1a\nGarden with an \u00fcmlaut";
        DrawingBuilder sketch = new DrawingBuilder(22, 22);
        CodeDrawing.draw(sketch, text, new Spot(0, 0), 22);
        BufferedImage image = image(sketch.finish("a code"));
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        RGBLuminanceSource source = new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels);
        assertThat(new QRCodeReader()
                        .decode(new BinaryBitmap(new HybridBinarizer(source)))
                        .getText())
                .isEqualTo(text);
    }

    private static BufferedImage image(Drawing drawing) {
        int width = (int) (drawing.widthMm() * DOTS_PER_MM);
        int height = (int) (drawing.heightMm() * DOTS_PER_MM);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, width, height);
        pen.setColor(Color.BLACK);
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Mark.Path path && path.fill() != null) {
                Path2D shape = new Path2D.Double();
                for (int i = 0; i < path.spots().size(); i++) {
                    Spot spot = path.spots().get(i);
                    if (i == 0) {
                        shape.moveTo(spot.x() * DOTS_PER_MM, spot.y() * DOTS_PER_MM);
                    } else {
                        shape.lineTo(spot.x() * DOTS_PER_MM, spot.y() * DOTS_PER_MM);
                    }
                }
                shape.closePath();
                pen.fill(shape);
            }
        }
        pen.dispose();
        return image;
    }

    @Test
    void everyLabelHasItsNameOnAPageAndNothingLeavesItsCell() {
        List<LabelPage.Label> labels = new ArrayList<>();
        for (int i = 1; i <= 50; i++) {
            labels.add(new LabelPage.Label(
                    "Board " + i,
                    List.of("larch 25 x 150, 3.600 m", "F1-1a, F1-1b, F1-2a, F1-2b, F1-3a, F1-3b"),
                    "Board " + i));
        }
        List<Drawing> pages = LabelPage.pages(labels, PrintedFigures.in(UnitSystem.METRIC), 180, 250);
        assertThat(pages).hasSize(3);
        List<String> names = new ArrayList<>();
        for (Drawing page : pages) {
            for (Mark mark : page.marks()) {
                if (mark instanceof Mark.Text text) {
                    double cell = 180 / 3.0;
                    double left = Math.floor(text.at().x() / cell) * cell;
                    double right = text.box().corner(1).x();
                    assertThat(right).as(text.text()).isLessThanOrEqualTo(left + cell);
                    if (text.size() == TextSize.HEAD) {
                        names.add(text.text());
                    }
                }
            }
        }
        assertThat(names)
                .hasSize(50)
                .startsWith("Board 1", "Board 2")
                .endsWith("Board 50")
                .doesNotHaveDuplicates();
    }
}
