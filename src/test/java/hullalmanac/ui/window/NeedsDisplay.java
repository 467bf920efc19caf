package hullalmanac.ui.window;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Tests that open a window. Without a display each is counted and printed as not run; where {@code
 * -Dhullalmanac.windowTests=required} is set, it fails instead.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(NeedsDisplay.OnDisplay.class)
public @interface NeedsDisplay {
  /** Whether there is a display. */
  final class OnDisplay implements ExecutionCondition {
    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
      if (context.getTestMethod().isEmpty() || displayed()) {
        return ConditionEvaluationResult.enabled("there is a display");
      }
      if (System.getProperty("hullalmanac.windowTests", "optional").equals("required")) {
        throw new IllegalStateException(
            "There is no display, and -Dhullalmanac.windowTests=required forbids to do without.");
      }
      context
          .getRoot()
          .getStore(ExtensionContext.Namespace.create(NeedsDisplay.class))
          .getOrComputeIfAbsent(Count.class)
          .tests
          .incrementAndGet();
      return ConditionEvaluationResult.disabled("there is no display");
    }

    private static boolean displayed() {
      try {
        return !GraphicsEnvironment.isHeadless()
            && GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
      } catch (AWTError e) {
        return false;
      }
    }
  }

  /** Counts the tests not run, and prints how many when all is over. */
  final class Count implements AutoCloseable {
    private final AtomicInteger tests = new AtomicInteger();

    Count() {}

    @Override
    public void close() {
      System.out.println("Window tests not run, for want of a display: " + tests.get());
    }
  }
}
