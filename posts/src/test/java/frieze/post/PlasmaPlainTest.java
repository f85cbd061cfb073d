package frieze.post;

class PlasmaPlainTest extends PostContractTest {
  @Override
  protected Post post() {
    return builtIn("plasma-plain");
  }
}
