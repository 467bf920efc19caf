package hullalmanac.exchange.csv;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Observation;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CsvProblemsTest {
  @TempDir Path folder;

  private CsvSet.ReadResult read() {
    return CsvSet.read(
        folder, Almanac.empty(Business.unnamed()), new IdSource(new Random(1)::nextLong));
  }

  private List<String> problems() {
    return read().problems().stream().map(CsvProblem::text).toList();
  }

  private void file(String name, String... lines) throws Exception {
    Files.writeString(folder.resolve(name), String.join("\n", lines) + "\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          tern,Arctic Tern,2025-02-30,         | known_from: there is no day "2025-02-30"
          tern,Arctic Tern,0026-05-01,         | known_from: the year of 0026-05-01 cannot be meant
          tern,,2025-02-03,                    | name: it is empty
          tern,Arctic Tern,,long               | loa_m: "long" is not a number
          tern,Arctic Tern,,900                | loa_m: a length is over 0 and at most 200 m
          ,Arctic Tern,,                       | id: it is empty
          """)
  void saysWhatIsWrongInARow(String row, String expected) throws Exception {
    file("boats.csv", "id,name,known_from,loa_m", row);
    assertThat(problems()).singleElement().asString().startsWith("boats.csv, line 2, " + expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          18.5,62,21,                 | climate_at: a reading has air, humidity, surface and time
          18.5,,21,2026-05-01T10:30   | climate_at: a reading has air, humidity, surface and time
          18.5,120,21,2026-05-01T10:30 | relative humidity is over 0 and at most 100 %, not 120
          18.5,62,21,half past ten    | climate_at: there is no time "half past ten"
          """)
  void aReadingIsWholeOrNone(String reading, String expected) throws Exception {
    file("boats.csv", "id,name", "tern,Arctic Tern");
    file("visits.csv", "id,boat,day", "v,tern,2026-05-01");
    file(
        "steps.csv",
        "id,visit,kind,day,air_celsius,humidity,surface_celsius,climate_at",
        "s,v,protect,2026-05-01," + reading);
    assertThat(problems()).first().asString().contains(expected);
    assertThat(read().additions().steps()).isEmpty();
    file("steps.csv", "id,visit,kind,day,air_celsius", "s,v,protect,2026-05-01,");
    assertThat(problems()).isEmpty();
  }

  /** Such a number could be the one that the next of a series gets. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          '',17,2026-0017     | the number 2026-0017 is not "" followed by 17.
          2026-,17,2026-0018  | the number 2026-0018 is not "2026-" followed by 17.
          2025-,17,2026-0017  | the number 2026-0017 is not "2025-" followed by 17.
          2026-,17,2026-0017  |
          '',17,0017          |
          """)
  void aNumberIsItsSeriesAndItsPlaceInIt(String number, String expected) throws Exception {
    file("boats.csv", "id,name", "tern,Arctic Tern");
    file("parties.csv", "id,name", "ada,Ada Lind");
    file(
        "invoices.csv",
        "id,party,series,sequence,number,issued_on",
        "i,ada," + number.replace("''", "") + ",2026-05-01");
    file("invoice-lines.csv", "invoice,words,quantity,unit,price", "i,wash,1,each,45");
    if (expected == null) {
      assertThat(problems()).isEmpty();
    } else {
      assertThat(problems()).singleElement().asString().containsIgnoringCase(expected);
    }
  }

  @Test
  void namesEveryProblemWithItsPlace() throws Exception {
    file(
        "boats.csv",
        "id,name,use,note",
        "tern,Arctic Tern,weekends,\"two",
        "lines\"",
        "tern,Curlew,nightly,",
        "x,y");
    file("surfaces.csv", "id,boat,kind", "s,terne,topsides");
    assertThat(problems())
        .containsExactly(
            "boats.csv, line 5: the row has 2 fields, the header 4. Look for a separator too many or too few, or for"
                + " a text that needs quotation marks.",
            "boats.csv, line 4, id: the id \"tern\" stands in line 2 already. Give each row an id of its own, or take"
                + " the row out.",
            "boats.csv, line 4, use: \"nightly\" is not one of the words for it. Write one of idle, weekends, weekly,"
                + " charter-or-fishing.",
            "surfaces.csv, line 2, boat: there is no boat with the id \"terne\". Is \"tern\" meant.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          damage,chip,,2026-04-02          | told_whom: the day is given, but not who was told
          water,beads,Ida Brook,2026-04-02 | told_whom: somebody was told of water, and not of damage
          damage,chip,Ida Brook,noon       | told_on: there is no day "noon"
          """)
  void saysWhatIsWrongWithWhoWasTold(String cells, String expected) throws Exception {
    file("boats.csv", "id,name", "tern,Arctic Tern");
    file("surfaces.csv", "id,boat,kind", "s,tern,topsides");
    file("findings.csv", "id,surface,day,what,value,told_whom,told_on", "f,s,2026-04-01," + cells);
    assertThat(problems())
        .singleElement()
        .asString()
        .startsWith("findings.csv, line 2, " + expected);
  }

  @Test
  void whoeverWasToldWithoutADayWasToldOnTheDayOfTheFinding() throws Exception {
    file("boats.csv", "id,name", "tern,Arctic Tern");
    file("surfaces.csv", "id,boat,kind", "s,tern,topsides");
    file(
        "findings.csv",
        "id,surface,day,what,value,told_whom",
        "f,s,2026-04-01,damage,chip,Ida Brook",
        "g,s,2026-04-01,damage,scrape,");
    assertThat(read().additions().findings())
        .extracting(f -> ((Observation.Damage) f.seen()).told())
        .containsExactly(
            Optional.of(new Observation.Told("Ida Brook", LocalDate.of(2026, 4, 1))),
            Optional.empty());
  }

  @Test
  void sinceWhenAStepIsTimedIsAMomentInUtc() throws Exception {
    file("boats.csv", "id,name", "tern,Arctic Tern");
    file("visits.csv", "id,boat,day,status", "v,tern,2026-05-01,planned");
    file(
        "steps.csv",
        "id,visit,kind,day,timed_since",
        "a,v,wash,2026-05-01,2026-05-01T12:30:00Z",
        "b,v,polish,2026-05-01,half past twelve",
        "c,v,polish,2026-05-01,0026-05-01T12:30:00Z");
    assertThat(problems())
        .containsExactly(
            "steps.csv, line 3, timed_since: there is no moment \"half past twelve\". Write it in UTC"
                + " as 2026-05-01T12:30:00Z.",
            "steps.csv, line 4, timed_since: the year of 0026-05-01 cannot be meant. Write it in"
                + " UTC as 2026-05-01T12:30:00Z.");
  }

  @Test
  void suggestsTheColumnThatWasMeant() throws Exception {
    file("boats.csv", "id,name,knownfrom", "tern,Arctic Tern,");
    assertThat(problems())
        .containsExactly(
            "boats.csv, line 1, knownfrom: there is no column \"knownfrom\". Is \"known_from\" meant.");
    file("boats.csv", "id", "tern");
    assertThat(problems()).singleElement().asString().contains("name: the column is missing");
  }

  @Test
  void readsWhatSpreadsheetsWrite() throws Exception {
    Files.write(
        folder.resolve("boats.csv"),
        "\uFEFFID;Name;loa_m;Note\r\ntern;Arctic Tern;9,5;a, b\r\n\r\n"
            .getBytes(StandardCharsets.UTF_8));
    file("harbours.csv", "id\tname\tlatitude", "q\tQuillhaven\t48.4");
    CsvSet.ReadResult read = read();
    assertThat(read.problems()).isEmpty();
    assertThat(read.additions().boats().get(0).loa().orElseThrow().millimetres()).isEqualTo(9500);
    assertThat(read.additions().boats().get(0).note()).isEqualTo("a, b");
    assertThat(read.additions().harbours().get(0).latitude()).isEqualTo(48.4);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          31'2"      | 9500
          31 ft 2 in | 9500
          31.5       | 9601
          31 ft      | 9449
          """)
  void readsFeetAsPeopleWriteThem(String text, int millimetres) throws Exception {
    file(
        "boats.csv",
        "id;name;loa_ft",
        "tern;Arctic Tern;" + '"' + text.replace("\"", "\"\"") + '"');
    assertThat(read().problems()).isEmpty();
    assertThat(read().additions().boats().get(0).loa().orElseThrow().millimetres())
        .isEqualTo(millimetres);
  }

  @Test
  void saysThatLettersAreNotUtf8() throws Exception {
    Files.write(
        folder.resolve("boats.csv"),
        "id,name\nx,ok\ny,Möwe\n".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(problems())
        .containsExactly(
            "boats.csv, line 3: it holds letters that are not UTF-8. Save it as \"CSV UTF-8\".");
    Files.write(folder.resolve("boats.csv"), "id,name\n".getBytes(StandardCharsets.UTF_16));
    assertThat(problems()).singleElement().asString().contains("UTF-16");
    Files.write(
        folder.resolve("boats.csv"),
        new byte[] {'i', 'd', ',', 'n', 'a', 'm', 'e', '\n', 'x', ',', 0});
    assertThat(problems()).singleElement().asString().contains("line 2: it holds a zero byte");
  }

  @Test
  void saysThatAQuoteIsNotClosed() throws Exception {
    file("boats.csv", "id,name", "tern,\"Arctic", "curlew,Curlew");
    assertThat(problems()).singleElement().asString().contains("line 2").contains("not closed");
  }

  @Test
  void saysWhatIsWrongWithTheFolder() throws Exception {
    assertThat(problems()).singleElement().asString().contains("none of the lists is in it");
    file("boat.csv", "id,name");
    file("boats.csv", "id,name");
    assertThat(problems())
        .containsExactly("boat.csv: it is none of the lists. Is \"boats.csv\" meant.");
    CsvSet.ReadResult missing =
        CsvSet.read(
            folder.resolve("nowhere"), Almanac.empty(Business.unnamed()), new IdSource(() -> 1));
    assertThat(missing.problems())
        .singleElement()
        .satisfies(p -> assertThat(p.message()).isEqualTo("there is no such folder"));
  }

  @Test
  void formatPageNamesEveryColumnAndNoOther() throws Exception {
    String page = Files.readString(Path.of("docs/formats/csv.md"));
    for (CsvKind<?> kind : SetReader.kinds(new MoneyFiles(Business.unnamed()))) {
      int from = page.indexOf("## " + kind.file());
      assertThat(from).as(kind.file()).isPositive();
      int until = page.indexOf("\n## ", from + 1);
      List<String> named =
          page.substring(from, until < 0 ? page.length() : until)
              .lines()
              .filter(l -> l.startsWith("| `"))
              .map(l -> l.substring(3, l.indexOf('`', 3)))
              .toList();
      assertThat(named)
          .as(kind.file())
          .isEqualTo(kind.columns().stream().map(Column::name).toList());
    }
  }

  @Test
  void exampleOfTheFormatPageGivesAForecast() throws Exception {
    String page = Files.readString(Path.of("docs/formats/csv.md"));
    java.util.regex.Matcher example =
        java.util.regex.Pattern.compile(
                "`([a-z-]+\\.csv)`\\R\\R```csv\\R(.*?)```", java.util.regex.Pattern.DOTALL)
            .matcher(page);
    while (example.find()) {
      file(example.group(1), example.group(2).strip());
    }
    CsvSet.ReadResult read = read();
    assertThat(read.problems()).isEmpty();
    assertThat(
            new hullalmanac.core.life.Forecaster(
                    read.additions(), java.time.LocalDate.of(2026, 4, 1))
                .inService())
        .singleElement()
        .satisfies(f -> assertThat(f.lapsedNow()).isPresent());
  }
}
