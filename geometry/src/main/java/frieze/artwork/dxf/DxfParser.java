package frieze.artwork.dxf;

import frieze.artwork.ArtworkCode;
import frieze.artwork.Limits;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Turns the text of a DXF file into its sections.
 *
 * <p>Source: the published DXF reference (group codes, sections, R12 to 2018), as known from
 * memory. Sections that don't matter to outlines are skipped.
 */
final class DxfParser {
  /** Groups that are kept: more than any drawing of the permitted number of segments needs. */
  private static final int MAX_TAGS = 6_000_000;

  private static final int ENTITY = 0;
  private static final int NAME = 2;
  private static final int VARIABLE = 9;
  private static final int COMMENT = 999;

  private final String source;
  private final DxfText text;
  private @Nullable DxfTag ahead;
  private int kept;
  private int entityCount;

  private int unitCode;
  private final Map<String, DxfLayer> layers = new HashMap<>();
  private final Map<String, DxfBlock> blocks = new HashMap<>();
  private final List<DxfEntity> entities = new ArrayList<>();

  private DxfParser(String source, DxfText text) {
    this.source = source;
    this.text = text;
  }

  /**
   * Reads a file.
   *
   * @throws BadInputException if it is not DXF in text form, is cut short in the middle of a group,
   *     or is too big
   */
  static DxfFile parse(String source, byte[] content) {
    return new DxfParser(source, DxfText.decode(source, content)).file();
  }

  private DxfFile file() {
    boolean any = false;
    while (peek() != null) {
      DxfTag tag = next();
      if (tag.code() == ENTITY && tag.value().equals("EOF")) {
        break;
      }
      if (tag.code() == ENTITY && tag.value().equals("SECTION")) {
        any = true;
        section();
      }
    }
    if (!any) {
      throw notDxf(1, "there is no section in it", "is it a DXF file? save the drawing again");
    }
    return new DxfFile(unitCode, layers, blocks, entities);
  }

  private void section() {
    DxfTag name = peek();
    if (name == null || name.code() != NAME) {
      throw notDxf(text.line(), "a section without a name", "save the drawing again");
    }
    next();
    switch (name.value()) {
      case "HEADER" -> header();
      case "TABLES" -> tables();
      case "BLOCKS" -> blocks();
      case "ENTITIES" -> {
        while (!atEndOf("ENDSEC")) {
          entities.add(entity());
        }
      }
      default -> {
        while (!atEndOf("ENDSEC")) {
          next();
        }
      }
    }
  }

  /** Whether the next group ends a section or the file; the end is consumed. */
  private boolean atEndOf(String end) {
    DxfTag tag = peek();
    if (tag == null) {
      throw notDxf(text.line(), "the file breaks off before " + end, "copy or save it again");
    }
    if (tag.code() == ENTITY && tag.value().equals(end)) {
      next();
      return true;
    }
    return false;
  }

  private void header() {
    String variable = "";
    while (!atEndOf("ENDSEC")) {
      DxfTag tag = next();
      if (tag.code() == VARIABLE) {
        variable = tag.value();
      } else if (variable.equals("$INSUNITS")) {
        unitCode = (int) new DxfEntity(source, variable, tag.line()).number(tag);
      }
    }
  }

  private void tables() {
    while (!atEndOf("ENDSEC")) {
      DxfEntity row = entity();
      if (row.type().equals("LAYER")) {
        String name = row.text(NAME).orElse("");
        int colour = row.integer(62, 7);
        boolean shown = colour >= 0 && !row.flag(70, 1);
        layers.put(key(name), new DxfLayer(name, shown, DxfColour.hex(row, "")));
      }
    }
  }

  private void blocks() {
    while (!atEndOf("ENDSEC")) {
      DxfEntity head = entity();
      if (!head.type().equals("BLOCK")) {
        continue;
      }
      List<DxfEntity> inside = new ArrayList<>();
      while (!atEndOf("ENDBLK")) {
        inside.add(entity());
      }
      String name = head.text(NAME).orElse("");
      blocks.put(key(name), new DxfBlock(name, head.vector(10), inside));
    }
  }

  static String key(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }

  /** Reads one entity, and what belongs to it up to its SEQEND. */
  private DxfEntity entity() {
    DxfEntity entity = single();
    boolean follows =
        entity.type().equals("POLYLINE")
            || (entity.type().equals("INSERT") && entity.integer(66, 0) == 1);
    while (follows && isPart(peek())) {
      DxfEntity part = single();
      if (part.type().equals("SEQEND")) {
        break;
      }
      entity.parts().add(part);
    }
    return entity;
  }

  private static boolean isPart(@Nullable DxfTag tag) {
    return tag != null
        && tag.code() == ENTITY
        && List.of("VERTEX", "ATTRIB", "SEQEND").contains(tag.value());
  }

  private DxfEntity single() {
    DxfTag first = next();
    entityCount++;
    if (entityCount > Limits.MAX_ELEMENTS + Limits.MAX_SEGMENTS) {
      throw tooBig(first.line(), "entities");
    }
    DxfEntity entity = new DxfEntity(source, first.value(), first.line() + 1);
    for (DxfTag tag = peek(); tag != null && tag.code() != ENTITY; tag = peek()) {
      entity.tags().add(next());
      kept++;
      if (kept > MAX_TAGS) {
        throw tooBig(tag.line(), "groups");
      }
    }
    return entity;
  }

  private @Nullable DxfTag peek() {
    while (ahead == null) {
      DxfTag read = text.next();
      if (read == null) {
        return null;
      }
      ahead = read.code() == COMMENT ? null : read;
    }
    return ahead;
  }

  private DxfTag next() {
    DxfTag tag = peek();
    if (tag == null) {
      throw notDxf(text.line(), "the file breaks off", "copy or save it again");
    }
    ahead = null;
    return tag;
  }

  private BadInputException notDxf(int line, String message, String hint) {
    return DxfText.notDxf(new SourceSpan(source, Math.max(1, line), 0, 0), message, hint);
  }

  private BadInputException tooBig(int line, String what) {
    return new BadInputException(
        Diagnostic.error(
            ArtworkCode.TOO_BIG,
            new SourceSpan(source, line, 1, 1),
            "the drawing has too many " + what,
            "simplify it or split it"));
  }
}
