package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Id;
import hullalmanac.core.supply.BottleLeft;
import hullalmanac.core.supply.Supplies;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What is left in the bottles, and whether it is enough until a day. */
public final class SuppliesSheet extends FleetSheet {
  private static final int USUAL_DAYS = 7;
  private static final int MOST_DAYS = 366;
  private static final String UNTIL = "until";

  private final Rows<Bottle> bottles;
  private Optional<Draft<Until>> draft = Optional.empty();
  private Optional<Reckoned> reckoned = Optional.empty();

  /** How often numbers were asked for; an answer to an older question is not shown. */
  private int asked;

  /** The last day that is looked at; public so that it can be copied with it changed. */
  public record Until(LocalDate day) {}

  /** What was reckoned, of which record and day. */
  private record Reckoned(Almanac almanac, Until until, Optional<Supplies> supplies) {}

  public SuppliesSheet(Desk desk) {
    super(desk);
    bottles =
        new Rows<>(
            Rows.Block.plain(
                "bottles",
                "Bottles",
                SuppliesSheet::holding,
                b -> "bottle " + b.batch(),
                this::fields),
            desk);
  }

  /** Bottles in which something was left when somebody last looked. */
  private static List<Bottle> holding(Fleet fleet) {
    Map<Id<?>, String> names =
        fleet.almanac().products().stream().collect(Collectors.toMap(p -> p.id(), p -> p.name()));
    return fleet.almanac().bottles().stream()
        .filter(b -> b.leftMl().map(ml -> ml > 0).orElse(true))
        .sorted(
            Comparator.comparing(
                    (Bottle b) -> names.get(b.product()), String.CASE_INSENSITIVE_ORDER)
                .thenComparing(b -> b.useBy().orElse(LocalDate.MAX))
                .thenComparing(Bottle::key))
        .toList();
  }

  private List<FieldOf<Bottle>> fields(Fleet fleet) {
    FieldMaker make = new FieldMaker(fleet.almanac().business(), fleet.asOf());
    Map<Id<?>, String> names =
        fleet.almanac().products().stream().collect(Collectors.toMap(p -> p.id(), p -> p.name()));
    Map<Id<Bottle>, BottleLeft> left =
        reckoned.flatMap(Reckoned::supplies).map(Supplies::bottles).orElse(List.of()).stream()
            .collect(Collectors.toMap(b -> b.bottle().id(), Function.identity()));
    SuppliesWords words = new SuppliesWords(fleet.asOf());
    return List.of(
        fixed("product", "Product", b -> names.get(b.product())),
        make.line("batch", "Batch", Bottle::batch),
        make.maybeDay("openedOn", "Opened on", Bottle::openedOn),
        make.maybeDay("useBy", "Use by", Bottle::useBy),
        fixed(
            "now",
            "Left now, ml",
            b -> Optional.ofNullable(left.get(b.id())).map(SuppliesWords::left).orElse("…")),
        BottleFields.weighed(make),
        fixed(
            "why",
            "How that is known",
            b -> Optional.ofNullable(left.get(b.id())).map(words::why).orElse("…")));
  }

  private static FieldOf<Bottle> fixed(String id, String label, Function<Bottle, String> text) {
    return FieldMaker.unwritten(id, label, new Input.Fixed(), text);
  }

  private List<FieldOf<Until>> until(Fleet fleet) {
    FieldMaker make = new FieldMaker(fleet.almanac().business(), fleet.asOf());
    FieldOf<Until> day = make.day("day", "Enough until", Until::day);
    return List.of(
        new FieldOf<>(
            day.id(),
            day.label(),
            day.input(),
            day.text(),
            (u, typed) -> within(day.enter().apply(u, typed), fleet.asOf())));
  }

  private static Entry<Until> within(Entry<Until> entry, LocalDate today) {
    if (entry instanceof Entry.Read<Until> read) {
      if (read.value().day().isBefore(today)) {
        return new Entry.Refused<>(read.value().day() + " is over; write today or a later day.");
      }
      if (read.value().day().isAfter(today.plusDays(MOST_DAYS))) {
        return new Entry.Refused<>("Plans are looked at for a year ahead and no more.");
      }
    }
    return entry;
  }

  @Override
  List<Rows<?>> parts() {
    return List.of(bottles);
  }

  @Override
  public void show(Fleet fleet) {
    if (draft.isEmpty()) {
      draft = Optional.of(new Draft<>(UNTIL, new Until(fleet.asOf().plusDays(USUAL_DAYS))));
    }
    super.show(fleet);
    reckon(fleet);
  }

  /** Asks for the numbers again where the record or the day has changed. */
  private void reckon(Fleet fleet) {
    Almanac almanac = fleet.almanac();
    Until until = draft.orElseThrow().value();
    if (reckoned.filter(r -> r.until().equals(until) && r.almanac().equals(almanac)).isPresent()) {
      return;
    }
    reckoned = Optional.of(new Reckoned(almanac, until, reckoned.flatMap(Reckoned::supplies)));
    asked++;
    int mine = asked;
    desk.reckon(
        () -> Supplies.of(almanac, fleet.asOf(), until.day()),
        done -> {
          if (asked == mine) {
            reckoned = Optional.of(new Reckoned(almanac, until, Optional.of(done)));
            publish();
          }
        });
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    SuppliesWords words = new SuppliesWords(fleet.asOf());
    Optional<Supplies> now = reckoned.flatMap(Reckoned::supplies);
    List<SheetState.Block> blocks = new ArrayList<>();
    blocks.add(draft.orElseThrow().form("", until(fleet)));
    blocks.add(new SheetState.Words(now.map(words::summary).orElse("Reckoning …"), true));
    blocks.add(words.enough(now));
    blocks.add(new SheetState.Words(now.map(words::gaps).orElse("")));
    blocks.add(bottles.grid(fleet, "No bottle with anything in it is written down."));
    blocks.add(words.pads(now));
    blocks.add(new SheetState.Words(SuppliesWords.RECKONED));
    blocks.add(new SheetState.Buttons(List.of(new SheetState.Button("done", "Done", true))));
    return new SheetState(
        "Supplies",
        "What is left, reckoned from what you saw and the steps done since",
        blocks,
        Optional.empty());
  }

  @Override
  public Said say(At at, String text) {
    return at.block().equals(UNTIL)
        ? fleet().flatMap(f -> draft.map(d -> d.say(until(f), at, text))).orElse(Said.NOTHING)
        : super.say(at, text);
  }

  @Override
  public void enter(At at, String text) {
    if (!at.block().equals(UNTIL)) {
      super.enter(at, text);
      return;
    }
    fleet()
        .ifPresent(
            f -> {
              draft.orElseThrow().enter(until(f), at, text);
              publish();
              reckon(f);
            });
  }

  @Override
  public void press(String button) {
    desk.leave();
  }

  @Override
  public Topic topic() {
    return Topic.SUPPLIES;
  }
}
