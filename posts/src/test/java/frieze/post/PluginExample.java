package frieze.post;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.ServiceLoader;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;

/** The example plug-in of the docs, compiled as it stands there and found as a plug-in is. */
final class PluginExample {
  private static final Path EXAMPLE = Path.of("..", "docs", "examples", "post-plugin");

  private PluginExample() {}

  /** Compiles the example into a folder and loads what its services file names. */
  static Post load(Path folder) {
    try (Stream<Path> files = Files.walk(EXAMPLE.resolve("src/main/java"))) {
      JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
      List<String> arguments =
          Stream.concat(
                  Stream.of(
                      "-proc:none",
                      "-Xlint:all,-path",
                      "-Werror",
                      "-d",
                      folder.toString(),
                      "-cp",
                      System.getProperty("java.class.path")),
                  files.map(Path::toString).filter(f -> f.endsWith(".java")))
              .toList();
      assertThat(compiler.run(null, null, null, arguments.toArray(new String[0]))).isZero();
      return found(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Post found(Path folder) throws MalformedURLException {
    URL[] places = {folder.toUri().toURL(), EXAMPLE.resolve("src/main/resources").toUri().toURL()};
    ClassLoader loader = new URLClassLoader(places, PluginExample.class.getClassLoader());
    return ServiceLoader.load(Post.class, loader).stream()
        .map(ServiceLoader.Provider::get)
        .filter(p -> p.id().equals("tight-lines"))
        .findFirst()
        .orElseThrow();
  }
}
