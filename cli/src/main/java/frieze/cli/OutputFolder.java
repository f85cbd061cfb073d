package frieze.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The folder of one panel.
 *
 * <p>All files are written beside their targets first; if that works they are moved one by one, the
 * manifest last. Files that the last run made and this one does not are removed, but only if nobody
 * has changed them since. The manifest lists each file with its SHA-256, in the form that {@code
 * sha256sum -c} checks, also on a stick at the machine.
 */
final class OutputFolder {
  static final String MANIFEST = "manifest.sha256";
  private static final String UNFINISHED = ".part";

  private final Path folder;
  private final List<Path> unfinished = new ArrayList<>();
  private Map<String, String> before = Map.of();
  private SortedMap<String, byte[]> all = new TreeMap<>();

  OutputFolder(Path folder) {
    this.folder = folder;
  }

  /** Replaces the files of the last run by new ones. */
  void replace(SortedMap<String, byte[]> files) throws IOException {
    replaceAll(Map.of(folder, files));
  }

  /**
   * Replaces the files of several folders: no file is put in its place before all of all folders
   * have been written.
   */
  static void replaceAll(Map<Path, SortedMap<String, byte[]>> files) throws IOException {
    List<OutputFolder> folders = new ArrayList<>();
    try {
      for (Map.Entry<Path, SortedMap<String, byte[]>> each : files.entrySet()) {
        OutputFolder next = new OutputFolder(each.getKey());
        folders.add(next);
        next.prepare(each.getValue());
      }
      for (OutputFolder each : folders) {
        each.finish();
      }
    } catch (IOException e) {
      for (OutputFolder each : folders) {
        each.abandon();
      }
      throw e;
    }
  }

  /** Writes all files beside their places. */
  private void prepare(SortedMap<String, byte[]> files) throws IOException {
    before = readManifest();
    all = new TreeMap<>(files);
    all.remove(MANIFEST);
    byte[] manifest = manifest(all);
    Files.createDirectories(folder);
    for (Map.Entry<String, byte[]> file : all.entrySet()) {
      write(file.getKey(), file.getValue());
    }
    write(MANIFEST, manifest);
  }

  private void finish() throws IOException {
    for (String name : all.keySet()) {
      move(name);
    }
    removeLeftovers(before, all);
    move(MANIFEST);
  }

  private void abandon() throws IOException {
    for (Path path : unfinished) {
      Files.deleteIfExists(path);
    }
  }

  private void write(String name, byte[] content) throws IOException {
    Path part = folder.resolve(name + UNFINISHED);
    unfinished.add(part);
    Files.write(part, content);
  }

  private void move(String name) throws IOException {
    Files.move(
        folder.resolve(name + UNFINISHED),
        folder.resolve(name),
        StandardCopyOption.REPLACE_EXISTING,
        StandardCopyOption.ATOMIC_MOVE);
  }

  private void removeLeftovers(Map<String, String> before, SortedMap<String, byte[]> now)
      throws IOException {
    for (Map.Entry<String, String> old : before.entrySet()) {
      Path path = folder.resolve(old.getKey()).normalize();
      boolean ours = folder.normalize().equals(path.getParent()) && Files.isRegularFile(path);
      if (ours
          && !now.containsKey(old.getKey())
          && hash(Files.readAllBytes(path)).equals(old.getValue())) {
        Files.delete(path);
      }
    }
  }

  private Map<String, String> readManifest() throws IOException {
    Map<String, String> hashes = new TreeMap<>();
    Path path = folder.resolve(MANIFEST);
    if (Files.isRegularFile(path)) {
      for (String line : Files.readAllLines(path, StandardCharsets.UTF_8)) {
        int gap = line.indexOf("  ");
        if (gap > 0) {
          hashes.put(line.substring(gap + 2), line.substring(0, gap));
        }
      }
    }
    return hashes;
  }

  private static byte[] manifest(SortedMap<String, byte[]> files) {
    StringBuilder text = new StringBuilder();
    files.forEach(
        (name, content) -> text.append(hash(content)).append("  ").append(name).append('\n'));
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String hash(byte[] content) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
    } catch (NoSuchAlgorithmException e) {
      throw new UncheckedIOException(new IOException("this Java has no SHA-256", e));
    }
  }
}
