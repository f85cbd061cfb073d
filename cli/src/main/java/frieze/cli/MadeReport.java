package frieze.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the {@code report.json} beside a made program tells of it: its panel, and the tool that the
 * operator puts in before it starts.
 *
 * @param panel the name of the panel in its job
 * @param firstTools the T number of each program's first tool, by file name
 */
record MadeReport(String panel, Map<String, Integer> firstTools) {
  static final String FILE_NAME = "report.json";

  MadeReport {
    firstTools = Collections.unmodifiableMap(new LinkedHashMap<>(firstTools));
  }

  /** Reads a report; empty if it is none of ours. */
  static Optional<MadeReport> read(byte[] json) {
    String panel = null;
    String file = null;
    Map<String, Integer> tools = new LinkedHashMap<>();
    try (JsonParser in = new JsonFactory().createParser(json)) {
      for (JsonToken token = in.nextToken(); token != null; token = in.nextToken()) {
        if (token != JsonToken.FIELD_NAME) {
          continue;
        }
        String path = in.getParsingContext().pathAsPointer().toString();
        if (panel == null && path.equals("/panels/0/name")) {
          panel = in.nextTextValue();
        } else if (path.matches("/panels/0/programs/\\d+/file")) {
          file = in.nextTextValue();
        } else if (path.matches("/panels/0/programs/\\d+/tools")) {
          addFirst(in, file, tools);
        }
      }
    } catch (IOException e) {
      return Optional.empty();
    }
    return Optional.ofNullable(panel).map(name -> new MadeReport(name, tools));
  }

  private static void addFirst(JsonParser in, @Nullable String file, Map<String, Integer> tools)
      throws IOException {
    if (in.nextToken() == JsonToken.START_ARRAY
        && in.nextToken() == JsonToken.VALUE_NUMBER_INT
        && file != null) {
      tools.put(file, in.getIntValue());
    }
  }
}
