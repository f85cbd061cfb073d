package frieze.cli;

import frieze.build.BuiltPanel;
import frieze.sheet.Pictures;
import frieze.sheet.ReportJson;
import frieze.sheet.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.SortedMap;
import java.util.TreeMap;

/** Puts together the files of one panel. */
final class Papers {
  private Papers() {}

  /** The content of each file, by its name. */
  static SortedMap<String, byte[]> files(BuiltPanel panel) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    panel.programs().forEach(program -> files.put(program.fileName(), program.bytes()));
    files.put("setup.html", utf8(SetupSheet.html(panel.facts())));
    files.put("report.json", utf8(ReportJson.text(panel.facts())));
    files.putAll(Pictures.png(panel.panel()));
    return files;
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
