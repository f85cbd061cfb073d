package frieze.post;

class PlasmaTouchTest extends PostContractTest {
  @Override
  protected Post post() {
    return builtIn("plasma-touch");
  }
}
