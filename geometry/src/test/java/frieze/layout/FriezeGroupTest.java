package frieze.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Source of symbols and operations: International Tables for Crystallography, E (from memory). */
class FriezeGroupTest {
  private static final Symmetry IDENTITY = new Symmetry(1, 1, 0);

  @ParameterizedTest
  @EnumSource
  void operations_are_closed_modulo_whole_periods(FriezeGroup group) {
    List<Symmetry> operations = group.operations();
    for (Symmetry a : operations) {
      for (Symmetry b : operations) {
        assertThat(operations).as("%s of %s", b, a).contains(a.then(b));
      }
      assertThat(operations).anyMatch(b -> a.then(b).equals(IDENTITY));
    }
    assertThat(operations.get(0)).isEqualTo(IDENTITY);
  }

  /** The general position's multiplicity, from the tables. */
  @ParameterizedTest
  @CsvSource({"p1,1", "p11g,2", "p1m1,2", "p2,2", "p2mg,4", "p11m,2", "p2mm,4"})
  void a_general_point_has_as_many_images_as_the_tables_say(String symbol, int multiplicity) {
    FriezeGroup group = FriezeGroup.named(symbol).orElseThrow();
    Set<String> images = new HashSet<>();
    for (Symmetry s : group.operations()) {
      // the point (0.1, 0.3), in hundredths of a period
      int x = Math.floorMod(s.xSign() * 10 + s.halfPeriods() * 50, 100);
      images.add(x + "," + s.ySign() * 30);
    }
    assertThat(images).hasSize(multiplicity);
  }

  /** The usual questions by which a band is told from the others. */
  @ParameterizedTest
  @EnumSource
  void the_decision_tree_finds_the_group_from_its_operations(FriezeGroup group) {
    boolean turn = has(group, -1, -1);
    boolean across = has(group, -1, 1);
    boolean along = group.operations().contains(new Symmetry(1, -1, 0));
    boolean glide = group.operations().contains(new Symmetry(1, -1, 1));
    String found;
    if (turn) {
      found = across ? along ? "p2mm" : "p2mg" : "p2";
    } else {
      found = across ? "p1m1" : along ? "p11m" : glide ? "p11g" : "p1";
    }
    assertThat(found).isEqualTo(group.symbol());
  }

  private static boolean has(FriezeGroup group, int x, int y) {
    return group.operations().stream().anyMatch(s -> s.xSign() == x && s.ySign() == y);
  }

  @ParameterizedTest
  @EnumSource
  void each_column_of_a_period_holds_one_motif_for_each_row(FriezeGroup group) {
    Set<Symmetry> all = new HashSet<>();
    for (int column = 0; column < group.columnsPerPeriod(); column++) {
      assertThat(group.inColumn(column)).hasSize(group.rows());
      all.addAll(group.inColumn(column));
    }
    assertThat(all).containsExactlyInAnyOrderElementsOf(group.operations());
  }

  @Test
  void turn_and_mirror_stands_upright_then_mirrored_then_flipped_then_turned() {
    FriezeGroup group = FriezeGroup.named("Turn and  Mirror").orElseThrow();
    assertThat(group).isEqualTo(FriezeGroup.P2MG);
    assertThat(List.of(0, 1, 2, 3))
        .extracting(c -> group.inColumn(c).get(0))
        .extracting(s -> s.xSign() + "," + s.ySign())
        .containsExactly("1,1", "-1,1", "1,-1", "-1,-1");
  }

  @ParameterizedTest
  @CsvSource({"p211,P2", "p1a1,P11G", "p11a,P11G", "p2ma,P2MG", "spinning jump,P2MM", "hop,P1"})
  void other_spellings_and_nicknames_are_known(String name, FriezeGroup group) {
    assertThat(FriezeGroup.named(name)).contains(group);
  }

  @Test
  void no_name_is_used_twice() {
    Set<String> names = new TreeSet<>();
    for (FriezeGroup group : FriezeGroup.values()) {
      for (String name : group.names()) {
        assertThat(names.add(name.toLowerCase(Locale.ROOT))).as(name).isTrue();
      }
    }
    assertThat(FriezeGroup.named("p4m")).isEmpty();
  }
}
