package hullalmanac.study;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** A mean over fleets and its standard error. */
record Estimate(double mean, double error) {
  static <T> Estimate over(List<T> fleets, ToDoubleFunction<T> value) {
    double[] values = fleets.stream().mapToDouble(value).toArray();
    double sum = 0;
    for (double v : values) {
      sum += v;
    }
    double mean = sum / values.length;
    double squares = 0;
    for (double v : values) {
      squares += (v - mean) * (v - mean);
    }
    return new Estimate(mean, Math.sqrt(squares / (values.length - 1) / values.length));
  }
}
