package hullalmanac.cli;

import hullalmanac.service.AccountsService;
import hullalmanac.service.RecordService;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Prints what an accountant asks for. */
@Command(
    name = "accounts",
    description = "Lists invoices, credits, payments, expenses and trips as CSV for an accountant.",
    mixinStandardHelpOptions = true)
final class AccountsCommand implements Callable<Integer> {
  @ParentCommand private HullAlmanacCommand parent;
  @Spec private CommandSpec spec;

  @Option(
      names = "--from",
      paramLabel = "DATE",
      description = "first day, as 2026-01-01; otherwise the first of this year")
  private String from;

  @Option(
      names = "--to",
      paramLabel = "DATE",
      description = "last day, as 2026-12-31; otherwise today, or the day of a sample")
  private String to;

  @Override
  public Integer call() {
    try (RecordService record = parent.openReadOnly()) {
      LocalDate last = to == null ? record.today() : Given.day("--to", to);
      LocalDate first = from == null ? last.withDayOfYear(1) : Given.day("--from", from);
      if (last.isBefore(first)) {
        throw new GivenWrong("--to: " + last + " is before --from, " + first);
      }
      spec.commandLine()
          .getOut()
          .print(AccountsService.csv(record.almanac(), first, last.plusDays(1)));
    }
    return 0;
  }
}
