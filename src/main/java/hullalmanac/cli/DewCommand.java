package hullalmanac.cli;

import hullalmanac.core.reckon.DewPoint;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Reckons the dew point and how far a surface is above it. */
@Command(
    name = "dew",
    description = "Dew point of the air, and whether a surface is at least 3 °C above it.",
    mixinStandardHelpOptions = true)
final class DewCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(
      names = "--air",
      required = true,
      paramLabel = "CELSIUS",
      description = "temperature of the air, °C")
  private String air;

  @Option(
      names = "--rh",
      required = true,
      paramLabel = "PERCENT",
      description = "relative humidity, %%")
  private String humidity;

  @Option(
      names = "--surface",
      paramLabel = "CELSIUS",
      description = "temperature of the surface, °C")
  private String surface;

  @Override
  public Integer call() {
    double t = Given.number("--air", air, -40, 60);
    double rh = Given.number("--rh", humidity, 0.1, 100);
    PrintWriter out = spec.commandLine().getOut();
    out.printf(Locale.ROOT, "Dew point %.1f °C%n", DewPoint.of(t, rh));
    if (surface != null) {
      double margin = DewPoint.margin(t, rh, Given.number("--surface", surface, -40, 90));
      out.printf(
          Locale.ROOT,
          "Surface %.1f °C %s the dew point: %s%n",
          Math.abs(margin),
          margin >= 0 ? "above" : "below",
          DewPoint.dryEnough(margin) ? "dry enough to coat" : "too near to it to coat");
      out.println(
          "The product's own label and data sheet come first. A reading is stale after two hours.");
    }
    return 0;
  }
}
