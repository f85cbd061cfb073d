package frieze.field;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/** Shares numbered pieces of work, each independent of the others, between two threads. */
public final class TwoThreads {
  private TwoThreads() {}

  /**
   * Does pieces 0 to {@code count - 1}.
   *
   * @param worker makes what one thread works with; called once on each
   */
  public static void share(int count, Supplier<IntConsumer> worker) {
    AtomicInteger next = new AtomicInteger();
    Runnable all =
        () -> {
          IntConsumer work = worker.get();
          for (int i = next.getAndIncrement(); i < count; i = next.getAndIncrement()) {
            work.accept(i);
          }
        };
    FutureTask<Boolean> other = new FutureTask<>(all, true);
    Thread thread = new Thread(other, "dry run");
    thread.setDaemon(true);
    thread.start();
    all.run();
    finish(other);
  }

  private static void finish(FutureTask<Boolean> task) {
    try {
      task.get();
    } catch (ExecutionException e) {
      throw new IllegalStateException("work on the second thread failed", e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while waiting for the second thread", e);
    }
  }
}
