package frieze.artwork;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URL;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;

/** Two open icon sets, as their packages bring them. */
public final class OpenIcons {
  private static final Map<String, byte[]> FILES = new TreeMap<>();

  private OpenIcons() {}

  /** All SVG files by their names. */
  public static synchronized Map<String, byte[]> all() {
    if (FILES.isEmpty()) {
      collect("/META-INF/resources/webjars/bootstrap-icons/1.11.3/icons/alarm.svg");
      collect("/META-INF/resources/webjars/font-awesome/6.5.2/svgs/solid/anchor.svg");
    }
    return Collections.unmodifiableMap(FILES);
  }

  private static void collect(String member) {
    try {
      URL url = OpenIcons.class.getResource(member);
      JarURLConnection connection = (JarURLConnection) url.openConnection();
      connection.setUseCaches(false);
      try (JarFile jar = connection.getJarFile()) {
        for (JarEntry entry : jar.stream().toList()) {
          if (entry.getName().endsWith(".svg")) {
            FILES.put(entry.getName(), jar.getInputStream(entry).readAllBytes());
          }
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whether a file is a set of mere symbols. */
  public static boolean isCollection(String name) {
    return name.contains("/sprites/") || name.endsWith("/bootstrap-icons.svg");
  }
}
