package frieze.artwork.dxf;

import frieze.artwork.Artwork;
import frieze.curve.Path;
import java.nio.charset.StandardCharsets;

/** Small drawings in DXF, with their groups written on one line: code, space, value. */
final class DxfDraft {
  private DxfDraft() {}

  static byte[] bytes(String groups) {
    return groups.strip().replaceAll("\\s+", "\n").concat("\n").getBytes(StandardCharsets.UTF_8);
  }

  static byte[] file(String before, String entities) {
    return bytes(before + " 0 SECTION 2 ENTITIES " + entities + " 0 ENDSEC 0 EOF");
  }

  static String header(int unit) {
    return "0 SECTION 2 HEADER 9 $INSUNITS 70 " + unit + " 0 ENDSEC ";
  }

  /** A section with blocks that have their base at the origin: name, entities, name, entities. */
  static String blocks(String... namesAndEntities) {
    StringBuilder text = new StringBuilder("0 SECTION 2 BLOCKS ");
    for (int i = 0; i < namesAndEntities.length; i += 2) {
      text.append("0 BLOCK 8 0 2 ").append(namesAndEntities[i]).append(" 70 0 10 0 20 0 ");
      text.append(namesAndEntities[i + 1]).append(" 0 ENDBLK 8 0 ");
    }
    return text.append("0 ENDSEC ").toString();
  }

  /** A drawing in millimetres. */
  static Artwork read(String before, String entities) {
    return new DxfReader().read("t.dxf", file(header(4) + before, entities));
  }

  static Path only(String before, String entities) {
    return read(before, entities).pieces().get(0).paths().get(0);
  }
}
