package frieze.cli;

import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import frieze.job.SourceFiles;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The files of the disk. It keeps what it has read, so that messages can show the lines. */
final class DiskFiles implements SourceFiles {
  /** The largest picture that is read, with four bytes for each of its pixels. */
  private static final long MOST_BYTES = 200_000_000;

  /** A picture is in memory twice while it is read. */
  private static final int PART_OF_MEMORY = 8;

  private static final long MEGA = 1_000_000;

  private final Path folder;
  private final Map<String, byte[]> read = new HashMap<>();

  DiskFiles(Path folder) {
    this.folder = folder;
  }

  @Override
  public byte[] read(String name) throws IOException {
    byte[] before = read.get(name);
    if (before != null) {
      return before;
    }
    byte[] content;
    try {
      Path path = folder.resolve(name);
      if (Files.isDirectory(path)) {
        throw new FileSystemException(name, null, "is a folder, not a file");
      }
      refuseLarge(name, path);
      content = Files.readAllBytes(path);
    } catch (InvalidPathException e) {
      throw new IOException("not a file name: " + name, e);
    }
    read.put(name, content);
    return content;
  }

  /** A file larger than memory would end in no message that helps. */
  private static void refuseLarge(String name, Path path) throws IOException {
    long most = Math.min(MOST_BYTES, Runtime.getRuntime().maxMemory() / PART_OF_MEMORY);
    long size = Files.size(path);
    if (size > most) {
      throw new BadInputException(
          Diagnostic.error(
              CliCode.FILE_TOO_LARGE,
              SourceSpan.file(name),
              String.format(
                  Locale.ROOT, "the file has %d MB, more than %d", size / MEGA, most / MEGA),
              "make a picture smaller or save it as PNG or JPEG; leave out of a drawing what is"
                  + " not cut"));
    }
  }

  /**
   * Reads a file that the command line names.
   *
   * @throws BadInputException if there is no such file
   */
  byte[] named(String name) throws IOException {
    require(name, "name a file in it");
    return read(name);
  }

  /**
   * Makes sure that a file that the command line names is there.
   *
   * @param inFolder what to do if it is a folder
   * @throws BadInputException if there is no such file
   */
  void require(String name, String inFolder) {
    if (exists(name)) {
      return;
    }
    boolean isFolder = isFolder(name);
    throw new BadInputException(
        Diagnostic.error(
            CliCode.NO_SUCH_FILE,
            SourceSpan.file(name),
            isFolder ? "this is a folder" : "there is no such file",
            isFolder ? inFolder : ""));
  }

  private boolean isFolder(String name) {
    try {
      return Files.isDirectory(folder.resolve(name));
    } catch (InvalidPathException e) {
      return false;
    }
  }

  @Override
  public boolean exists(String name) {
    try {
      return read.containsKey(name) || Files.isRegularFile(folder.resolve(name));
    } catch (InvalidPathException e) {
      return false;
    }
  }

  /** Remembers a text that did not come from the disk. */
  void remember(String name, byte[] content) {
    read.put(name, content);
  }

  /** A line of a text that was read, counted from 1. */
  Optional<String> line(String source, int number) {
    byte[] content = read.get(source);
    if (content == null || number < 1) {
      return Optional.empty();
    }
    List<String> lines = new String(content, StandardCharsets.UTF_8).lines().limit(number).toList();
    return lines.size() == number ? Optional.of(lines.get(number - 1)) : Optional.empty();
  }
}
