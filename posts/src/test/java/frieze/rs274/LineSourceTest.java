package frieze.rs274;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import frieze.fixtures.Seeds;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Lines end with CR, LF or both (NISTIR 6556, 3.3). */
class LineSourceTest {
  private static final long SEED = 20260102;

  private static List<String> lines(InputStream in) {
    LineSource source = new LineSource(in);
    List<String> lines = new ArrayList<>();
    while (source.next()) {
      lines.add(NumberReader.text(source.bytes(), source.from(), source.to()));
      assertThat(source.number()).isEqualTo(lines.size());
    }
    return lines;
  }

  private static List<String> lines(String text) {
    return lines(new ByteArrayInputStream(text.getBytes(StandardCharsets.US_ASCII)));
  }

  /** A stream that gives a few bytes at a time. */
  private static InputStream dribble(byte[] text, int atATime) {
    return new ByteArrayInputStream(text) {
      @Override
      public synchronized int read(byte[] b, int off, int len) {
        return super.read(b, off, Math.min(len, atATime));
      }
    };
  }

  @Test
  void all_three_line_ends_are_known() {
    assertThat(lines("a\nb\rc\r\nd")).containsExactly("a", "b", "c", "d");
    assertThat(lines("a\n\nb\r\rc\r\n\r\nd\n\re"))
        .containsExactly("a", "", "b", "", "c", "", "d", "", "e");
  }

  @Test
  void no_line_follows_the_last_line_end() {
    assertThat(lines("")).isEmpty();
    assertThat(lines("a\n")).containsExactly("a");
    assertThat(lines("a\r\n")).containsExactly("a");
    assertThat(lines("\r\n")).containsExactly("");
  }

  @Test
  void pieces_of_any_size_give_the_same_lines() {
    SplittableRandom random = Seeds.random(SEED);
    for (int round = 0; round < 60; round++) {
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < 60; i++) {
        text.append("x".repeat(random.nextInt(9)));
        text.append(new String[] {"\n", "\r\n", "\r"}[random.nextInt(3)]);
      }
      List<String> expected = text.toString().lines().toList();
      byte[] bytes = text.toString().getBytes(StandardCharsets.US_ASCII);
      for (int atATime : new int[] {1, 2, 7, 1000}) {
        assertThat(lines(dribble(bytes, atATime)))
            .as("seed " + Seeds.seed(SEED) + " round " + round + " by " + atATime)
            .isEqualTo(expected);
      }
    }
  }

  @Test
  void lines_across_the_ends_of_the_buffer_are_whole() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 40_000; i++) {
      text.append("G1 X").append(i).append(i % 3 == 0 ? "\r\n" : "\n");
    }
    assertThat(lines(text.toString())).isEqualTo(text.toString().lines().toList());
  }

  @Test
  void of_a_line_that_is_too_long_the_beginning_is_kept_and_the_next_one_is_whole() {
    for (int extra : new int[] {1, 70_000, 500_000}) {
      for (String end : new String[] {"\n", "\r\n"}) {
        int length = LineSource.LONGEST + extra;
        String text = "first\n" + "a".repeat(length) + end + "next\nlast";
        LineSource source =
            new LineSource(new ByteArrayInputStream(text.getBytes(StandardCharsets.US_ASCII)));
        assertThat(source.next()).isTrue();
        assertThat(source.next()).isTrue();
        assertThat(source.length()).isEqualTo(length);
        assertThat(source.to() - source.from()).isBetween(LineSource.LONGEST, length);
        assertThat(source.bytes()[source.from()]).isEqualTo((byte) 'a');
        assertThat(source.bytes()[source.to() - 1]).isEqualTo((byte) 'a');
        assertThat(source.next()).isTrue();
        assertThat(NumberReader.text(source.bytes(), source.from(), source.to())).isEqualTo("next");
        assertThat(source.number()).isEqualTo(3);
        assertThat(source.next()).isTrue();
        assertThat(source.next()).isFalse();
      }
    }
  }

  @Test
  void a_last_line_that_is_too_long_ends_the_text() {
    String text = "a".repeat(3 * LineSource.LONGEST);
    LineSource source =
        new LineSource(new ByteArrayInputStream(text.getBytes(StandardCharsets.US_ASCII)));
    assertThat(source.next()).isTrue();
    assertThat(source.length()).isEqualTo(text.length());
    assertThat(source.next()).isFalse();
  }

  @Test
  void the_first_bytes_can_be_looked_at_and_passed_over() {
    LineSource source = new LineSource(dribble("abcdef".getBytes(StandardCharsets.US_ASCII), 1));
    assertThat(source.peek(4)).isEqualTo("abcd".getBytes(StandardCharsets.US_ASCII));
    source.skip(2);
    assertThat(source.next()).isTrue();
    assertThat(NumberReader.text(source.bytes(), source.from(), source.to())).isEqualTo("cdef");
    assertThat(new LineSource(InputStream.nullInputStream()).peek(4)).isEmpty();
  }

  @Test
  void a_stream_that_fails_fails_the_reading() {
    InputStream broken =
        new InputStream() {
          @Override
          public int read() throws IOException {
            throw new IOException("gone");
          }

          @Override
          public int read(byte[] b, int off, int len) throws IOException {
            throw new IOException("gone");
          }
        };
    assertThatThrownBy(() -> new LineSource(broken).next())
        .isInstanceOf(UncheckedIOException.class)
        .hasMessageContaining("gone");
  }
}
