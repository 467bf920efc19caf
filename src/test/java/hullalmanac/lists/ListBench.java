package hullalmanac.lists;

import hullalmanac.core.list.Grid;
import hullalmanac.core.list.ListChoices;
import hullalmanac.core.list.ListPlan;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.With;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.NewBoat;
import hullalmanac.core.work.PhoneCall;
import hullalmanac.exchange.csv.CsvSet;
import hullalmanac.service.EditService;
import hullalmanac.service.ListService;
import hullalmanac.service.RecordService;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;

/** A small record of the made-up business, into which lists are brought. */
final class ListBench implements AutoCloseable {
  static final LocalDate TODAY = LocalDate.of(2026, 5, 1);

  private final RecordService record;

  ListBench(Path folder) {
    RecordService.Surroundings surroundings =
        new RecordService.Surroundings(
            Clock.fixed(Instant.parse("2026-05-01T09:00:00Z"), ZoneOffset.UTC),
            new Random(4)::nextLong,
            "desk",
            1);
    RecordService.create(folder, surroundings);
    record = RecordService.open(folder, surroundings);
    record.change("a beginning", Edit.all(beginning()));
  }

  /** Two harbours, four boats with their owners, two products. */
  static Almanac beginning() {
    IdSource ids = new IdSource(new Random(9)::nextLong);
    Almanac a = Almanac.empty(hullalmanac.core.record.Business.unnamed());
    a = with(a, ids, new Call("Una Quill", "555-0101", "Arctic Tern", "Quillhaven", 31 * 12 + 2));
    a = with(a, ids, new Call("Percy Moss", "555-0102", "Merganser", "Quillhaven", 36 * 12));
    a = with(a, ids, new Call("Rhea Sands", "555-0103", "Black Guillemot", "Oyster Hard", 28 * 12));
    a = with(a, ids, new Call("Vic Teller", "555-0104", "Avocet", "Oyster Hard", 0));
    Boat merganser =
        a.boats().stream().filter(b -> b.name().equals("Merganser")).findFirst().orElseThrow();
    return a.with(
        Edit.put(
            With.component(merganser, "hullNumber", "ZZZ23456A818"),
            product(ids, "sealant-b", "polymer sealant B", ProductKind.POLYMER_SEALANT),
            product(ids, "paste-a", "carnauba paste A", ProductKind.CARNAUBA)));
  }

  private record Call(String owner, String phone, String boat, String harbour, int inches) {}

  private static Almanac with(Almanac a, IdSource ids, Call call) {
    Change change =
        NewBoat.from(
            a,
            ids,
            new PhoneCall(
                call.owner(),
                call.phone(),
                call.boat(),
                Optional.of(call.inches()).filter(i -> i > 0).map(i -> Length.ofFeet(0, i)),
                new PhoneCall.AtNew(call.harbour(), 48.4),
                BoatType.SLOOP,
                LocalDate.of(2025, 4, 1)));
    return a.with(((Change.Ready) change).edit());
  }

  private static Product product(IdSource ids, String key, String name, ProductKind kind) {
    Id<Product> id = ids.next();
    return new Product(
        id,
        key,
        name,
        kind,
        Optional.of(12.0),
        false,
        Optional.empty(),
        Optional.empty(),
        false,
        false,
        new TreeSet<>(),
        Product.Handling.UNKNOWN,
        "");
  }

  Almanac almanac() {
    return record.almanac();
  }

  /** The record as its export writes it. */
  Map<String, String> exported() {
    return CsvSet.texts(record.almanac(), true);
  }

  ListPlan plan(Grid grid, ListChoices choices) {
    return ListPlan.of(grid, record.almanac(), TODAY, choices);
  }

  Change bringIn(Grid grid, ListChoices choices) {
    return new EditService(record)
        .change(
            plan(grid, choices).act(),
            a -> ListService.bringIn(grid, a, TODAY, choices, record.ids()));
  }

  Optional<String> undo() {
    return record.undo();
  }

  Optional<String> redo() {
    return record.redo();
  }

  @Override
  public void close() {
    record.close();
  }
}
