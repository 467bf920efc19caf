package hullalmanac.cli;

import hullalmanac.core.sun.SolarDay;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Reckons the sun of a day. */
@Command(
    name = "sun",
    description = "Sun above the atmosphere (Ra) and longest sunshine (N) of a day, after FAO-56.",
    mixinStandardHelpOptions = true)
final class SunCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(
      names = "--lat",
      required = true,
      paramLabel = "DEGREES",
      description = "latitude, north positive")
  private String latitude;

  @Option(
      names = "--day",
      required = true,
      paramLabel = "DAY",
      description = "day of the year, 1 to 366")
  private String day;

  @Override
  public Integer call() {
    SolarDay sun =
        new SolarDay(Given.number("--lat", latitude, -90, 90), Given.whole("--day", day, 1, 366));
    spec.commandLine()
        .getOut()
        .printf(
            Locale.ROOT,
            "Ra %.2f MJ/m2 a day%nN %.2f hours%n",
            sun.extraterrestrial(),
            sun.daylightHours());
    return 0;
  }
}
