package hullalmanac.cli;

import hullalmanac.core.record.Coded;
import hullalmanac.service.MadePaper;
import hullalmanac.service.PaperService;
import hullalmanac.service.Papers;
import hullalmanac.service.RecordService;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Writes papers. */
@Command(
    name = "report",
    description =
        "Writes a paper as PDF: what was done on a boat, an invoice, what is due by harbour …",
    mixinStandardHelpOptions = true)
final class ReportCommand implements Callable<Integer> {
  @ParentCommand private HullAlmanacCommand parent;
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "KIND",
      description =
          "history, condition, care, estimate or card (each of one --boat), invoice (with --number),"
              + " due, lives or year")
  private String kind;

  @Option(
      names = "--boat",
      paramLabel = "BOAT",
      description = "a boat by her name, her id or her hull number")
  private String boat;

  @Option(
      names = "--visit",
      paramLabel = "DATE",
      description =
          "the day of a visit, as 2026-05-01; otherwise the newest that was done, for a card the"
              + " next that is planned")
  private String visit;

  @Option(
      names = "--number",
      paramLabel = "NUMBER",
      description = "number of an invoice or a credit")
  private String number;

  @Option(
      names = "--year",
      paramLabel = "YEAR",
      description = "the year of takings, as 2026; otherwise this year, or that of a sample")
  private String year;

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description = "the day to look from, as 2026-05-01; otherwise today, or the day of a sample")
  private String asOf;

  @Option(
      names = "--pdf",
      paramLabel = "FILE",
      required = true,
      description = "the file to write; one that this command wrote before is written over")
  private Path file;

  @Override
  public Integer call() {
    Papers.Sort sort =
        Coded.parse(Papers.Sort.class, kind)
            .orElseThrow(
                () ->
                    new GivenWrong(
                        "There is no paper \""
                            + kind
                            + "\"; write "
                            + Coded.allCodes(Papers.Sort.class)));
    if (sort.ofBoat() && boat == null) {
      throw new GivenWrong("--boat: say of which boat, by her name, her id or her hull number");
    }
    try (RecordService record = parent.openReadOnly()) {
      LocalDate day = asOf == null ? record.today() : Given.day("--as-of", asOf);
      Papers.Outcome outcome = new Papers(record.almanac(), day).of(asked(sort));
      if (outcome instanceof Papers.Refused refused) {
        throw new GivenWrong(refused.sentence());
      }
      MadePaper made =
          new MadePaper.Maker(record.photos()).make(((Papers.Ready) outcome).paper(), day);
      PaperService.write(made, file);
      made.lacking().forEach(spec.commandLine().getErr()::println);
      spec.commandLine().getOut().println("Written to " + file);
    }
    return 0;
  }

  private Papers.Asked asked(Papers.Sort sort) {
    return new Papers.Asked(
        sort,
        Optional.ofNullable(boat),
        Optional.ofNullable(visit).map(v -> Given.day("--visit", v)),
        Optional.ofNullable(number),
        Optional.ofNullable(year).map(y -> Given.whole("--year", y, 1900, 2200)));
  }
}
