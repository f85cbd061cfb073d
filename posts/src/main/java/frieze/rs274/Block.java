package frieze.rs274;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One line as it was read. One object is filled again and again: what it holds is good until the
 * reader goes to the next line.
 */
public final class Block {
  /** More G or M words than any line can rightly have. */
  static final int MOST_CODES = 40;

  static final int LETTERS = 26;
  private static final int ROTARY = LineCodes.bits("ABC");

  private byte[] bytes = new byte[0];
  private int from;
  private int to;
  private int line;

  boolean deleted;
  int present;
  final double[] value = new double[LETTERS];
  final int[] at = new int[LETTERS];
  final int[] end = new int[LETTERS];

  /** G codes times ten. */
  final int[] g = new int[MOST_CODES];

  final int[] gAt = new int[MOST_CODES];
  final int[] gEnd = new int[MOST_CODES];
  int gCount;
  final int[] m = new int[MOST_CODES];
  final int[] mAt = new int[MOST_CODES];
  final int[] mEnd = new int[MOST_CODES];
  int mCount;

  int[] setNumber = new int[8];
  double[] setValue = new double[8];
  int setCount;

  @Nullable String comment;

  public Block() {}

  void clear(byte[] lineBytes, int lineFrom, int lineTo, int lineNumber) {
    bytes = lineBytes;
    from = lineFrom;
    to = lineTo;
    line = lineNumber;
    deleted = false;
    present = 0;
    gCount = 0;
    mCount = 0;
    setCount = 0;
    comment = null;
  }

  void set(int number, double newValue) {
    if (setCount == setNumber.length) {
      setNumber = java.util.Arrays.copyOf(setNumber, 2 * setCount);
      setValue = java.util.Arrays.copyOf(setValue, 2 * setCount);
    }
    setNumber[setCount] = number;
    setValue[setCount] = newValue;
    setCount++;
  }

  boolean hasRotary() {
    return (present & ROTARY) != 0;
  }

  boolean has(char letter) {
    return (present & (1 << (letter - 'A'))) != 0;
  }

  double get(char letter) {
    return value[letter - 'A'];
  }

  int at(char letter) {
    return at[letter - 'A'];
  }

  int end(char letter) {
    return end[letter - 'A'];
  }

  /** Tells whether there is nothing to carry out. */
  boolean isEmpty() {
    return present == 0 && gCount == 0 && mCount == 0 && setCount == 0;
  }

  byte[] bytes() {
    return bytes;
  }

  int from() {
    return from;
  }

  int to() {
    return to;
  }

  /** The line's number, counted from 1. */
  public int line() {
    return line;
  }

  /** The line as it is written. */
  public String text() {
    return NumberReader.text(bytes, from, to);
  }

  /** The words, without line number and settings: first G, then M, then the others by letter. */
  public List<Word> words() {
    List<Word> words = new ArrayList<>();
    for (int i = 0; i < gCount; i++) {
      words.add(word('G', g[i] / 10.0, gAt[i], gEnd[i]));
    }
    for (int i = 0; i < mCount; i++) {
      words.add(word('M', m[i], mAt[i], mEnd[i]));
    }
    for (char c = 'A'; c <= 'Z'; c++) {
      if (has(c)) {
        words.add(word(c, get(c), at(c), end(c)));
      }
    }
    return List.copyOf(words);
  }

  private Word word(char letter, double v, int wordAt, int wordEnd) {
    return new Word(letter, v, column(wordAt), NumberReader.text(bytes, wordAt, wordEnd).strip());
  }

  /** The column of a byte of this line, in UTF-16 units, counted from 1. */
  int column(int byteAt) {
    return columns(bytes, from, Math.min(byteAt, to)) + 1;
  }

  /** Counts the UTF-16 units of UTF-8 text. */
  static int columns(byte[] b, int start, int stop) {
    int units = 0;
    for (int i = start; i < stop; i++) {
      int c = b[i] & 0xff;
      if (c < 0x80 || c >= 0xc0) {
        units += c >= 0xf0 ? 2 : 1;
      }
    }
    return units;
  }
}
