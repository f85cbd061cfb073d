package frieze.job;

import frieze.diagnostic.BadInputException;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.finding.Finding;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What became of drawings that were tried: made, refused with a reason, or unsafe. */
final class IconOutcome {
  private int asked;
  private int made;
  private final Map<String, String> refused = new TreeMap<>();
  private final Map<String, String> unsafe = new TreeMap<>();

  synchronized void ask(int more) {
    asked += more;
  }

  synchronized int asked() {
    return asked;
  }

  synchronized int made() {
    return made;
  }

  synchronized Map<String, String> unsafe() {
    return Map.copyOf(unsafe);
  }

  synchronized void refuse(String what, BadInputException why) {
    refused.put(what, why.getMessage());
  }

  synchronized void blame(String what, String why) {
    unsafe.put(what, why);
  }

  synchronized void judge(String what, DryRunResult result) {
    if (result.mayWrite()) {
      made++;
    } else {
      unsafe.put(
          what,
          result.findings().stream()
              .filter(Finding::isError)
              .limit(2)
              .map(Finding::toString)
              .collect(Collectors.joining("; ")));
    }
  }

  synchronized String report() {
    return made
        + " of "
        + asked
        + " made\nunsafe: "
        + lines(unsafe)
        + "\nrefused: "
        + lines(refused);
  }

  private static String lines(Map<String, String> map) {
    return map.entrySet().stream()
        .map(e -> "\n  " + e.getKey() + ": " + e.getValue())
        .collect(Collectors.joining());
  }
}
