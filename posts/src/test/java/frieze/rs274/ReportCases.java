package frieze.rs274;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The cases derived from NISTIR 6556, as maps and lists. */
final class ReportCases {
  private static final List<Map<String, Object>> ALL = read();

  private ReportCases() {}

  static List<Map<String, Object>> all() {
    return ALL;
  }

  @SuppressWarnings("unchecked") // The file's own shape, checked by the tests that use it.
  private static List<Map<String, Object>> read() {
    try (InputStream in =
            ReportCases.class.getResourceAsStream("/frieze/fixtures/nistir-6556-cases.json");
        JsonParser parser = new JsonFactory().createParser(in)) {
      parser.nextToken();
      Map<String, Object> file = (Map<String, Object>) value(parser);
      return (List<Map<String, Object>>) file.get("cases");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Object value(JsonParser parser) throws IOException {
    return switch (parser.currentToken()) {
      case START_OBJECT -> object(parser);
      case START_ARRAY -> list(parser);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
      case VALUE_TRUE -> true;
      case VALUE_FALSE -> false;
      default -> parser.getText();
    };
  }

  private static Map<String, Object> object(JsonParser parser) throws IOException {
    Map<String, Object> map = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      parser.nextToken();
      map.put(name, value(parser));
    }
    return map;
  }

  private static List<Object> list(JsonParser parser) throws IOException {
    List<Object> list = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      list.add(value(parser));
    }
    return list;
  }
}
