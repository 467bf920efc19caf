package hullalmanac.cli;

import hullalmanac.core.record.Coded;
import hullalmanac.service.DueList;
import hullalmanac.service.Fleet;
import hullalmanac.service.RecordService;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Prints what is due. */
@Command(
    name = "due",
    description = "Lists every coat in service and when it is best renewed, the soonest first.",
    mixinStandardHelpOptions = true)
final class DueCommand implements Callable<Integer> {
  @ParentCommand private HullAlmanacCommand parent;
  @Spec private CommandSpec spec;

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description =
          "the day to forecast from, as 2026-05-01; otherwise today, or the day of a sample")
  private String asOf;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, csv or json; otherwise text")
  private String format;

  @Override
  public Integer call() {
    Format wanted =
        Coded.parse(Format.class, format)
            .orElseThrow(
                () ->
                    new GivenWrong(
                        "--format: there is no \""
                            + format
                            + "\"; write "
                            + Coded.allCodes(Format.class)));
    try (RecordService record = parent.openReadOnly()) {
      LocalDate day = asOf == null ? record.today() : Given.day("--as-of", asOf);
      DueList list = DueList.of(Fleet.of(record.almanac(), day));
      spec.commandLine().getOut().print(wanted.of(list));
    }
    return 0;
  }

  private enum Format implements Coded {
    TEXT {
      @Override
      String of(DueList list) {
        return list.text();
      }
    },
    CSV {
      @Override
      String of(DueList list) {
        return list.csv();
      }
    },
    JSON {
      @Override
      String of(DueList list) {
        return list.json();
      }
    };

    abstract String of(DueList list);

    @Override
    public String code() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }
}
