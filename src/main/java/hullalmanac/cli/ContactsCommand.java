package hullalmanac.cli;

import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Party;
import hullalmanac.core.work.Alike;
import hullalmanac.core.work.CardVersion;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.Contacts;
import hullalmanac.core.work.SideBySide;
import hullalmanac.service.ContactsService;
import hullalmanac.service.RecordService;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Writes the people of a record as contact cards, or brings cards in. */
@Command(
    name = "contacts",
    description = "Writes owners and other people as contact cards; with --import brings cards in.",
    mixinStandardHelpOptions = true)
final class ContactsCommand implements Callable<Integer> {
  @ParentCommand private HullAlmanacCommand parent;
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE.vcf", description = "the file to write, or with --import to read")
  private Path file;

  @Option(
      names = "--vcard",
      paramLabel = "VERSION",
      defaultValue = "3.0",
      description = "2.1, 3.0 or 4.0; otherwise 3.0")
  private String version;

  @Option(
      names = "--import",
      description =
          "read the file: who is new comes in, who may be known already is shown side by side")
  private boolean bringIn;

  @Option(
      names = "--merge",
      description =
          "with --import: make one of those who may be the same; what differs goes to the note")
  private boolean merge;

  @Override
  public Integer call() {
    if (merge && !bringIn) {
      throw new GivenWrong("--merge goes with --import");
    }
    PrintWriter out = spec.commandLine().getOut();
    if (bringIn) {
      bringIn(out);
    } else {
      CardVersion wanted =
          Coded.parse(CardVersion.class, version)
              .orElseThrow(
                  () ->
                      new GivenWrong(
                          "--vcard: there is no \""
                              + version
                              + "\"; write "
                              + Coded.allCodes(CardVersion.class)));
      try (RecordService record = parent.openReadOnly()) {
        int cards = new ContactsService(record).write(file, wanted);
        out.println("Written to " + file + ": " + cards + " cards.");
      }
    }
    return 0;
  }

  private void bringIn(PrintWriter out) {
    try (RecordService record =
        RecordService.open(parent.record(), parent.context().surroundings())) {
      ContactsService service = new ContactsService(record);
      ContactsService.Compared compared = service.compare(file);
      Contacts contacts = compared.contacts();
      if (contacts.fresh().isEmpty() && contacts.alike().isEmpty() && contacts.there().isEmpty()) {
        throw new GivenWrong(compared.problems());
      }
      if (service.bringIn(file, contacts, merge) instanceof Change.Refused refused) {
        throw new GivenWrong(refused.problems().stream().map(p -> p.sentence()).toList());
      }
      out.println(
          contacts.fresh().size()
              + " new, "
              + contacts.there().size()
              + " in the record already, "
              + contacts.alike().size()
              + (merge ? " made one with whom they are like." : " like somebody in the record."));
      contacts.alike().forEach(pair -> show(out, pair));
      if (!contacts.alike().isEmpty() && !merge) {
        out.println();
        out.println("They were left out; --merge makes each one with whom it is like.");
      }
      compared.problems().forEach(spec.commandLine().getErr()::println);
    }
  }

  private static void show(PrintWriter out, Alike pair) {
    Party known = pair.known();
    out.println();
    out.println(
        known.name()
            + ": "
            + pair.signs().stream().map(Alike.Sign::words).collect(Collectors.joining(", ")));
    out.println(line("", "in the record", "on the card"));
    for (SideBySide side : SideBySide.of(known, pair.other())) {
      if (!side.known().equals(side.other())) {
        out.println(line(side.field().words(), side.known(), side.other()));
      }
    }
  }

  private static String line(String field, String known, String other) {
    return String.format(Locale.ROOT, "  %-9s %-34s %s", field, flat(known), flat(other))
        .stripTrailing();
  }

  private static String flat(String text) {
    return text.strip().replaceAll("\\s*\\R\\s*", " / ");
  }
}
