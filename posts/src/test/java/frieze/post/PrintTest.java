package frieze.post;

import frieze.lower.*;
import frieze.shop.Setup;
import java.util.List;
import org.junit.jupiter.api.Test;

class PrintTest {
  @Test
  void print() {
    for (Post post : Posts.all()) {
      for (int k = 0; k < 2; k++) {
        Setup setup = Jobs.setup(Jobs.machine(k == 0, k == 1, k == 1));
        var req =
            new Lowering.Request(
                setup,
                post.capabilities(),
                List.of("Hall bench", "zero: left, front, top of stock"),
                new FileNames(post.capabilities().files()));
        try {
          for (Program p : Lowering.lower(Jobs.leafAndRecess("front apron"), req)) {
            ProgramText t = post.write(p);
            System.out.println("=== " + post.id() + " " + t.fileName());
            System.out.print(t.text());
          }
        } catch (IllegalArgumentException e) {
          System.out.println(post.id() + " " + e);
        }
      }
    }
  }
}
