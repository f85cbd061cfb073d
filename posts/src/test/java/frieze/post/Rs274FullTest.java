package frieze.post;

class Rs274FullTest extends PostContractTest {
  @Override
  protected Post post() {
    return builtIn("rs274-full");
  }
}
