package frieze.rs274;

import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the words, settings and comments of a line.
 *
 * <p>Works on bytes and makes no objects for a line without comment. Source: NISTIR 6556, 3.3 and
 * appendix E.
 */
final class BlockReader {
  private static final String LETTERS = "ABCDFGHIJKLMPQRSTXYZ";

  /** O, a number or name, and a word that calls or steers: common practice, not in the report. */
  private static final Pattern CALL =
      Pattern.compile(
          "O\\s*(<[^>]*>|[0-9]+)\\s*(SUB|ENDSUB|CALL|RETURN|IF|ELSEIF|ELSE|ENDIF|WHILE|ENDWHILE"
              + "|DO|REPEAT|ENDREPEAT|BREAK|CONTINUE)(?![A-Z0-9])",
          Pattern.CASE_INSENSITIVE);

  private static final int LONGEST_CALL = 100;

  private final ReadingRules rules;
  private final LineScanner scanner;
  private final boolean[] letterAllowed = new boolean[128];

  BlockReader(ReadingRules rules, Parameters parameters) {
    this.rules = rules;
    this.scanner = new LineScanner(parameters);
    String letters = LETTERS + rules.grammar().extraLetters();
    for (int i = 0; i < letters.length(); i++) {
      letterAllowed[letters.charAt(i)] = true;
    }
  }

  /**
   * Reads a line into a block.
   *
   * @throws Refusal at the first thing that the grammar does not allow
   */
  void read(LineSource source, Block block) {
    int from = source.from();
    int to = source.to();
    block.clear(source.bytes(), from, to, source.number());
    checkLength(source);
    scanner.start(source.bytes(), from, to);
    int c = scanner.peek();
    if (c == '/') {
      block.deleted = true;
      scanner.move(scanner.pos() + 1);
      c = scanner.peek();
    }
    if (c == 'O') {
      checkCall(source.bytes(), to);
    }
    if (c == 'N') {
      lineNumber(to);
      c = scanner.peek();
    } else if ((c == 'O' || c == ':') && rules.grammar().programNumbers()) {
      programNumber();
      c = scanner.peek();
    }
    while (c != -1) {
      if (c == 'O') {
        checkCall(source.bytes(), to);
      }
      segment(c, source.bytes(), to, block);
      c = scanner.peek();
    }
  }

  private void checkLength(LineSource source) {
    int allowed = rules.grammar().maxLineLength();
    int most = allowed == 0 ? LineSource.LONGEST : Math.min(allowed, LineSource.LONGEST);
    if (source.length() > most) {
      long length = source.length();
      if (length <= LineSource.LONGEST) {
        length = Block.columns(source.bytes(), source.from(), source.to());
      }
      if (length > most) {
        throw new Refusal(
            ProgramCode.LINE_TOO_LONG,
            Math.min(source.from() + most, source.to()),
            source.to(),
            "the line has " + length + " characters, " + most + " are allowed",
            "");
      }
    }
  }

  private void lineNumber(int to) {
    int start = scanner.pos();
    scanner.move(start + 1);
    int digits = 0;
    int c = scanner.peek();
    while (c >= '0' && c <= '9') {
      digits++;
      scanner.move(scanner.pos() + 1);
      c = scanner.peek();
    }
    int most = rules.grammar().lineNumberDigits();
    if (digits == 0 || digits > most || c == '.') {
      int end = Math.min(to, scanner.pos() + (c == '.' ? 1 : 0));
      throw new Refusal(
          ProgramCode.LINE_NUMBER,
          start,
          Math.max(end, start + 1),
          "a line number is N and 1 to " + most + " digits, without sign and point",
          "");
    }
  }

  /** Refuses a line of a subprogram or a loop. */
  private void checkCall(byte[] b, int to) {
    int start = scanner.pos();
    Matcher call = CALL.matcher(NumberReader.text(b, start, Math.min(to, start + LONGEST_CALL)));
    if (call.lookingAt()) {
      throw new Refusal(
          ProgramCode.SUBPROGRAM,
          start,
          start + call.end(),
          call.group() + ": subprograms and loops are not followed",
          Strangers.WRITE_OUT);
    }
  }

  private void programNumber() {
    scanner.move(scanner.pos() + 1);
    int c = scanner.peek();
    while (c >= '0' && c <= '9') {
      scanner.move(scanner.pos() + 1);
      c = scanner.peek();
    }
  }

  private void segment(int c, byte[] b, int to, Block block) {
    if (c < 128 && letterAllowed[c]) {
      word(c, block);
    } else if (c == '(') {
      comment(b, to, block);
    } else if (c == '#') {
      setting(block);
    } else if (c == ';' && rules.grammar().semicolonComments()) {
      checkPrintable(b, scanner.pos(), to);
      block.comment =
          new String(b, scanner.pos() + 1, to - scanner.pos() - 1, StandardCharsets.UTF_8).strip();
      scanner.move(to);
    } else {
      throw misplaced(c);
    }
  }

  private Refusal misplaced(int c) {
    if (c == 'N') {
      return scanner.refuse(
          ProgramCode.LINE_NUMBER, "a line number stands before all other words", "move it");
    }
    if (c >= 'A' && c <= 'Z') {
      return scanner.refuse(ProgramCode.NOT_A_WORD, "no word starts with " + (char) c, "");
    }
    if (c == 0) {
      return scanner.refuse(
          ProgramCode.BAD_CHARACTER,
          "a byte 0 where text should be",
          "save the program as plain ASCII or UTF-8 text");
    }
    String shown =
        c > 0x20 && c < 0x7f ? "" + (char) c : String.format(java.util.Locale.ROOT, "byte %02X", c);
    return scanner.refuse(ProgramCode.BAD_CHARACTER, shown + " has no place here", "");
  }

  private void word(int c, Block block) {
    int start = scanner.pos();
    scanner.move(start + 1);
    double value = scanner.value();
    int end = scanner.pos();
    switch (c) {
      case 'G' -> {
        room(block.gCount, ProgramCode.GROUP_G, start, end);
        block.g[block.gCount] = (int) scanner.whole(value * 10, start);
        block.gAt[block.gCount] = start;
        block.gEnd[block.gCount++] = end;
      }
      case 'M' -> {
        room(block.mCount, ProgramCode.TOO_MANY_M, start, end);
        block.m[block.mCount] = (int) scanner.whole(value, start);
        block.mAt[block.mCount] = start;
        block.mEnd[block.mCount++] = end;
      }
      default -> {
        int i = c - 'A';
        if ((block.present & (1 << i)) != 0) {
          throw new Refusal(
              ProgramCode.WORD_REPEATED, start, end, "a second " + (char) c + " on this line", "");
        }
        block.present |= 1 << i;
        block.value[i] = value;
        block.at[i] = start;
        block.end[i] = end;
      }
    }
  }

  private static void room(int count, ProgramCode code, int start, int end) {
    if (count == Block.MOST_CODES) {
      throw new Refusal(code, start, end, "more codes than a line can have", "");
    }
  }

  private void setting(Block block) {
    int number = scanner.parameterNumber();
    if (scanner.peek() != '=') {
      throw scanner.refuse(
          ProgramCode.BAD_CHARACTER, "= is missing after #" + number, "write #" + number + "=...");
    }
    scanner.move(scanner.pos() + 1);
    block.set(number, scanner.value());
  }

  private void comment(byte[] b, int to, Block block) {
    int open = scanner.pos();
    int i = open + 1;
    while (i < to && b[i] != ')') {
      if (b[i] == '(') {
        throw new Refusal(
            ProgramCode.COMMENT_NESTED, i, i + 1, "a ( inside a comment", "leave it out");
      }
      i++;
    }
    if (i >= to) {
      throw new Refusal(
          ProgramCode.COMMENT_OPEN, open, to, "the comment is not closed on its line", "add a )");
    }
    checkPrintable(b, open, i);
    block.comment = new String(b, open + 1, i - open - 1, StandardCharsets.UTF_8);
    scanner.move(i + 1);
  }

  private static void checkPrintable(byte[] b, int start, int stop) {
    for (int i = start; i < stop; i++) {
      if (b[i] >= 0 && ((b[i] < ' ' && b[i] != '\t') || b[i] == 0x7f)) {
        throw new Refusal(
            ProgramCode.BAD_CHARACTER, i, i + 1, "a control character in a comment", "");
      }
    }
  }
}
