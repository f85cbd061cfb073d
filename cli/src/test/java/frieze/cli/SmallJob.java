package frieze.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A job so small that a make takes a second or two: one leaf on a short board. */
final class SmallJob {
  static final String TEXT =
      """
      job: Small
      units: mm
      artwork:
        leaf: {file: leaf.svg, height: 40}
      panels:
        front:
          size: {width: 70, height: 60, corner: 5}
          stock: {material: white ash, length: 100, width: 90, thickness: 10}
          design:
            - place: leaf
              along: {count: 1}
          work:
            - groove: {on: leaf, tool: vee 60, depth: 1.5}
            - cutout: {tool: flat 1/4, hold: {tabs: 4, width: 6, thickness: 3}}
      """;

  private SmallJob() {}

  /** Writes {@code job.yaml} and its drawing into a folder. */
  static void write(Path folder) throws IOException {
    Files.write(folder.resolve("leaf.svg"), NewCommand.starter(NewCommand.Kind.BENCH, "leaf.svg"));
    Files.writeString(folder.resolve("job.yaml"), TEXT);
  }
}
