package hullalmanac.store;

import hullalmanac.core.record.Coded;
import hullalmanac.core.record.LetterKind;
import hullalmanac.core.record.ListField;
import hullalmanac.core.record.ListReading;
import hullalmanac.core.record.Wording;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** How lists that were brought in were understood, and how letters are worded. */
final class ListStore {
  private static final Columns READING =
      Columns.of(
          "list_reading",
          """
          id
          key
          name
          headings
          fields
          """);

  private static final Columns WORDING =
      Columns.of(
          "wording",
          """
          id
          key
          kind
          language
          subject
          text
          """);

  private static final String BETWEEN = "|";

  private final Tx tx;

  ListStore(Tx tx) {
    this.tx = tx;
  }

  List<ListReading> readings() throws SQLException {
    return tx.list(
        READING.select("id"),
        row ->
            new ListReading(
                row.id("id"),
                row.text("key"),
                row.text("name"),
                columns(parts(row.text("headings")), parts(row.text("fields")))));
  }

  private static List<String> parts(String text) {
    return Arrays.asList(text.split("\\" + BETWEEN, -1));
  }

  private static List<ListReading.Column> columns(List<String> headings, List<String> fields) {
    List<ListReading.Column> columns = new ArrayList<>();
    for (int i = 0; i < fields.size(); i++) {
      String code = fields.get(i);
      columns.add(
          new ListReading.Column(
              headings.get(i),
              Coded.parse(ListField.class, code)
                  .orElseThrow(
                      () -> new IllegalStateException("no field of a list is called " + code))));
    }
    return columns;
  }

  List<Wording> wordings() throws SQLException {
    return tx.list(
        WORDING.select("id"),
        row ->
            new Wording(
                row.id("id"),
                row.text("key"),
                row.coded(LetterKind.class, "kind"),
                row.text("language"),
                row.text("subject"),
                row.text("text")));
  }

  void putWordings(List<Wording> wordings) throws SQLException {
    tx.each(
        WORDING.put(),
        wordings,
        (to, w) ->
            to.set("id", w.id())
                .set("key", w.key())
                .set("kind", w.kind())
                .set("language", w.language())
                .set("subject", w.subject())
                .set("text", w.text()));
  }

  void putReadings(List<ListReading> readings) throws SQLException {
    tx.each(
        READING.put(),
        readings,
        (to, r) ->
            to.set("id", r.id())
                .set("key", r.key())
                .set("name", r.name())
                .set("headings", String.join(BETWEEN, r.headings()))
                .set(
                    "fields",
                    r.columns().stream()
                        .map(c -> c.field().code())
                        .collect(Collectors.joining(BETWEEN))));
  }
}
