package frieze.job;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import frieze.keys.Key;
import frieze.keys.Section;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Writes the table of keys as a JSON schema, for editors that check YAML while it is typed. */
public final class KeySchema {
  private KeySchema() {}

  /** The schema of job files. */
  public static String ofJob() {
    return write("Frieze job file", JobKeys.Root.SECTION);
  }

  /** The schema of shop files. */
  public static String ofShop() {
    return write("Frieze shop file", ShopKeys.Root.SECTION);
  }

  private static String write(String title, Section root) {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("title", title);
    schema.putAll(object(root));
    Map<String, Object> definitions = new LinkedHashMap<>();
    for (Section section : KeyPage.reachable(root)) {
      if (!section.equals(root)) {
        definitions.put(section.name(), object(section));
      }
    }
    schema.put("$defs", definitions);
    return text(schema);
  }

  private static Map<String, Object> object(Section section) {
    Map<String, Object> properties = new LinkedHashMap<>();
    for (Key<?> key : section.keys()) {
      Map<String, Object> property = new LinkedHashMap<>(new TreeMap<>(key.type().schema()));
      property.put("description", key.doc());
      key.names().forEach(name -> properties.put(name, property));
    }
    Map<String, Object> object = new LinkedHashMap<>();
    object.put("type", "object");
    object.put("description", section.doc());
    object.put("properties", properties);
    object.put(
        "required",
        section.keys().stream()
            .filter(key -> key.required() && key.also().isEmpty())
            .map(Key::name)
            .toList());
    object.put("additionalProperties", false);
    return object;
  }

  private static String text(Map<String, Object> schema) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      DefaultIndenter newLine = new DefaultIndenter("  ", "\n");
      json.setPrettyPrinter(
          new DefaultPrettyPrinter().withObjectIndenter(newLine).withArrayIndenter(newLine));
      write(schema, json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text + "\n";
  }

  private static void write(Object value, JsonGenerator json) throws IOException {
    if (value instanceof Map<?, ?> map) {
      json.writeStartObject();
      Map<?, ?> ordered = map instanceof LinkedHashMap ? map : new TreeMap<>(map);
      for (Map.Entry<?, ?> entry : ordered.entrySet()) {
        json.writeFieldName(String.valueOf(entry.getKey()));
        write(entry.getValue(), json);
      }
      json.writeEndObject();
    } else if (value instanceof List<?> list) {
      json.writeStartArray();
      for (Object each : list) {
        write(each, json);
      }
      json.writeEndArray();
    } else if (value instanceof Boolean flag) {
      json.writeBoolean(flag);
    } else if (value instanceof Integer number) {
      json.writeNumber(number);
    } else {
      json.writeString(String.valueOf(value));
    }
  }
}
