package frieze.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.Artwork;
import frieze.artwork.svg.SvgReader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TraceCommandTest {
  @TempDir Path folder;

  /** A ring, 20 mm outside and 10 mm inside at ten pixels to the millimetre, drawn by Java2D. */
  private Path ring(String kind) throws IOException {
    BufferedImage image = new BufferedImage(260, 240, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, 260, 240);
    g.setColor(Color.BLACK);
    Area ring = new Area(new Ellipse2D.Double(30, 20, 200, 200));
    ring.subtract(new Area(new Ellipse2D.Double(80, 70, 100, 100)));
    g.fill(ring);
    g.dispose();
    Path file = folder.resolve("ring." + kind);
    assertThat(ImageIO.write(image, kind, file.toFile())).isTrue();
    return file;
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "jpg", "bmp", "gif", "tif"})
  void each_kind_of_file_gives_a_drawing_of_known_size(String kind) throws IOException {
    ring(kind);
    Shell.Result result =
        new Shell(folder).run("trace", "ring." + kind, "--height", "20", "--picture", "over.png");
    assertThat(result.code()).as(result.err()).isZero();
    Artwork art = new SvgReader().read("ring.svg", Files.readAllBytes(folder.resolve("ring.svg")));
    assertThat(art.pieces()).hasSize(1);
    assertThat(art.pieces().get(0).paths()).hasSize(2);
    assertThat(art.bounds().height()).isCloseTo(20, within(0.002));
    assertThat(art.bounds().width()).isCloseTo(20, within(0.02));
    double area = Math.PI * (10 * 10 - 5 * 5);
    assertThat(art.filled(0.001).area()).isCloseTo(area, within(0.005 * area));
    assertThat(ImageIO.read(folder.resolve("over.png").toFile()).getWidth()).isEqualTo(260);
  }

  /** The ring is 5 mm wide: a line 15 mm across, drawn with a pen of 5 mm. */
  @Test
  void a_stroke_of_a_pen_becomes_a_line_with_its_width() throws IOException {
    ring("png");
    Shell.Result result =
        new Shell(folder).run("trace", "ring.png", "--dpi", "254", "--lines-up-to", "6");
    assertThat(result.out()).contains("pen lines       1");
    Artwork art = new SvgReader().read("ring.svg", Files.readAllBytes(folder.resolve("ring.svg")));
    assertThat(art.pieces().get(0).fill()).isEmpty();
    assertThat(art.pieces().get(0).strokeWidthMm().orElseThrow()).isCloseTo(5, within(0.02));
    assertThat(art.bounds().width()).isCloseTo(15, within(0.02));
  }

  @Test
  void dots_to_the_inch_give_the_size_too() throws IOException {
    ring("png");
    assertThat(new Shell(folder).run("trace", "ring.png", "--dpi", "254").code()).isZero();
    Artwork art = new SvgReader().read("ring.svg", Files.readAllBytes(folder.resolve("ring.svg")));
    assertThat(art.bounds().height()).isCloseTo(20, within(0.005));
  }

  @Test
  void a_size_is_asked_for() throws IOException {
    ring("png");
    Shell.Result result = new Shell(folder).run("trace", "ring.png");
    assertThat(result.code()).isEqualTo(ExitCode.USAGE.number());
    assertThat(result.err()).contains("--height");
  }

  @Test
  void a_folder_and_a_missing_picture_are_called_so() throws IOException {
    Files.createDirectory(folder.resolve("drawings"));
    Shell shell = new Shell(folder);
    assertThat(shell.run("trace", "drawings", "--height", "20").err())
        .contains("drawings: error[CLI-001]: this is a folder");
    assertThat(shell.run("trace", "none.png", "--height", "20").err())
        .contains("none.png: error[CLI-001]: there is no such file");
    assertThat(shell.run("make", "none.yaml").err())
        .contains("none.yaml: error[CLI-001]: there is no such file");
  }

  @Test
  void what_is_no_picture_is_refused() throws IOException {
    Files.writeString(folder.resolve("a.png"), "not a picture");
    Shell.Result result = new Shell(folder).run("trace", "a.png", "--height", "20");
    assertThat(result.code()).isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(result.err()).contains("IMG-001");
  }

  @Test
  void a_picture_without_ink_is_refused() throws IOException {
    BufferedImage white = new BufferedImage(50, 50, BufferedImage.TYPE_BYTE_GRAY);
    ImageIO.write(white, "png", folder.resolve("dark.png").toFile());
    Shell.Result result = new Shell(folder).run("trace", "dark.png", "--height", "20");
    assertThat(result.code()).isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(result.err()).contains("TRC-001");
  }

  /** A header alone that promises 900 million pixels. */
  @Test
  void a_huge_picture_is_refused_by_its_header() throws IOException {
    Files.write(folder.resolve("bomb.png"), pngHeader(30_000, 30_000));
    Shell.Result result = new Shell(folder).run("trace", "bomb.png", "--height", "20");
    assertThat(result.code()).isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(result.err()).contains("IMG-002");
  }

  /** As an unpacked picture of 30,000 by 30,000 pixels has; the disk keeps no room for zeros. */
  @Test
  void a_file_larger_than_memory_is_refused_everywhere() throws IOException {
    try (RandomAccessFile file = new RandomAccessFile(folder.resolve("raw.bmp").toFile(), "rw")) {
      file.write(new byte[] {'B', 'M'});
      file.setLength(2_700_000_054L);
    }
    Shell shell = new Shell(folder);
    Files.writeString(folder.resolve("job.yaml"), SmallJob.TEXT.replace("leaf.svg", "raw.bmp"));
    for (String[] call :
        new String[][] {
          {"trace", "raw.bmp", "--height", "50"},
          {"look", "raw.bmp", "--height", "50"},
          {"make", "job.yaml"}
        }) {
      Shell.Result result = shell.run(call);
      assertThat(result.code()).as(result.err()).isEqualTo(ExitCode.BAD_INPUT.number());
      assertThat(result.err()).contains("raw.bmp: error[CLI-003]: the file has 2700 MB");
    }
  }

  private static byte[] pngHeader(int width, int height) {
    ByteBuffer out = ByteBuffer.allocate(33);
    out.put(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'}).putInt(13);
    ByteBuffer chunk = ByteBuffer.allocate(17);
    chunk.put("IHDR".getBytes(StandardCharsets.US_ASCII)).putInt(width).putInt(height);
    chunk.put(new byte[] {8, 0, 0, 0, 0});
    CRC32 crc = new CRC32();
    crc.update(chunk.array());
    return out.put(chunk.array()).putInt((int) crc.getValue()).array();
  }
}
