package frieze.keys;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** What a number measures, and the units that people may write behind it. */
public enum UnitKind {
  LENGTH("a length", "mm", "in"),
  FEED("a feed", "mm/min", "in/min"),
  ACCELERATION("an acceleration", "mm/s2", "in/s2"),
  ANGLE("an angle", "deg", "deg"),
  SPEED("a turning speed", "rpm", "rpm"),
  TIME("a time", "s", "s"),
  FORCE("a force", "N", "lbf"),
  /** A share of something. A bare number is a share too: 0.4 and 40% are the same. */
  SHARE("a share", "", "");

  private static final double INCH = 25.4;
  private static final double FOOT = 12 * INCH;

  /** Standard gravity, 3rd CGPM 1901: 9.80665 m/s2; a pound is 0.45359237 kg. */
  private static final double KILOGRAM_FORCE = 9.80665;

  private static final double POUND_FORCE = 0.45359237 * KILOGRAM_FORCE;
  private static final double DEGREE = Math.PI / 180;

  private final String label;
  private final String metric;
  private final String imperial;

  UnitKind(String label, String metric, String imperial) {
    this.label = label;
    this.metric = metric;
    this.imperial = imperial;
  }

  /** The kind with its article, such as {@code a length}. */
  public String label() {
    return label;
  }

  /** The unit of a bare number. */
  public String bareUnit(boolean inches) {
    return inches ? imperial : metric;
  }

  /** Each unit and how many of the inner unit (mm, mm/min, mm/s2, rad, rpm, s, N, 1) it is. */
  public Map<String, Double> units() {
    Map<String, Double> units = new LinkedHashMap<>();
    switch (this) {
      case LENGTH -> addLengths(units, "");
      case FEED -> {
        addLengths(units, "/min");
        units.put("ipm", INCH);
        units.put("mm/s", 60.0);
        units.put("in/s", 60 * INCH);
      }
      case ACCELERATION -> {
        for (String second : new String[] {"/s2", "/s^2", "/s²"}) {
          units.put("mm" + second, 1.0);
          units.put("m" + second, 1000.0);
          units.put("in" + second, INCH);
        }
      }
      case ANGLE -> {
        units.put("deg", DEGREE);
        units.put("degree", DEGREE);
        units.put("degrees", DEGREE);
        units.put("°", DEGREE);
        units.put("rad", 1.0);
      }
      case SPEED -> {
        units.put("rpm", 1.0);
        units.put("/min", 1.0);
      }
      case TIME -> {
        units.put("s", 1.0);
        units.put("sec", 1.0);
        units.put("ms", 0.001);
        units.put("min", 60.0);
      }
      case FORCE -> {
        units.put("N", 1.0);
        units.put("lbf", POUND_FORCE);
        units.put("kgf", KILOGRAM_FORCE);
      }
      case SHARE -> {
        units.put("%", 0.01);
        units.put("", 1.0);
      }
    }
    return Collections.unmodifiableMap(units);
  }

  private static void addLengths(Map<String, Double> units, String per) {
    units.put("mm" + per, 1.0);
    units.put("cm" + per, 10.0);
    units.put("m" + per, 1000.0);
    units.put("in" + per, INCH);
    units.put("inch" + per, INCH);
    units.put("inches" + per, INCH);
    units.put("ft" + per, FOOT);
    if (per.isEmpty()) {
      units.put("\"", INCH);
      units.put("″", INCH);
      units.put("'", FOOT);
      units.put("′", FOOT);
    }
  }
}
