package frieze.job;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/** Files in memory. */
final class MemoryFiles implements SourceFiles {
  private final Map<String, byte[]> contents = new HashMap<>();

  MemoryFiles with(String name, String text) {
    contents.put(name, text.getBytes(StandardCharsets.UTF_8));
    return this;
  }

  MemoryFiles with(String name, byte[] content) {
    contents.put(name, content.clone());
    return this;
  }

  @Override
  public byte[] read(String name) throws IOException {
    byte[] content = contents.get(name);
    if (content == null) {
      throw new FileNotFoundException(name);
    }
    return content;
  }

  @Override
  public boolean exists(String name) {
    return contents.containsKey(name);
  }
}
