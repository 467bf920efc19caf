package hullalmanac.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Made;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PartyKind;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.With;
import hullalmanac.service.RecordService;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FormatsCliTest {
  private static final RecordService.Surroundings SURROUNDINGS =
      new RecordService.Surroundings(Clock.systemUTC(), new Random(7)::nextLong, "desk", 1);

  @TempDir Path home;

  private Path record;

  /** What a command left behind. */
  private record Ran(int code, String out, String err) {}

  private Ran run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CliContext context =
        new CliContext(SURROUNDINGS, home.resolve("HullAlmanac"), "0", request -> 0);
    int code = Cli.run(context, new PrintWriter(out), new PrintWriter(err), arguments);
    return new Ran(code, out.toString(), err.toString());
  }

  private Ran on(String command, Path file, String... more) {
    String[] all = new String[4 + more.length];
    all[0] = "--records";
    all[1] = record.toString();
    all[2] = command;
    all[3] = file.toString();
    System.arraycopy(more, 0, all, 4, more.length);
    return run(all);
  }

  @BeforeEach
  void make() {
    record = home.resolve("record");
    Made made = new Made(48.4);
    Berth berth =
        With.component(
            made.open(LocalDate.of(2025, 3, 1)),
            "secrets",
            new Berth.Private("under the locker lid", "2690", ""));
    made.visit(LocalDate.of(2026, 5, 12), VisitWhy.DUE);
    Party ada =
        new Party(
            new Id<>(1),
            "ames",
            PartyKind.PERSON,
            "Ada Ames",
            "+1 555 555 0130",
            "",
            "",
            "",
            Optional.empty(),
            "");
    RecordService.create(record, SURROUNDINGS);
    try (RecordService open = RecordService.open(record, SURROUNDINGS)) {
      open.change("all", Edit.all(made.almanac()).and(Edit.put(berth, ada)));
    }
  }

  @Test
  void writesACalendarAndSaysWhenNothingIsNew() throws Exception {
    Path file = home.resolve("almanac.ics");
    Ran first = on("calendar", file);
    assertThat(first.err()).isEmpty();
    assertThat(first.code()).isZero();
    assertThat(first.out())
        .contains("Written to " + file)
        .contains("Keys, gate codes and absences of 1 berth were left out; --private");
    byte[] bytes = Files.readAllBytes(file);
    assertThat(on("calendar", file).out()).contains("is up to date");
    assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
    assertThat(on("calendar", file, "--private").out()).doesNotContain("left out");
  }

  @Test
  void writesTheCalendarOfARecordThatIsOpenElsewhere() {
    try (RecordService open = RecordService.open(record, SURROUNDINGS)) {
      assertThat(open.readOnly()).isFalse();
      assertThat(on("calendar", home.resolve("almanac.ics")).code()).isZero();
      assertThat(on("contacts", home.resolve("people.vcf")).code()).isZero();
    }
  }

  @Test
  void writesOverNothingElse() throws Exception {
    Path file = Files.writeString(home.resolve("mine.txt"), "mine");
    for (String command : new String[] {"calendar", "contacts"}) {
      Ran ran = on(command, file);
      assertThat(ran.code()).isEqualTo(1);
      assertThat(ran.err().lines()).singleElement().asString().contains("Choose another name");
      assertThat(file).hasContent("mine");
    }
  }

  @Test
  void writesCardsInTheVersionThatIsAskedFor() throws Exception {
    Path file = home.resolve("people.vcf");
    Ran ran = on("contacts", file);
    assertThat(ran.out()).contains("Written to " + file + ": ");
    assertThat(Files.readString(file)).startsWith("BEGIN:VCARD\r\nVERSION:3.0\r\n");
    assertThat(on("contacts", file, "--vcard", "4.0").code()).isZero();
    assertThat(Files.readString(file)).startsWith("BEGIN:VCARD\r\nVERSION:4.0\r\n");
    Ran wrong = on("contacts", file, "--vcard", "5");
    assertThat(wrong.code()).isEqualTo(1);
    assertThat(wrong.err()).contains("2.1, 3.0, 4.0");
  }

  @Test
  void showsWhoMayBeKnownSideBySideAndMergesOnlyWhenAsked() throws Exception {
    Path file =
        Files.writeString(
            home.resolve("phone.vcf"),
            """
            BEGIN:VCARD
            VERSION:2.1
            N:Ames;Ada
            TEL;CELL:+1 555 555 0199
            END:VCARD
            BEGIN:VCARD
            VERSION:4.0
            FN:Ulla Unknown
            END:VCARD
            """);
    Ran shown = on("contacts", file, "--import");
    assertThat(shown.err()).isEmpty();
    assertThat(shown.code()).isZero();
    assertThat(shown.out())
        .contains("1 new, 0 in the record already, 1 like somebody in the record.")
        .contains("Ada Ames: same name", "in the record", "on the card", "+1 555 555 0199")
        .contains("--merge");
    Ran merged = on("contacts", file, "--import", "--merge");
    assertThat(merged.out()).contains("0 new, 1 in the record already, 1 made one");
    try (RecordService open = RecordService.openReadOnly(record, SURROUNDINGS)) {
      assertThat(open.almanac().parties())
          .filteredOn(p -> p.name().equals("Ada Ames"))
          .singleElement()
          .satisfies(p -> assertThat(p.note()).contains("Also +1 555 555 0199"));
    }
    assertThat(on("contacts", file, "--import").out()).contains("2 in the record already");
  }

  @Test
  void saysWhatIsGivenWrong() throws Exception {
    assertThat(on("contacts", home.resolve("x.vcf"), "--merge").err()).contains("--import");
    Path list = Files.writeString(home.resolve("list.txt"), "a shopping list");
    Ran none = on("contacts", list, "--import");
    assertThat(none.code()).isEqualTo(1);
    assertThat(none.err()).contains("no contact card");
    assertThat(on("contacts", home.resolve("none.vcf"), "--import").code()).isEqualTo(1);
    assertThat(run("calendar").code()).isEqualTo(2);
  }
}
