package frieze.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.field.StockField;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.shop.Material;
import frieze.shop.Stock;
import frieze.shop.ToolShape;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PictureTest {
  private static BufferedImage decoded(byte[] png) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(png));
  }

  @Test
  void a_picture_reads_back_as_it_was_written() throws IOException {
    BufferedImage image = decoded(Png.write(301, 77, (x, y) -> x * 7919 * (y + 3) & 0xffffff));
    assertThat(image.getWidth()).isEqualTo(301);
    assertThat(image.getHeight()).isEqualTo(77);
    for (int y = 0; y < 77; y++) {
      for (int x = 0; x < 301; x++) {
        assertThat(image.getRGB(x, y) & 0xffffff).isEqualTo(x * 7919 * (y + 3) & 0xffffff);
      }
    }
  }

  /** Entries of the published table that are not among those kept here, to 4 levels. */
  @ParameterizedTest
  @CsvSource({"128, 125, 124, 120", "0, 0, 34, 78", "255, 254, 232, 56"})
  void the_depth_colours_are_those_of_the_published_table(int entry, int r, int g, int b) {
    int rgb = Cividis.rgb(entry / 255.0);
    assertThat(rgb >> 16).isCloseTo(r, within(4));
    assertThat(rgb >> 8 & 0xff).isCloseTo(g, within(4));
    assertThat(rgb & 0xff).isCloseTo(b, within(4));
  }

  @Test
  void the_depth_colours_grow_lighter_all_the_way() {
    double before = -1;
    for (int i = 0; i <= 100; i++) {
      int rgb = Cividis.rgb(i / 100.0);
      double light = 0.2126 * (rgb >> 16) + 0.7152 * (rgb >> 8 & 0xff) + 0.0722 * (rgb & 0xff);
      assertThat(light).isGreaterThan(before);
      before = light;
    }
  }

  @Test
  void a_cut_is_darker_than_the_face_and_lies_where_it_was_cut() throws IOException {
    Stock stock =
        new Stock(new Material("ash", Material.Kind.HARDWOOD), 100, 40, List.of(10.0), false);
    StockField field = StockField.of(stock, 0.5);
    field.cut(
        new Motion.Straight(new Position(20, 10, -4), new Position(80, 10, -4)),
        new ToolShape.Flat(10));
    field.cut(
        new Motion.Straight(new Position(20, 30, -10), new Position(80, 30, -10)),
        new ToolShape.Flat(6));
    Shading shading = new Shading(field.depthMap(200), 10, 4);
    BufferedImage relief = decoded(shading.relief(false));
    BufferedImage depths = decoded(shading.depths());
    assertThat(relief.getWidth()).isEqualTo(200);
    assertThat(light(relief, 100, 60)).isLessThan(light(relief, 100, 40) - 30);
    assertThat(light(relief, 100, 20)).isLessThan(100);
    assertThat(depths.getRGB(100, 60) & 0xffffff).isEqualTo(0x00224e);
    assertThat(depths.getRGB(100, 40) & 0xffffff).isEqualTo(0xfee838);
    assertThat(depths.getRGB(100, 20) & 0xffffff).isEqualTo(0xffffff);
  }

  private static int light(BufferedImage image, int x, int y) {
    int rgb = image.getRGB(x, y);
    return ((rgb >> 16 & 0xff) + (rgb >> 8 & 0xff) + (rgb & 0xff)) / 3;
  }

  @ParameterizedTest
  @CsvSource({
    "723.9, 28-1/2",
    "6.35, 1/4",
    "0, 0",
    "25.4, 1",
    "19.05, 3/4",
    "19.1, 0.752",
    "-3.175, -1/8",
    "1.5875, 1/16",
    "0.396875, 1/64"
  })
  void inches_are_fractions_where_these_are_exact(double mm, String text) {
    assertThat(Measures.inch(mm)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({"12, 12 s", "61, 1 min 01 s", "60, 1 min", "3900, 1 h 05 min", "59.6, 1 min"})
  void times_are_told_in_the_units_that_matter(double seconds, String text) {
    assertThat(Measures.time(seconds)).isEqualTo(text);
  }

  @Test
  void an_element_left_open_is_a_bug() {
    Markup out = new Markup().open("a").open("b").close();
    assertThatThrownBy(out::toString).isInstanceOf(IllegalStateException.class);
  }
}
