package frieze.post;

import frieze.lower.Capabilities;
import frieze.lower.Program;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The posts that come with Frieze, named by what their controllers understand. Each is a dialect
 * file among the resources, read when it is first needed.
 */
public final class BuiltInPosts {
  private BuiltInPosts() {}

  /** The dialect file of a built-in post. */
  static Optional<String> file(String id) {
    try (InputStream in = BuiltInPosts.class.getResourceAsStream(id + ".yaml")) {
      return in == null
          ? Optional.empty()
          : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A post whose dialect is one of the resources. */
  private abstract static class BuiltIn implements Post {
    private final String id;
    private @Nullable Post post;

    BuiltIn(String id) {
      this.id = id;
    }

    private synchronized Post post() {
      Post loaded = post;
      if (loaded == null) {
        loaded = DialectFile.read(id + ".yaml", file(id).orElseThrow());
        post = loaded;
      }
      return loaded;
    }

    @Override
    public final String id() {
      return id;
    }

    @Override
    public final String summary() {
      return post().summary();
    }

    @Override
    public final Capabilities capabilities() {
      return post().capabilities();
    }

    @Override
    public final ProgramText write(Program program) {
      return post().write(program);
    }
  }

  /** The whole language of NISTIR 6556. */
  public static final class Rs274Full extends BuiltIn {
    public Rs274Full() {
      super("rs274-full");
    }
  }

  /** Lines, arcs in XY, one file for each tool. */
  public static final class ShortArcs extends BuiltIn {
    public ShortArcs() {
      super("short-arcs");
    }
  }

  /** Straight moves only. */
  public static final class StraightOnly extends BuiltIn {
    public StraightOnly() {
      super("straight-only");
    }
  }

  /** Numbered blocks in the style of ISO 6983-1. */
  public static final class IsoBlocks extends BuiltIn {
    public IsoBlocks() {
      super("iso-blocks");
    }
  }

  /** A torch at a height set by hand. */
  public static final class PlasmaPlain extends BuiltIn {
    public PlasmaPlain() {
      super("plasma-plain");
    }
  }

  /** A torch that feels for the sheet. */
  public static final class PlasmaTouch extends BuiltIn {
    public PlasmaTouch() {
      super("plasma-touch");
    }
  }
}
