package hullalmanac.cli;

import hullalmanac.core.reckon.HullNumber;
import java.io.PrintWriter;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads a hull number. */
@Command(
    name = "hin",
    description = "Reads a hull identification number, or says why it is none.",
    mixinStandardHelpOptions = true)
final class HinCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "TEXT", description = "the number as read off the boat")
  private String text;

  @Override
  public Integer call() {
    if (HullNumber.read(text) instanceof HullNumber.Valid number) {
      PrintWriter out = spec.commandLine().getOut();
      number.country().ifPresent(c -> out.println("Country " + c));
      out.println("Maker " + number.maker() + ", serial " + number.serial());
      out.println(
          "Built "
              + number.month().getDisplayName(TextStyle.FULL, Locale.ENGLISH)
              + " "
              + number.built());
      out.println("Model year " + number.modelYear() + " (" + number.form().words() + ")");
      number.warning().ifPresent(w -> out.println("Odd: " + w));
      return 0;
    }
    String reason = ((HullNumber.Invalid) HullNumber.read(text)).reason();
    throw new GivenWrong("\"" + text + "\" is not a hull number: " + reason + ".");
  }
}
