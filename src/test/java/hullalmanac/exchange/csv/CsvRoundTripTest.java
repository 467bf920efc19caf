package hullalmanac.exchange.csv;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Finish;
import hullalmanac.core.record.Geometry;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Made;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PartyKind;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Side;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.SurfaceState;
import hullalmanac.core.record.Tone;
import hullalmanac.core.record.Use;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.record.VisitWhy;
import hullalmanac.core.record.With;
import hullalmanac.fixture.OpenSample;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvRoundTripTest {
  private static Almanac again(Path folder, Almanac almanac) throws Exception {
    CsvSet.write(folder, almanac, true);
    CsvSet.ReadResult read =
        CsvSet.read(
            folder, Almanac.empty(Business.unnamed()), new IdSource(new Random(2)::nextLong));
    assertThat(read.problems()).isEmpty();
    return read.additions();
  }

  /**
   * The sample holds every kind of row; read back and written again it must give the same bytes.
   */
  @Test
  void sampleComesBackByteForByte(@TempDir Path folder) throws Exception {
    Path lists = Path.of("sample-db/csv");
    CsvSet.ReadResult read =
        CsvSet.read(
            lists, Almanac.empty(Business.unnamed()), new IdSource(new Random(1)::nextLong));
    assertThat(read.problems()).isEmpty();
    Almanac second = again(folder, read.additions());
    for (String file : CsvSet.files()) {
      assertThat(folder.resolve(file)).hasSameBinaryContentAs(lists.resolve(file));
    }
    assertThat(second.coats()).hasSameSizeAs(read.additions().coats());
  }

  @Provide
  Arbitrary<String> oddTexts() {
    return Arbitraries.oneOf(
        Arbitraries.strings().withChars("=+-@'\"\t\n\r,;|  äЖλa1").ofMaxLength(12),
        Arbitraries.of(
            "",
            "=1+1",
            "'=1",
            "''",
            "+1 555 0100",
            "-5",
            "@x",
            "\uFEFFx",
            " lead",
            "trail ",
            "a\r\nb",
            "\ttab",
            "🚤"));
  }

  @Property(tries = 150)
  void everyTextComesBackExactly(
      @ForAll("oddTexts") String note,
      @ForAll("oddTexts") String hull,
      @ForAll("oddTexts") String damage)
      throws Exception {
    Made made = new Made(48.4);
    Surface s = made.surface(SurfaceKind.METALWORK, Side.BOTH, Tone.DARK, Finish.METAL);
    Boat boat =
        new Boat(
            made.boat().id(),
            "tern",
            "Tern" + note,
            BoatType.KETCH,
            Optional.of(Length.ofFeet(31, 2)),
            Optional.empty(),
            Optional.of(Length.ofMetres(1.234)),
            hull,
            Optional.of(1999),
            Use.IDLE,
            BoatStatus.SOLD,
            Optional.of(LocalDate.of(2020, 2, 29)),
            note);
    Almanac a = made.almanac();
    List<Finding> findings = oddFindings(made, s, note, damage);
    Almanac odd =
        new Almanac(
            a.business(),
            a.harbours(),
            List.of(),
            List.of(boat),
            List.of(),
            a.surfaces(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            findings,
            List.of());
    Path folder = Files.createTempDirectory("csv");
    Almanac back = again(folder, odd);
    assertThat(CsvSet.texts(back, true)).isEqualTo(CsvSet.texts(odd, true));
    assertThat(back.boats().get(0).note()).isEqualTo(note);
    assertThat(back.boats().get(0).hullNumber()).isEqualTo(hull);
    assertThat(back.boats().get(0).name()).isEqualTo("Tern" + note);
    assertThat(back.findings().get(0).seen()).isEqualTo(findings.get(0).seen());
    assertThat(back.findings().get(0).moment()).contains(Moment.AFTER);
    if (!damage.isBlank()) {
      assertThat(back.findings().get(1).seen()).isEqualTo(findings.get(1).seen());
    }
  }

  @Test
  void sinceWhenAStepIsTimedComesBack(@TempDir Path folder) throws Exception {
    Made made = new Made(48.4);
    made.topsides();
    Visit visit =
        With.component(
            made.visit(LocalDate.of(2026, 5, 1), VisitWhy.DUE), "status", VisitStatus.PLANNED);
    Instant since = Instant.parse("2026-05-01T12:30:07Z");
    Step wash = made.step(visit, StepKind.WASH, Optional.empty());
    Step timed = With.component(wash, "timedSince", Optional.of(since));
    Almanac back = again(folder, made.almanac().with(Edit.put(visit, timed)));
    assertThat(back.steps())
        .singleElement()
        .extracting(Step::timedSince)
        .isEqualTo(timed.timedSince());
  }

  private static List<Finding> oddFindings(Made made, Surface s, String note, String damage) {
    List<Finding> findings = new ArrayList<>();
    Finding gloss =
        made.finding(
            s,
            LocalDate.of(2025, 1, 1),
            SurfaceState.DIRTY,
            hullalmanac.core.record.Entered.OWNER,
            Optional.empty(),
            new Observation.GlossRead(
                Geometry.DEG_20, List.of(1234.5, 0.1, 99.99), Optional.of("m" + note)));
    findings.add(With.component(gloss, "moment", Optional.of(Moment.AFTER)));
    if (!damage.isBlank()) {
      Optional<Observation.Told> told =
          note.isBlank()
              ? Optional.empty()
              : Optional.of(new Observation.Told(note, LocalDate.of(2025, 1, 9)));
      findings.add(
          made.finding(
              s,
              LocalDate.of(2025, 1, 2),
              SurfaceState.WASHED,
              hullalmanac.core.record.Entered.GRID,
              Optional.empty(),
              new Observation.Damage(damage, told)));
    }
    return findings;
  }

  /**
   * RFC 4180, section 2, points 6 and 7: what holds a comma or a quote is quoted, and a quote is
   * doubled.
   */
  @Test
  void quotesAsTheStandardDemands() {
    Made made = new Made(48.4);
    Almanac a = made.almanac();
    Boat b = made.boat();
    Boat quoted =
        new Boat(
            b.id(),
            b.key(),
            "He said \"hi\"",
            b.type(),
            b.loa(),
            b.beam(),
            b.freeboard(),
            "a,b",
            b.built(),
            b.use(),
            b.status(),
            b.knownFrom(),
            "");
    Almanac odd =
        new Almanac(
            a.business(),
            List.of(),
            List.of(),
            List.of(quoted),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of());
    assertThat(CsvSet.texts(odd, false).get("boats.csv"))
        .contains(",\"He said \"\"hi\"\"\",")
        .contains(",\"a,b\",");
    assertThat(CsvSet.texts(odd, false)).doesNotContainKey("berth-secrets.csv");
  }

  /**
   * RFC 4180, section 2: point 1, records end with CR LF; point 6, a line break stays within
   * quotes; an empty field is empty.
   */
  @Test
  void keepsLineBreaksWithinQuotesAndEndsRecordsWithCrLf() {
    Made made = new Made(48.4);
    Boat boat = With.component(made.boat(), "note", "first\r\nsecond, third");
    String boats = CsvSet.texts(made.almanac().with(Edit.put(boat)), false).get("boats.csv");
    assertThat(boats).endsWith(",\"first\r\nsecond, third\"\r\n").contains(",,");
    assertThat(boats.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
  }

  /**
   * Every text of every row of the sample, and every name by which rows are known, as a formula.
   */
  private static Almanac ofFormulas(Almanac almanac, String formula) {
    List<Row> odd = new ArrayList<>();
    for (Row row : almanac.rows()) {
      odd.add(ofFormulas(row, formula));
    }
    return Almanac.empty(almanac.business()).with(Edit.put(odd));
  }

  private static Row ofFormulas(Row row, String formula) {
    Row odd = row;
    for (RecordComponent c : row.getClass().getRecordComponents()) {
      if (c.getType() == String.class) {
        String text = c.getName().equals("key") ? formula + row.key() : formula;
        odd = orAsItIs(odd, c.getName(), text);
      }
    }
    return odd;
  }

  /** Some texts are of a form of their own, such as the language of a party. */
  private static Row orAsItIs(Row row, String component, String text) {
    try {
      return (Row) With.component((Record) row, component, text);
    } catch (IllegalArgumentException e) {
      return row;
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1+1", "@x", "\tx", "\rx"})
  void noCellOfAnyListBeginsLikeAFormulaAndAllComeBack(String formula, @TempDir Path folder)
      throws Exception {
    Almanac odd = ofFormulas(OpenSample.fleet().almanac(), formula);
    int guarded = 0;
    for (Map.Entry<String, String> file : CsvSet.texts(odd, true).entrySet()) {
      try (CsvReader<CsvRecord> cells = CsvReader.builder().ofCsvRecord(file.getValue())) {
        for (CsvRecord record : cells) {
          for (String cell : record.getFields()) {
            assertThat(cell).as(file.getKey()).matches("(?s)[^=+\\-@\t\r].*|-?[0-9]+(\\.[0-9]+)?|");
            guarded += cell.startsWith("'" + formula) ? 1 : 0;
          }
        }
      }
    }
    assertThat(guarded).isGreaterThan(500);
    Almanac back = again(folder, odd);
    assertThat(CsvSet.texts(back, true)).isEqualTo(CsvSet.texts(odd, true));
  }

  /**
   * CWE-1236: a text that begins like a formula must not run; a phone number must still come back.
   */
  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1 555 0100", "-5", "@x", "\tx", "'=1"})
  void formulasCannotRun(String text) {
    assertThat(Guard.on(text)).startsWith("'");
    assertThat(Guard.off(Guard.on(text))).isEqualTo(text);
  }

  /**
   * A number keeps its sign and is no text; a phone is a text, guarded in the file and not in the
   * record.
   */
  @Test
  void negativeNumbersAndPhonesComeBack(@TempDir Path folder) throws Exception {
    Party ada =
        new Party(
            new Id<>(9),
            "ames",
            PartyKind.PERSON,
            "Ada Ames",
            "+1 555 0130",
            "",
            "",
            "",
            Optional.empty(),
            "");
    Almanac south = new Made(-20.5).almanac().with(Edit.put(ada));
    assertThat(CsvSet.texts(south, false).get("harbours.csv")).contains(",-20.5,");
    assertThat(CsvSet.texts(south, false).get("parties.csv")).contains(",'+1 555 0130,");
    Almanac back = again(folder, south);
    assertThat(back.harbours().get(0).latitude()).isEqualTo(-20.5);
    assertThat(back.parties().get(0).phone()).isEqualTo("+1 555 0130");
  }
}
