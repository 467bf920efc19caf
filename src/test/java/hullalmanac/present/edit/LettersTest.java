package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.life.BoatDue;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.LetterKind;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.With;
import hullalmanac.core.remind.AboutWords;
import hullalmanac.core.remind.Standing;
import hullalmanac.core.report.Letters;
import hullalmanac.fixture.Bench;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.present.words.ReminderWords;
import hullalmanac.service.Fleet;
import hullalmanac.service.ToTell;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.james.mime4j.dom.Message;
import org.apache.james.mime4j.dom.TextBody;
import org.apache.james.mime4j.message.DefaultMessageBuilder;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How letters are worded, and a letter that is written. */
@Tag("slow")
class LettersTest {
  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void open() {
    bench = Bench.open(folder.resolve("record"));
    bench.presenter().edit("as it came", almanac -> Edit.remove(almanac.wordings()));
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private BoatDue first() {
    return Fleet.dueOf(bench.almanac(), java.time.LocalDate.of(2026, 5, 1)).due().get(0);
  }

  private void wording() {
    bench.presenter().open(new WordingSheet(bench.presenter()));
  }

  private String text(String field) {
    return bench.state().blocks().stream()
        .filter(SheetState.Form.class::isInstance)
        .flatMap(b -> ((SheetState.Form) b).fields().stream())
        .filter(f -> f.id().equals(field))
        .findFirst()
        .orElseThrow()
        .text();
  }

  private String preview() {
    return bench.state().blocks().stream()
        .filter(SheetState.Words.class::isInstance)
        .map(b -> ((SheetState.Words) b).text())
        .filter(words -> words.startsWith("For "))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyLetterThatComesWithTheProgramCanBeFilledAndAForecastSaysThatItIsOne() {
    for (LetterKind kind : LetterKind.values()) {
      Letters.Words words = Letters.starter(kind);
      Said said = new WordingSheet(bench.presenter()).say(new At("body", "", "text"), words.text());
      assertThat(said.refused()).as(words.text()).isFalse();
      assertThat(words.text()).contains("{{name}}").contains("{{business}}");
    }
    assertThat(Letters.starter(LetterKind.DUE).text()).contains("a forecast, not a guarantee");
  }

  @Test
  void aWordingChangesWhatALetterSaysAndAnEmptyTextBringsItBack() {
    Almanac before = bench.almanac();
    wording();
    bench.write("words", "subject", "{{boat}} wants you");
    String boat = first().boat().name();
    assertThat(preview())
        .startsWith("For " + boat + " it reads:\n\n" + boat + " wants you\n\nDear ");
    assertThat(bench.almanac().wordings()).hasSize(1);
    bench.write("words", "subject", "");
    assertThat(text("subject")).isEqualTo(Letters.starter(LetterKind.DUE).subject());
    assertThat(bench.almanac()).isEqualTo(before);
    bench.write("body", "text", "Hello {{name}}");
    bench.sheet().press("reset");
    assertThat(bench.almanac()).isEqualTo(before);
    bench.presenter().undo();
    assertThat(text("text")).isEqualTo("Hello {{name}}");
  }

  @Test
  void eachLanguageHasItsOwnWordsAndFallsBackToThoseOfTheBusiness() {
    wording();
    bench.write("words", "subject", "For all");
    bench.write("which", "language", "fr");
    assertThat(text("subject")).isEqualTo("For all");
    bench.write("words", "subject", "Pour {{boat}}");
    Almanac now = bench.almanac();
    assertThat(Letters.of(now, LetterKind.DUE, "fr").subject()).isEqualTo("Pour {{boat}}");
    assertThat(Letters.of(now, LetterKind.DUE, "de").subject()).isEqualTo("For all");
    assertThat(Letters.of(now, LetterKind.OTHER, "fr"))
        .isEqualTo(Letters.starter(LetterKind.OTHER));
  }

  @Test
  void aTextThatCannotBeFilledStaysAsItWasTypedWithTheReason() {
    Almanac before = bench.almanac();
    wording();
    bench.write("body", "text", "Dear {{nam}}");
    assertThat(text("text")).isEqualTo("Dear {{nam}}");
    assertThat(bench.sheet().say(new At("body", "", "text"), "Dear {{nam}}").words())
        .startsWith("There is no field {{nam}}");
    bench.write("which", "language", "not a tag");
    assertThat(bench.almanac()).isEqualTo(before);
  }

  @Test
  void aLetterIsFilledChangedAndWrittenAsADraftThatAnotherReaderUnderstands() throws Exception {
    BoatDue due = first();
    bench.presenter().openBoat(due.boat().id());
    bench.presenter().boats().remind();
    bench.sheet().press("write");
    assertThat(text("about")).isEqualTo(LetterKind.DUE.words());
    assertThat(text("text")).contains(due.boat().name()).contains("a forecast, not a guarantee");
    bench.write("letter", "with", "nothing");
    bench.write("subject", "subject", "Die Ödland: due / soon?");
    bench.write("body", "text", "First line\n\nlast line");
    bench.sheet().press("draft");
    Path letters = folder.resolve("record/letters");
    try (Stream<Path> files = Files.list(letters)) {
      Path file = files.findFirst().orElseThrow();
      assertThat(file.getFileName().toString())
          .startsWith("2026-05-01 ")
          .endsWith(" Die Ödland due soon.eml");
      try (InputStream in = Files.newInputStream(file)) {
        Message read = new DefaultMessageBuilder().parseMessage(in);
        assertThat(read.getSubject()).isEqualTo("Die Ödland: due / soon?");
        assertThat(
                new String(
                    ((TextBody) read.getBody()).getInputStream().readAllBytes(),
                    StandardCharsets.UTF_8))
            .isEqualToNormalizingNewlines("First line\n\nlast line");
      }
    }
    assertThat(bench.almanac().wordings()).isEmpty();
  }

  /** Whoever reads the letter and whoever reads the sheet read of the same, by the same day. */
  @Test
  void aLetterSaysOfWhatAndByWhenAsTheReminderDoes() {
    Fleet fleet = Fleet.dueOf(bench.almanac(), java.time.LocalDate.of(2026, 5, 1));
    ReminderWords words = new ReminderWords(new AboutWords(fleet.almanac()), fleet.asOf());
    for (Standing standing : ToTell.of(fleet).boats()) {
      bench.presenter().open(new LetterSheet(bench.presenter(), standing.boat().id()));
      String about = words.about().few(standing.about());
      assertThat(text("subject")).isEqualTo(standing.boat().name() + ": " + Texts.capital(about));
      assertThat(text("to")).isEqualTo(standing.whom().orElseThrow().name());
      assertThat(text("text")).contains("Dear " + text("to") + ",", Texts.capital(about) + ": ");
    }
  }

  @Test
  void aWordingIsShownForTheBoatThatOneChooses() {
    wording();
    bench.write("body", "text", "{{name}}: {{boat}} at {{harbour}}, {{surfaces}} {{when}}");
    Boat curlew = bench.boat("Curlew");
    bench.write("which", "boat", "Curlew");
    assertThat(text("boat")).isEqualTo("Curlew");
    Lookups lookups = new Lookups(bench.almanac(), java.time.LocalDate.of(2026, 5, 1));
    assertThat(preview())
        .startsWith("For Curlew it reads:")
        .contains(
            lookups.owner(curlew.id()) + ": Curlew at " + lookups.harbour(curlew.id()) + ", ");
    bench.write("which", "language", "fr");
    assertThat(preview()).startsWith("For Curlew it reads:");
    bench
        .presenter()
        .edit("two", a -> Edit.put(With.component(bench.boat("Siskin"), "name", "curlew")));
    bench.write("which", "boat", "Avocet");
    assertThat(preview()).startsWith("For Avocet it reads:");
    bench.write("which", "boat", "Curlew");
    assertThat(preview()).startsWith("For Curlew it reads:");
  }

  @Test
  void aWordingOfALanguageIsShownForSomebodyWhoIsWrittenToInIt() {
    Standing last =
        ToTell.of(Fleet.dueOf(bench.almanac(), java.time.LocalDate.of(2026, 5, 1))).boats().stream()
            .reduce((a, b) -> b)
            .orElseThrow();
    bench
        .presenter()
        .edit("fr", a -> Edit.put(With.component(last.whom().orElseThrow(), "language", "fr")));
    wording();
    bench.write("which", "language", "fr");
    bench.write("body", "text", "Bonjour {{name}}");
    assertThat(preview()).contains("Bonjour " + last.whom().orElseThrow().name());
    bench.presenter().open(new LetterSheet(bench.presenter(), last.boat().id()));
    assertThat(text("text")).isEqualTo("Bonjour " + last.whom().orElseThrow().name());
  }

  @Test
  void aLetterAboutABoatThatIsGoneSaysSo() {
    bench.presenter().boats().newBoat();
    bench.write("call", "owner", "Nell Farrow");
    bench.write("call", "boat", "Wheatear");
    bench.write("call", "harbour", "Quillhaven");
    bench.sheet().press("write");
    bench.presenter().boats().remind();
    bench.sheet().press("write");
    assertThat(bench.state().title()).isEqualTo("A letter about Wheatear");
    bench.presenter().undo();
    assertThat(bench.state().title()).isEqualTo("Not in the record");
    bench.presenter().redo();
    assertThat(bench.state().title()).isEqualTo("A letter about Wheatear");
  }

  /** There is one wording for a kind and language. */
  @Test
  void aWordingComesBackFromTheBinUnlessAnotherStandsInItsPlace() {
    wording();
    bench.write("words", "subject", "First");
    bench.sheet().press("reset");
    bench.write("words", "subject", "Second");
    bench.presenter().openBin();
    Almanac before = bench.almanac();
    bench.sheet().press(firstButton());
    assertThat(bench.shell().trouble().orElseThrow()).startsWith("Nothing of it can come back");
    assertThat(bench.almanac()).isEqualTo(before);
    wording();
    bench.sheet().press("reset");
    bench.presenter().openBin();
    bench.sheet().press(lastPutBack());
    assertThat(bench.shell().trouble()).isEmpty();
    assertThat(bench.almanac().wordings()).hasSize(1);
  }

  private List<String> putBacks() {
    return bench.state().blocks().stream()
        .filter(SheetState.Buttons.class::isInstance)
        .flatMap(b -> ((SheetState.Buttons) b).buttons().stream())
        .filter(b -> b.words().contains("Letters"))
        .map(SheetState.Button::id)
        .toList();
  }

  private String firstButton() {
    return putBacks().get(0);
  }

  private String lastPutBack() {
    return putBacks().get(putBacks().size() - 1);
  }

  private String reach() {
    return bench.state().blocks().stream()
        .filter(SheetState.Answer.class::isInstance)
        .map(b -> ((SheetState.Answer) b).label())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void anAddressThatIsMendedMeanwhileIsTheOneWrittenTo() {
    bench.presenter().open(new LetterSheet(bench.presenter(), first().boat().id()));
    Party to =
        bench.almanac().parties().stream()
            .filter(p -> !p.email().isBlank() && reach().contains(p.email()))
            .findFirst()
            .orElseThrow();
    bench
        .presenter()
        .edit("mail", a -> Edit.put(With.component(to, "email", "mended@example.org")));
    assertThat(reach()).contains("mended@example.org").doesNotContain(to.email());
  }
}
