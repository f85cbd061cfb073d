package frieze.rs274;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Reads the values on one line: numbers, parameters, expressions and functions.
 *
 * <p>Blanks mean nothing and capital and small letters are the same. Values are computed while they
 * are read, with the parameters as they were before the line.
 *
 * <p>Where the report says nothing: {@code ROUND} takes a half away from zero, {@code MOD} never
 * gives a negative result, {@code ATAN} knows all four quadrants, and arithmetic without a result
 * is an error. Source: NISTIR 6556, 3.3.2 and appendix E.
 */
final class LineScanner {
  /** Brackets, functions and {@code #} may be nested so deeply. */
  static final int DEEPEST = 100;

  private static final int WEAK = 1;
  private static final int MIDDLE = 2;
  private static final int STRONG = 3;

  /** A value counts as whole when it is this near (NISTIR 6556, 3.3.2.1). */
  static final double WHOLE = 0.0001;

  /** Forgives the binary form of a decimal that lies just on the limit. */
  private static final double ROUNDING = 1e-9;

  private final Parameters parameters;
  private final NumberReader numbers = new NumberReader();
  private byte[] b = new byte[0];
  private int pos;
  private int stop;
  private int depth;

  LineScanner(Parameters parameters) {
    this.parameters = parameters;
  }

  void start(byte[] bytes, int from, int to) {
    b = bytes;
    pos = from;
    stop = to;
    depth = 0;
  }

  int pos() {
    return pos;
  }

  void move(int to) {
    pos = to;
  }

  /** Passes over blanks and tells the next byte, letters as capitals; -1 at the end of the line. */
  int peek() {
    byte[] bytes = b;
    int i = pos;
    int end = stop;
    while (i < end && (bytes[i] == ' ' || bytes[i] == '\t')) {
      i++;
    }
    pos = i;
    if (i >= end) {
      return -1;
    }
    int c = bytes[i] & 0xff;
    return c >= 'a' && c <= 'z' ? c - 32 : c;
  }

  /** Reads a real value. */
  double value() {
    int c = peek();
    if ((c >= '0' && c <= '9') || c == '.' || c == '-' || c == '+') {
      return number(c);
    }
    if (c == '[') {
      return bracket();
    }
    if (c == '#') {
      return parameter();
    }
    if (c >= 'A' && c <= 'Z') {
      return function();
    }
    if (c == '(') {
      throw refuse(ProgramCode.COMMENT_IN_WORD, "a comment stands inside a word", "move it");
    }
    throw missing();
  }

  private Refusal missing() {
    return refuse(
        depth > 0 ? ProgramCode.EXPRESSION : ProgramCode.NUMBER, "a value is missing here", "");
  }

  private double number(int c) {
    int start = pos;
    if (c == '-' || c == '+') {
      pos++;
      int next = peek();
      if (next == '#' || next == '[' || (next >= 'A' && next <= 'Z' && startsFunction())) {
        throw new Refusal(
            ProgramCode.SIGN,
            start,
            pos + 1,
            "a sign may only stand before a number",
            "write [0 - ...]");
      }
      if (next != '.' && !(next >= '0' && next <= '9')) {
        throw new Refusal(
            ProgramCode.NUMBER,
            start,
            start + 1,
            "a sign, and no number after it",
            "write the number, or leave the word out");
      }
    }
    double value = numbers.read(b, start, stop);
    pos = numbers.end();
    if (pos < stop && (b[pos] == 'E' || b[pos] == 'e') && b[pos - 1] > ' ') {
      throw refuse(ProgramCode.NUMBER, "numbers have no exponent", "write all the digits");
    }
    return value;
  }

  /** Reads {@code [ ... ]}. */
  private double bracket() {
    int open = pos;
    deeper();
    pos++;
    double value = operations(WEAK);
    if (peek() != ']') {
      throw new Refusal(
          ProgramCode.EXPRESSION, open, Math.max(pos, open + 1), "a [ is not closed", "");
    }
    pos++;
    depth--;
    return value;
  }

  private void deeper() {
    depth++;
    if (depth > DEEPEST) {
      throw refuse(ProgramCode.TOO_DEEP, "more than " + DEEPEST + " levels", "");
    }
  }

  private double operations(int weakest) {
    double left = value();
    while (true) {
      int start = pos;
      Operation operation = operation();
      if (operation == null || operation.strength < weakest) {
        pos = start;
        return left;
      }
      double right = operations(operation.strength + 1);
      left = checked(operation.apply(left, right), start);
    }
  }

  private @Nullable Operation operation() {
    int c = peek();
    if (c >= 'A' && c <= 'Z') {
      return wordOperation();
    }
    Operation operation =
        switch (c) {
          case '+' -> Operation.PLUS;
          case '-' -> Operation.MINUS;
          case '/' -> Operation.OVER;
          case '*' -> Operation.TIMES;
          default -> null;
        };
    if (operation != null) {
      pos++;
      if (operation == Operation.TIMES && peek() == '*') {
        pos++;
        return Operation.POWER;
      }
    }
    return operation;
  }

  private @Nullable Operation wordOperation() {
    int start = pos;
    for (Operation operation : Operation.WORDS) {
      if (take(operation.name())) {
        return operation;
      }
      pos = start;
    }
    throw refuse(ProgramCode.EXPRESSION, "unknown operation", "use MOD, OR, XOR or AND");
  }

  private boolean take(String word) {
    for (int i = 0; i < word.length(); i++) {
      if (peek() != word.charAt(i)) {
        return false;
      }
      pos++;
    }
    return true;
  }

  private double parameter() {
    int start = pos;
    int number = parameterNumber();
    if (parameters.unknown(number) != 0) {
      throw new Refusal(
          ProgramCode.PARAMETER_UNKNOWN,
          start,
          pos,
          "the value of #" + number + " is known only to the machine",
          "say it with the machine's offsets, or leave this program to the machine");
    }
    return parameters.get(number);
  }

  /** Reads {@code #} and the number after it. */
  int parameterNumber() {
    int start = pos;
    pos++;
    deeper();
    double value = value();
    depth--;
    long number = whole(value, start);
    if (!Parameters.exists(number)) {
      throw new Refusal(
          ProgramCode.PARAMETER_NUMBER,
          start,
          pos,
          "parameters have the numbers 1 to " + Parameters.HIGHEST + ", not " + number,
          "");
    }
    return (int) number;
  }

  /** Makes a value whole that must be. */
  long whole(double value, int start) {
    double near = Math.rint(value);
    if (!(Math.abs(value - near) <= WHOLE * (1 + ROUNDING)) || Math.abs(near) > Integer.MAX_VALUE) {
      throw new Refusal(
          ProgramCode.NOT_WHOLE, start, pos, "a whole number is needed, not " + value, "");
    }
    return (long) near;
  }

  private boolean startsFunction() {
    int start = pos;
    for (Function function : Function.ALL) {
      boolean found = take(function.name()) && peek() == '[';
      pos = start;
      if (found) {
        return true;
      }
    }
    return false;
  }

  private double function() {
    int start = pos;
    for (Function function : Function.ALL) {
      if (take(function.name())) {
        return apply(function, start);
      }
      pos = start;
    }
    throw missing();
  }

  private double apply(Function function, int start) {
    String name = function.name().toLowerCase(Locale.ROOT);
    if (peek() != '[') {
      throw refuse(ProgramCode.EXPRESSION, name + " needs a [", "");
    }
    double first = bracket();
    if (function != Function.ATAN) {
      return checked(function.apply(first), start);
    }
    if (peek() != '/') {
      throw refuse(ProgramCode.EXPRESSION, "atan needs / and a second bracket", "atan[y]/[x]");
    }
    pos++;
    if (peek() != '[') {
      throw refuse(ProgramCode.EXPRESSION, "atan needs a second bracket", "atan[y]/[x]");
    }
    return Math.toDegrees(StrictMath.atan2(first, bracket()));
  }

  private double checked(double value, int start) {
    if (!Double.isFinite(value)) {
      throw new Refusal(
          ProgramCode.ARITHMETIC, start, Math.max(pos, start + 1), "this has no result", "");
    }
    return value;
  }

  /** Refuses at the next byte. */
  Refusal refuse(ProgramCode code, String message, String hint) {
    return new Refusal(code, pos, pos + 1, message, hint);
  }

  /** The operations, by strength; equal ones are done from left to right. */
  private enum Operation {
    PLUS(WEAK),
    MINUS(WEAK),
    OR(WEAK),
    XOR(WEAK),
    AND(WEAK),
    TIMES(MIDDLE),
    OVER(MIDDLE),
    MOD(MIDDLE),
    POWER(STRONG);

    static final Operation[] WORDS = {OR, XOR, AND, MOD};

    final int strength;

    Operation(int strength) {
      this.strength = strength;
    }

    double apply(double a, double c) {
      return switch (this) {
        case PLUS -> a + c;
        case MINUS -> a - c;
        case OR -> a != 0 || c != 0 ? 1 : 0;
        case XOR -> (a != 0) != (c != 0) ? 1 : 0;
        case AND -> a != 0 && c != 0 ? 1 : 0;
        case TIMES -> a * c;
        case OVER -> a / c;
        case MOD -> modulo(a, c);
        case POWER -> StrictMath.pow(a, c);
      };
    }

    private static double modulo(double a, double c) {
      double rest = a % c;
      return rest < 0 ? rest + Math.abs(c) : rest;
    }
  }

  /** The functions; angles in degrees. */
  private enum Function {
    ABS,
    ACOS,
    ASIN,
    ATAN,
    COS,
    EXP,
    FIX,
    FUP,
    LN,
    ROUND,
    SIN,
    SQRT,
    TAN;

    static final Function[] ALL = values();

    double apply(double a) {
      return switch (this) {
        case ABS -> Math.abs(a);
        case ACOS -> Math.toDegrees(StrictMath.acos(a));
        case ASIN -> Math.toDegrees(StrictMath.asin(a));
        case ATAN -> Math.toDegrees(StrictMath.atan(a));
        case COS -> StrictMath.cos(Math.toRadians(a));
        case EXP -> StrictMath.exp(a);
        case FIX -> Math.floor(a);
        case FUP -> Math.ceil(a);
        case LN -> StrictMath.log(a);
        case ROUND -> Math.signum(a) * Math.floor(Math.abs(a) + 0.5);
        case SIN -> StrictMath.sin(Math.toRadians(a));
        case SQRT -> Math.sqrt(a);
        case TAN -> StrictMath.tan(Math.toRadians(a));
      };
    }
  }
}
