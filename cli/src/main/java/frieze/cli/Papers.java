package frieze.cli;

import frieze.job.BuiltPanel;
import java.util.SortedMap;
import java.util.TreeMap;

/** Puts together the files of one panel. */
final class Papers {
  private Papers() {}

  /** The content of each file, by its name. */
  static SortedMap<String, byte[]> files(BuiltPanel panel) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    panel.programs().forEach(program -> files.put(program.fileName(), program.bytes()));
    return files;
  }
}
