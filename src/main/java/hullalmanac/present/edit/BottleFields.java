package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.entry.NumberEntry;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Texts;
import hullalmanac.present.sheet.Input;
import java.time.LocalDate;
import java.util.Optional;

/** What is written of what is left in a bottle. */
final class BottleFields {
  private BottleFields() {}

  /** What is left as it was written; another number is of today. */
  static FieldOf<Bottle> left(FieldMaker make) {
    return new FieldOf<>(
        "leftMl",
        "Left, ml",
        new Input.Line(""),
        b -> b.leftMl().map(String::valueOf).orElse(""),
        (b, typed) -> left(b, NumberEntry.readWhole(typed), make.today()));
  }

  /** A cell that is always empty: what is written in it was seen today, also the same once more. */
  static FieldOf<Bottle> weighed(FieldMaker make) {
    return new FieldOf<>(
        "weighed",
        "Seen today, ml",
        new Input.Line("weighed or guessed"),
        b -> "",
        (b, typed) -> {
          Entry<Integer> read = NumberEntry.readWhole(typed);
          return read instanceof Entry.Empty<Integer>
              ? new Entry.Read<>(b, "")
              : seen(b, read, make.today());
        });
  }

  private static Entry<Bottle> left(Bottle bottle, Entry<Integer> read, LocalDate today) {
    if (read instanceof Entry.Empty<Integer>) {
      return new Entry.Read<>(with(bottle, Optional.empty(), Optional.empty()), "");
    }
    boolean same =
        read instanceof Entry.Read<Integer> r && bottle.leftMl().equals(Optional.of(r.value()));
    return same ? new Entry.Read<>(bottle, "") : seen(bottle, read, today);
  }

  private static Entry<Bottle> seen(Bottle bottle, Entry<Integer> read, LocalDate today) {
    if (read instanceof Entry.Refused<Integer> refused) {
      return new Entry.Refused<>(refused.sentence());
    }
    int ml = ((Entry.Read<Integer>) read).value();
    if (bottle.sizeMl().filter(size -> ml > size).isPresent()) {
      return new Entry.Refused<>(
          "It holds " + bottle.sizeMl().orElseThrow() + " ml new, so no " + ml + " ml are left.");
    }
    try {
      return new Entry.Read<>(with(bottle, Optional.of(ml), Optional.of(today)), "");
    } catch (IllegalArgumentException e) {
      return new Entry.Refused<>(Texts.capital(e.getMessage()) + ".");
    }
  }

  private static Bottle with(Bottle b, Optional<Integer> leftMl, Optional<LocalDate> leftOn) {
    return new Bottle(
        b.id(),
        b.key(),
        b.product(),
        b.batch(),
        b.openedOn(),
        b.useBy(),
        b.sizeMl(),
        leftMl,
        leftOn);
  }
}
