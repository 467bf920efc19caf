package hullalmanac.exchange.csv;

import static hullalmanac.exchange.csv.Column.needText;
import static hullalmanac.exchange.csv.Column.text;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.ListField;
import hullalmanac.core.record.ListReading;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** How lists that were brought in were understood. */
final class ListFiles {
  private static final String BETWEEN = "|";

  static final CsvKind<ListReading> READINGS =
      new CsvKind<>(
          "list-readings.csv",
          Kind.LIST_READING,
          List.of(needText("id"), needText("name"), text("headings"), needText("fields"))) {
        @Override
        List<ListReading> rows(Almanac almanac, Keys keys) {
          return almanac.listReadings().stream()
              .sorted(Comparator.comparing(ListReading::key))
              .toList();
        }

        @Override
        void write(ListReading r, Out out) {
          out.put("id", r.key())
              .put("name", r.name())
              .put("headings", String.join(BETWEEN, r.headings()))
              .put(
                  "fields",
                  r.columns().stream()
                      .map(c -> c.field().code())
                      .collect(Collectors.joining(BETWEEN)));
        }

        @Override
        Optional<ListReading> read(In in) {
          Id<ListReading> id = in.ref(Kind.LIST_READING, "id");
          List<ListReading.Column> columns = understood(in);
          return in.made(() -> new ListReading(id, in.key("id"), in.text("name"), columns));
        }
      };

  private ListFiles() {}

  private static List<String> parts(String text) {
    return Arrays.stream(text.split("\\" + BETWEEN, -1)).map(String::strip).toList();
  }

  private static List<ListReading.Column> understood(In in) {
    List<String> headings = parts(in.text("headings"));
    List<String> fields = parts(in.text("fields"));
    if (headings.size() != fields.size()) {
      in.problem(
          "headings",
          headings.size() + " headings stand beside " + fields.size() + " fields",
          "Write as many headings as fields, parted by " + BETWEEN);
      return List.of();
    }
    List<ListReading.Column> columns = new ArrayList<>();
    for (int i = 0; i < fields.size(); i++) {
      Optional<ListField> field = Coded.parse(ListField.class, fields.get(i));
      if (field.isEmpty()) {
        in.problem(
            "fields",
            "there is no \"" + fields.get(i) + "\"",
            "Write one of " + Coded.allCodes(ListField.class));
      } else {
        String heading = headings.get(i);
        in.made(() -> new ListReading.Column(heading, field.get())).ifPresent(columns::add);
      }
    }
    return columns;
  }
}
