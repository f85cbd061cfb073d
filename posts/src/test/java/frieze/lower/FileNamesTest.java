package frieze.lower;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FileNamesTest {
  private static final Capabilities.Files LONG =
      new Capabilities.Files(30, ".nc", false, Long.MAX_VALUE);
  private static final Capabilities.Files SHORT =
      new Capabilities.Files(8, ".NC", true, Long.MAX_VALUE);

  private static List<String> names(Capabilities.Files files, String... titles) {
    FileNames names = new FileNames(files);
    List<String> out = new ArrayList<>();
    for (String title : titles) {
      out.add(names.next(title));
    }
    return out;
  }

  @Test
  void programs_of_one_panel_count_up() {
    assertThat(names(LONG, "front apron", "front apron"))
        .containsExactly("front-apron-01.nc", "front-apron-02.nc");
  }

  @Test
  void short_names_have_eight_capitals_and_stay_unique() {
    assertThat(names(SHORT, "front apron", "front end", "front apron"))
        .containsExactly("FRONTA01.NC", "FRONTE01.NC", "FRONTA02.NC");
    assertThat(names(SHORT, "end panel left", "end panel right"))
        .containsExactly("ENDPAN01.NC", "ENDPAN02.NC");
  }

  @Test
  void odd_titles_give_plain_names() {
    assertThat(names(LONG, "../../etc", "Ünïcode (x)", "\uD83C\uDF3F", "CON"))
        .containsExactly("etc-01.nc", "unicode-x-01.nc", "panel-01.nc", "con-01.nc");
  }

  @Test
  void names_sort_in_running_order() {
    String[] titles = new String[40];
    java.util.Arrays.fill(titles, "apron");
    assertThat(names(LONG, titles)).isSorted().doesNotHaveDuplicates();
  }
}
