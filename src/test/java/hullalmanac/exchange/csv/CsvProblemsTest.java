package hullalmanac.exchange.csv;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.IdSource;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
