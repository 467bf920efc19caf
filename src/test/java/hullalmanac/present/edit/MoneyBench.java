package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.core.takings.Till;
import hullalmanac.fixture.Bench;
import hullalmanac.present.sheet.SheetState;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A record of one's own on which somebody does something about money. */
abstract class MoneyBench {
  @TempDir Path folder;
  Bench bench;

  @BeforeEach
  void open() {
    bench = Bench.open(folder);
  }

  @AfterEach
  void close() {
    Till.assertSumsHold(bench.almanac());
    bench.close();
  }

  static String words(SheetState state) {
    return state.blocks().toString();
  }

  List<String> buttons() {
    return bench.state().blocks().stream()
        .filter(SheetState.Buttons.class::isInstance)
        .flatMap(b -> ((SheetState.Buttons) b).buttons().stream())
        .map(SheetState.Button::id)
        .toList();
  }

  SheetState.Field field(String form, String field) {
    return bench.state().blocks().stream()
        .filter(SheetState.Form.class::isInstance)
        .map(SheetState.Form.class::cast)
        .filter(f -> f.id().equals(form))
        .flatMap(f -> f.fields().stream())
        .filter(f -> f.id().equals(field))
        .findFirst()
        .orElseThrow();
  }

  Visit lastDone(Boat boat) {
    return bench.almanac().visits().stream()
        .filter(v -> v.boat().equals(boat.id()) && v.status() == VisitStatus.DONE)
        .max(Comparator.comparing(Visit::day).thenComparing(Visit::id))
        .orElseThrow();
  }

  List<Invoice> invoicesOf(Boat boat) {
    return bench.almanac().books().invoices().stream()
        .filter(i -> i.boat().orElseThrow().equals(boat.id()))
        .toList();
  }

  /** Opens the draft for the last visit of a boat that was never asked to pay. */
  Boat drafted() {
    Boat boat = bench.boat("Merganser");
    bench.presenter().open(new VisitSheet(bench.presenter(), lastDone(boat).id()));
    bench.sheet().press("invoice");
    assertThat(bench.sheet()).isInstanceOf(InvoiceSheet.class);
    return boat;
  }
}
