package frieze.post;

class IsoBlocksTest extends PostContractTest {
  @Override
  protected Post post() {
    return builtIn("iso-blocks");
  }
}
