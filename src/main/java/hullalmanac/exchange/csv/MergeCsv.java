package hullalmanac.exchange.csv;

import static hullalmanac.exchange.csv.Column.text;
import static hullalmanac.exchange.csv.Column.value;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import hullalmanac.core.record.Party;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Writes who is to be told of what as one list for a letter to many (mail merge). */
public final class MergeCsv {
  static final List<Column> COLUMNS =
      List.of(
          text("name"),
          text("email"),
          text("phone"),
          text("address"),
          text("language"),
          text("boat"),
          text("harbour"),
          text("what"),
          value("best_by"),
          text("business"));

  private MergeCsv() {}

  /**
   * One boat of which somebody is to be told.
   *
   * @param to who it goes to; where nobody is known its cells are empty
   * @param what is due
   * @param by the day by which the first of it is best done
   */
  public record Letter(
      Optional<Party> to,
      String boat,
      String harbour,
      String what,
      LocalDate by,
      String business) {}

  /** The list as text: a header and a line a boat, each ending with CR LF. */
  public static String of(List<Letter> letters) {
    StringWriter text = new StringWriter();
    try (CsvWriter writer = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
      writer.writeRecord(COLUMNS.stream().map(Column::name).toList());
      for (Letter letter : letters) {
        writer.writeRecord(line(letter));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static List<String> line(Letter letter) {
    return new Out(new Keys())
        .put("name", of(letter, Party::name))
        .put("email", of(letter, Party::email))
        .put("phone", of(letter, Party::phone))
        .put("address", of(letter, Party::address))
        .put("language", of(letter, Party::language))
        .put("boat", letter.boat())
        .put("harbour", letter.harbour())
        .put("what", letter.what())
        .put("best_by", letter.by())
        .put("business", letter.business())
        .line(COLUMNS);
  }

  private static String of(Letter letter, Function<Party, String> field) {
    return letter.to().map(field).orElse("");
  }
}
