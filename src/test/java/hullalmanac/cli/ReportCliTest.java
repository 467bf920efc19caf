package hullalmanac.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.fixture.PdfText;
import hullalmanac.service.RecordService;
import hullalmanac.service.SampleService;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("slow")
class ReportCliTest {
  @TempDir static Path home;

  private record Ran(int code, String out, String err) {}

  @BeforeAll
  static void sample() {
    SampleService.write(home.resolve("sample"));
  }

  private static Ran run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CliContext context =
        new CliContext(
            new RecordService.Surroundings(Clock.systemUTC(), new Random(7)::nextLong, "desk", 1),
            home.resolve("HullAlmanac"),
            "0",
            request -> 0);
    List<String> all = new ArrayList<>(List.of("--records", home.resolve("sample").toString()));
    all.add("report");
    all.addAll(List.of(arguments));
    int code =
        Cli.run(context, new PrintWriter(out), new PrintWriter(err), all.toArray(String[]::new));
    return new Ran(code, out.toString(), err.toString());
  }

  private static String pdf(String name) {
    return home.resolve(name + ".pdf").toString();
  }

  private static String text(String name) throws Exception {
    return PdfText.of(Files.readAllBytes(Path.of(pdf(name)))).text();
  }

  @ParameterizedTest
  @CsvSource({
    "history, Black Guillemot, What comes next",
    "condition, dabchick, What was done",
    "care, Dabchick, Washing that does not strip the coat",
    "estimate, Arctic Tern, Draft: this is not an offer yet.",
    "card, Bittern, See to",
    "reminder, Bittern, A reminder",
    "due, Bittern, Quillhaven",
    "lives, Bittern, The label says",
    "year, Bittern, Takings of 2026"
  })
  void eachKindIsWritten(String kind, String boat, String holds) throws Exception {
    Ran ran = run(kind, "--boat", boat, "--pdf", pdf(kind));
    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isZero();
    assertThat(ran.out().strip()).isEqualTo("Written to " + pdf(kind));
    assertThat(text(kind)).contains(holds, "Tern & Tide Boat Care");
  }

  @Test
  void anInvoiceIsFoundByItsNumberAndACreditSaysWhatItCorrects() throws Exception {
    assertThat(run("invoice", "--number", "2025-0074", "--pdf", pdf("credit")).code()).isZero();
    assertThat(text("credit"))
        .contains("Credit 2025-0074", "corrects invoice 2025-0073", "88.25 USD");
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "::",
      value = {
        "poster::::There is no paper \"poster\"; write history, condition",
        "history::::--boat: say of which boat",
        "history::--boat=Nobody::No boat is called \"Nobody\".",
        "condition::--boat=Dabchick --visit=2020-01-01::Dabchick was not worked on in a visit of 2020-01-01.",
        "estimate::--boat=Bittern::No estimate was written for Bittern.",
        "invoice::::Say which invoice or credit by its number.",
        "invoice::--number=9::No invoice or credit has the number \"9\".",
        "due::--as-of=May::--as-of: there is no day \"May\"",
        "year::--year=12::--year: 12 is out of range"
      })
  void whatIsGivenWrongIsSaid(String kind, String options, String sentence) {
    List<String> all = new ArrayList<>(List.of(kind, "--pdf", pdf("none")));
    if (options != null) {
      all.addAll(List.of(options.split(" ")));
    }
    Ran ran = run(all.toArray(String[]::new));
    assertThat(ran.err()).contains(sentence);
    assertThat(ran.code()).isEqualTo(1);
    assertThat(Path.of(pdf("none"))).doesNotExist();
  }

  @Test
  void aFileOfSomebodyElseIsNotWrittenOverAndOneOfOursIs() throws Exception {
    Files.writeString(Path.of(pdf("theirs")), "%PDF-1.7 a chart of the sound");
    Ran refused = run("year", "--pdf", pdf("theirs"));
    assertThat(refused.code()).isEqualTo(1);
    assertThat(refused.err()).contains("something else than a paper of this program");
    assertThat(Path.of(pdf("theirs"))).content().isEqualTo("%PDF-1.7 a chart of the sound");
    assertThat(run("year", "--pdf", pdf("ours")).code()).isZero();
    assertThat(run("year", "--pdf", pdf("ours")).code()).isZero();
  }

  @Test
  void withoutAFileItIsWrongUsage() {
    assertThat(run("due").code()).isEqualTo(2);
  }
}
