package frieze.post;

class ShortArcsTest extends PostContractTest {
  @Override
  protected Post post() {
    return builtIn("short-arcs");
  }
}
