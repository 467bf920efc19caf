package hullalmanac.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.service.RecordService;
import hullalmanac.service.SampleService;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.RandomAccessFile;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CliTest {
  @TempDir Path home;

  /** What a command left behind. */
  private record Ran(int code, String out, String err) {}

  private static final RecordService.Surroundings SURROUNDINGS =
      new RecordService.Surroundings(Clock.systemUTC(), new Random(7)::nextLong, "desk", 1);

  private Ran run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CliContext context =
        new CliContext(SURROUNDINGS, home.resolve("HullAlmanac"), "0", request -> 0);
    int code = Cli.run(context, new PrintWriter(out), new PrintWriter(err), arguments);
    return new Ran(code, out.toString(), err.toString());
  }

  private Path sample() {
    Path folder = home.resolve("sample");
    if (!Files.exists(folder)) {
      SampleService.write(folder);
    }
    return folder;
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> walk = Files.walk(folder)) {
      return walk.filter(Files::isRegularFile)
          .map(folder::relativize)
          .sorted(Comparator.comparing(Path::toString))
          .toList();
    }
  }

  /** FAO Irrigation and Drainage Paper 56, examples 8 (Ra) and 9 (N): 20° S on 3 September. */
  @Test
  void reckonsTheSunOfTheWorkedExample() {
    Ran ran = run("reckon", "sun", "--lat", "-20", "--day", "246");
    assertThat(ran.code()).isZero();
    assertThat(ran.out().lines()).containsExactly("Ra 32.19 MJ/m2 a day", "N 11.67 hours");
  }

  /** Dew point by the Magnus form of Alduchov and Eskridge 1996: 9.261107 and 3.038893 above it. */
  @Test
  void reckonsDewPointAndMargin() {
    Ran ran = run("reckon", "dew", "--air", "20", "--rh", "50", "--surface", "12.3");
    assertThat(ran.code()).isZero();
    assertThat(ran.out())
        .contains("Dew point 9.3 °C", "3.0 °C above", "dry enough", "stale after two hours");
    assertThat(run("reckon", "dew", "--air", "20", "--rh", "50", "--surface", "12.2").out())
        .contains("too near");
  }

  @Test
  void remindSaysInOneLineWhoIsToBeToldAndThatThereAreAny() {
    String folder = sample().toString();
    Ran ran = run("--records", folder, "remind");
    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.out().lines())
        .singleElement()
        .satisfies(
            line ->
                assertThat(line)
                    .matches("\\d+ boats are due to be told: \\w+, .* and \\d+ more\\."));
    assertThat(ran.err()).isEmpty();
    long boats = Long.parseLong(ran.out().substring(0, ran.out().indexOf(' ')));
    Ran merged = run("--records", folder, "remind", "--merge");
    assertThat(merged.code()).isEqualTo(3);
    assertThat(merged.out().lines().filter(l -> l.contains("Tern & Tide"))).hasSize((int) boats);
    assertThat(run("--records", folder, "remind", "--as-of", "2019-01-01").out().strip())
        .isEqualTo("No boat is due to be told.");
    assertThat(run("--records", folder, "remind", "--as-of", "2019-01-01").code()).isZero();
    assertThat(run("--records", folder, "remind", "--as-of", "soon").code()).isEqualTo(1);
  }

  /** Numbers built by the rule of 33 CFR 181.25 and of the two older forms. */
  @ParameterizedTest
  @CsvSource({
    "ZZZ12345A818, January 2018, 2018",
    "ZZZ0A7K9L324, December 2023, 2024",
    "ZZZPR5T2I708, September 2007, 2008",
    "ZZZ00001F525, June 2025, 2025",
    "ZZZ99999D889, April 1988, 1989",
    "ZZZ123450478, April 1978, 1978",
    "ZZZ123451273, December 1973, 1973",
    "ZZZ54321M78A, August 1977, 1978",
    "ZZZ54321M78F, January 1978, 1978",
    "ZZZ54321M83L, July 1983, 1983",
    "US-ZZZ12345A818, January 2018, 2018"
  })
  void readsHullNumbers(String text, String built, String modelYear) {
    Ran ran = run("reckon", "hin", text);
    assertThat(ran.code()).isZero();
    assertThat(ran.out())
        .contains("Maker ZZZ", "Built " + built, "Model year " + modelYear)
        .doesNotContain("Odd");
  }

  @Test
  void warnsOfAnOddHullNumber() {
    assertThat(run("reckon", "hin", "ZZZ00001F026").out()).contains("Odd: ");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ZZZ12I45A818",
        "ZZZ1O345A818",
        "ZZZQ2345A818",
        "ZZZ12345M818",
        "ZZZ12345A81",
        "ZZZ12345A8188",
        "ZZZ-12345A818",
        "ZZZ12345AB18",
        "ZZZ123458A18",
        "ZZZ12345A8B8",
        "ZZ 12345A818",
        "ZZZ123451378",
        "ZZZ123450078",
        "ZZZ54321M78M",
        "ZZZ12345Z225"
      })
  void saysWhyTextIsNoHullNumber(String text) {
    Ran ran = run("reckon", "hin", text);
    assertThat(ran.code()).isEqualTo(1);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err().lines())
        .singleElement()
        .asString()
        .startsWith("\"" + text + "\" is not a hull number: ");
  }

  @Test
  void listsWhatIsDueWithTheIdsOfTheLists() throws Exception {
    Ran ran =
        run("--records", sample().toString(), "due", "--as-of", "2026-05-01", "--format", "csv");
    assertThat(ran.code()).isZero();
    List<String> lines = ran.out().lines().toList();
    assertThat(lines.get(0))
        .isEqualTo("boat,surface,product,coated_on,renew_by,early,middle,late,chance_lapsed");
    assertThat(lines).hasSizeGreaterThan(15);
    Set<String> boats = column("boats.csv");
    Set<String> surfaces = column("surfaces.csv");
    Set<String> products = column("products.csv");
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",", -1);
      assertThat(cells).hasSize(9);
      assertThat(boats).contains(cells[0]);
      assertThat(surfaces).contains(cells[1]);
      assertThat(products).contains(cells[2]);
      Stream.of(cells[3], cells[4], cells[5], cells[6], cells[7])
          .forEach(day -> assertThat(day).matches("|\\d{4}-\\d{2}-\\d{2}"));
      assertThat(cells[8]).matches("|0(\\.\\d+)?|1(\\.0+)?");
    }
  }

  private static Set<String> column(String file) throws IOException {
    return Files.readAllLines(Path.of("sample-db/csv", file)).stream()
        .map(line -> line.split(",", 2)[0])
        .collect(Collectors.toSet());
  }

  @Test
  void printsTheSameRowsInEachForm() {
    String folder = sample().toString();
    long rows = run("--records", folder, "due", "--format", "csv").out().lines().count() - 1;
    String json = run("--records", folder, "due", "--format", "json").out();
    assertThat(json.split("\"coated_on\"", -1)).hasSize((int) rows + 1);
    String text = run("--records", folder, "due").out();
    assertThat(text).contains("Avocet").doesNotContain("0 in 10").doesNotContain("10 in 10");
  }

  @Test
  void refusesADayAndAFormThatDoNotExist() {
    String folder = sample().toString();
    Ran day = run("--records", folder, "due", "--as-of", "2026-02-30");
    assertThat(day.code()).isEqualTo(1);
    assertThat(day.err()).contains("--as-of").contains("2026-02-30");
    Ran form = run("--records", folder, "due", "--format", "xml");
    assertThat(form.code()).isEqualTo(1);
    assertThat(form.err()).contains("text, csv, json");
  }

  @ParameterizedTest
  @ValueSource(strings = {"nonsense", "due --nonsense", "reckon sun --lat 20", "import"})
  void saysHowACommandIsWritten(String line) {
    Ran ran = run(line.split(" "));
    assertThat(ran.code()).isEqualTo(2);
    assertThat(ran.err()).contains("Try: hull-almanac").contains("--help");
  }

  @ParameterizedTest
  @CsvSource({
    "91, 10, --lat",
    "20, 367, --day",
    "20, 1.5, --day",
    "north, 1, --lat",
    "NaN, 1, --lat"
  })
  void refusesNumbersOutsideTheirRange(String latitude, String day, String option) {
    Ran ran = run("reckon", "sun", "--lat=" + latitude, "--day=" + day);
    assertThat(ran.code()).isEqualTo(1);
    assertThat(ran.err().lines()).singleElement().asString().contains(option);
  }

  @Test
  void neverMakesARecordByReading() throws Exception {
    Path nowhere = home.resolve("nowhere");
    Ran ran = run("--records", nowhere.toString(), "due");
    assertThat(ran.code()).isEqualTo(1);
    assertThat(ran.err()).contains("There is no record in " + nowhere);
    assertThat(nowhere).doesNotExist();
  }

  @Test
  void saysThatAFileIsNotARecord() throws Exception {
    Path folder = Files.createDirectory(home.resolve("other"));
    Files.writeString(folder.resolve("almanac.db"), "a shopping list");
    Ran ran = run("--records", folder.toString(), "due");
    assertThat(ran.code()).isEqualTo(1);
    assertThat(ran.err().lines()).singleElement().asString().contains("almanac.db");
    assertThat(folder.resolve("almanac.db")).hasContent("a shopping list");
  }

  /** SQLite keeps user_version, big-endian, at byte 60 of its header (sqlite.org/fileformat2). */
  @Test
  void saysThatARecordIsOfANewerProgram() throws Exception {
    Path file = sample().resolve("almanac.db");
    try (RandomAccessFile raw = new RandomAccessFile(file.toFile(), "rw")) {
      raw.seek(60);
      raw.writeInt(999);
    }
    Ran ran = run("--records", sample().toString(), "due");
    assertThat(ran.code()).isEqualTo(1);
    assertThat(ran.err()).contains("newer");
  }

  @Test
  void importsNothingIntoARecordThatIsOpenElsewhere() throws Exception {
    Path lists = lists("boats.csv", "id,name", "dunlin,Dunlin");
    try (RecordService open = RecordService.open(sample(), SURROUNDINGS)) {
      int boats = open.almanac().boats().size();
      Ran ran = run("--records", sample().toString(), "import", lists.toString());
      assertThat(ran.code()).isEqualTo(1);
      assertThat(ran.err()).contains("open");
      assertThat(open.almanac().boats()).hasSize(boats);
    }
  }

  private Path lists(String file, String... lines) throws IOException {
    Path folder = home.resolve("lists");
    Files.createDirectories(folder);
    Files.write(folder.resolve(file), List.of(lines));
    return folder;
  }

  @Test
  void importsAllOrNothing() throws Exception {
    Path record = home.resolve("mine");
    lists("boats.csv", "id,name,known_from", "dunlin,Dunlin,2025-05-01");
    lists("surfaces.csv", "id,boat,kind,finish", "s,dunlin,topsides,gelcoat");
    lists("products.csv", "id,name,kind", "b,polymer sealant B,polymer-sealant");
    Path lists =
        lists(
            "coats.csv",
            "id,surface,product,coated_on",
            "c1,s,b,2024-02-30",
            "c2,t,b,2024-05-01",
            "c2,s,b,2024-05-01",
            "c3,s,b,2024-05-01");
    lists(
        "findings.csv",
        "id,surface,day,state,entered,what,value",
        "f,s,2025-06-01,washed,grid,gloss,1e9");
    Ran ran = run("--records", record.toString(), "import", lists.toString());
    assertThat(ran.code()).isEqualTo(1);
    assertThat(ran.err())
        .contains("coats.csv, line 2, coated_on: there is no day \"2024-02-30\"")
        .contains("coats.csv, line 3, surface: there is no surface with the id \"t\"")
        .contains("coats.csv, line 4, id: the id \"c2\" stands in line 3 already")
        .contains("findings.csv, line 2, value");
    assertThat(record.resolve("almanac.db")).doesNotExist();
    lists("findings.csv", "id,surface,day,state,entered,what,value");
    lists("coats.csv", "id,surface,product,coated_on", "c3,s,b,2025-06-01");
    assertThat(run("--records", record.toString(), "import", lists.toString()))
        .isEqualTo(new Ran(0, String.format("Brought in 4 rows from %s.%n", lists), ""));
    Ran again = run("--records", record.toString(), "import", lists.toString());
    assertThat(again.code()).isEqualTo(1);
    assertThat(again.err()).contains("dunlin");
  }

  @Test
  void refusesACoatLaidBeforeItsBoatWasKnown() throws Exception {
    lists("boats.csv", "id,name,known_from", "dunlin,Dunlin,2025-05-01");
    lists("surfaces.csv", "id,boat,kind,finish", "s,dunlin,topsides,gelcoat");
    lists("products.csv", "id,name,kind", "b,polymer sealant B,polymer-sealant");
    Path lists = lists("coats.csv", "id,surface,product,coated_on", "c,s,b,2024-05-01");
    Ran ran = run("--records", home.resolve("mine").toString(), "import", lists.toString());
    assertThat(ran.code()).isEqualTo(1);
    assertThat(ran.err()).contains("coats.csv, line 2").contains("known");
  }

  @Test
  void exportOfAnImportOfAnExportIsTheSameByteForByte() throws Exception {
    Path first = home.resolve("first");
    Path second = home.resolve("second");
    Path copy = home.resolve("copy");
    assertThat(
            run("--records", sample().toString(), "export", "--private", first.toString()).code())
        .isZero();
    Ran in = run("--records", copy.toString(), "import", first.toString());
    assertThat(in.err()).isEmpty();
    assertThat(run("--records", copy.toString(), "export", "--private", second.toString()).code())
        .isZero();
    assertThat(files(second)).isEqualTo(files(first)).hasSizeGreaterThan(20);
    for (Path file : files(first)) {
      assertThat(
              Arrays.equals(
                  Files.readAllBytes(first.resolve(file)),
                  Files.readAllBytes(second.resolve(file))))
          .as(file.toString())
          .isTrue();
    }
  }

  @Test
  void leavesPrivateFactsOutUnlessAsked() throws Exception {
    Path out = home.resolve("out");
    Ran ran = run("--records", sample().toString(), "export", out.toString());
    assertThat(ran.out()).contains("--private");
    assertThat(out.resolve("berth-secrets.csv")).doesNotExist();
    Path page = out.resolve("index.html");
    String code = "under the port locker lid";
    assertThat(Files.readString(Path.of("sample-db/csv/berth-secrets.csv"))).contains(code);
    assertThat(page).content().contains("Siskin").doesNotContain(code);
    run("--records", sample().toString(), "export", "--private", out.toString());
    assertThat(page).content().contains(code);
  }

  @Test
  void restoresTheCopyThatTheFirstChangeOfADayLaid() throws Exception {
    Path record = sample();
    Path lists = lists("boats.csv", "id,name", "new-boat,Sora");
    assertThat(run("--records", record.toString(), "restore").code()).isEqualTo(1);
    assertThat(run("--records", record.toString(), "import", lists.toString()).err()).isEmpty();
    assertThat(run("--records", record.toString(), "restore", "--list").out().lines()).hasSize(1);
    Ran ran = run("--records", record.toString(), "restore");
    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isZero();
    assertThat(ran.out()).contains("Restored").contains("is kept in");
    try (RecordService open = RecordService.openReadOnly(record, SURROUNDINGS)) {
      assertThat(open.almanac().boats()).noneMatch(b -> b.key().equals("new-boat"));
    }
  }

  @Test
  void writesTheSampleOnlyIntoAnEmptyFolder() throws Exception {
    Path folder = Files.createDirectory(home.resolve("full"));
    Files.writeString(folder.resolve("mine.txt"), "mine");
    Ran ran = run("sample", folder.toString());
    assertThat(ran.code()).isEqualTo(1);
    assertThat(files(folder)).containsExactly(Path.of("mine.txt"));
  }

  /** Freireich et al. 1963, 6-MP arm, as in the tests of the fits. */
  @Test
  void fitsLivesFromAFile() throws Exception {
    Path folder =
        lists(
            "lives.csv",
            ("lower,upper 6,6 6,6 6,6 6, 7,7 9, 10,10 10, 11, 13,13 16,16 17, 19, 20, 22,22 23,23"
                    + " 25, 32, 32, 34, 35,")
                .split(" "));
    Ran ran = run("reckon", "lives", folder.resolve("lives.csv").toString());
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out())
        .contains("21 lives: 9 ends seen, 0 between two times, 12 not seen to end")
        .contains("log-normal: mu 3.203068", "log-likelihood -40.680156")
        .contains("shape 1.353735", "scale 33.7652")
        .contains("Kaplan-Meier", "0.85714286 0.07636035 0.61971796 0.95155175");
    Ran json = run("reckon", "lives", folder.resolve("lives.csv").toString(), "--format", "json");
    assertThat(json.out()).startsWith("{\"lives\":21,").contains("\"surviving\":0.857142857142857");
  }

  @Test
  void saysWhichLifeCannotBeTaken() throws Exception {
    Path file = lists("lives.csv", "lower,upper", "6,6", "9,4", ",5", "x,").resolve("lives.csv");
    Ran ran = run("reckon", "lives", file.toString());
    assertThat(ran.code()).isEqualTo(1);
    assertThat(ran.err().lines().toList())
        .anyMatch(l -> l.startsWith("lives.csv, line 3: a life cannot end at 4.0, before 9.0"))
        .anyMatch(l -> l.startsWith("lives.csv, line 4, lower: "))
        .anyMatch(l -> l.startsWith("lives.csv, line 5, lower: "));
    assertThat(run("reckon", "lives", home.resolve("none.csv").toString()).code()).isEqualTo(1);
  }
}
