package frieze.post;

class StraightOnlyTest extends PostContractTest {
  @Override
  protected Post post() {
    return builtIn("straight-only");
  }
}
