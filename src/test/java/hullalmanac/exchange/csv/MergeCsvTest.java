package hullalmanac.exchange.csv;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Id;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PartyKind;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MergeCsvTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 14);

  /**
   * RFC 4180, sections 2.1, 2.5 to 2.7: CR LF, quotation marks around what holds one or a comma.
   */
  @Test
  void writesALineABoatAsRfc4180SaysAndRunsNoFormula() {
    Party party =
        new Party(
            new Id<>(1),
            "ada",
            PartyKind.PERSON,
            "=Ada \"the\" Ames",
            "+1 555 0130",
            "ada@example.org",
            "Boat Lane 1\nQuillhaven",
            "fr",
            Optional.empty(),
            "");
    String csv =
        MergeCsv.of(
            List.of(
                new MergeCsv.Letter(
                    Optional.of(party), "Siskin", "Quillhaven", "topsides, transom", DAY, "T & T"),
                new MergeCsv.Letter(
                    Optional.empty(), "@Tern", "", "maker’s inspection", DAY, "T & T")));
    assertThat(csv)
        .isEqualTo(
            "name,email,phone,address,language,boat,harbour,what,best_by,business\r\n"
                + "\"'=Ada \"\"the\"\" Ames\",ada@example.org,'+1 555 0130,"
                + "\"Boat Lane 1\nQuillhaven\",fr,Siskin,Quillhaven,\"topsides, transom\","
                + "2026-05-14,T & T\r\n"
                + ",,,,,'@Tern,,maker’s inspection,2026-05-14,T & T\r\n");
  }

  @Test
  void theFormatPageNamesEveryColumnAndNoOther() throws Exception {
    assertThat(
            Files.readString(Path.of("docs/formats/merge.md"))
                .lines()
                .filter(l -> l.startsWith("| `"))
                .map(l -> l.substring(3, l.indexOf('`', 3))))
        .containsExactlyElementsOf(MergeCsv.COLUMNS.stream().map(Column::name).toList());
  }
}
