package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The list for the accountant: from when until when, and where it was written. */
public final class AccountantSheet extends ShownSheet {
  private Draft<Span> draft;
  private String written = "";

  /** Days, both counted; public so that it can be copied with one component changed. */
  public record Span(LocalDate from, LocalDate to) {}

  public AccountantSheet(Desk desk) {
    super(desk);
  }

  @Override
  void begin(Fleet first) {
    LocalDate year = first.asOf().withDayOfYear(1);
    draft = new Draft<>("span", new Span(year, first.asOf()));
  }

  @Override
  public void show(Fleet now) {
    written = "";
    super.show(now);
  }

  private static List<FieldOf<Span>> fields(Fleet fleet) {
    FieldMaker make = new FieldMaker(fleet.almanac().business(), fleet.asOf());
    return List.of(make.day("from", "First day", Span::from), make.day("to", "Last day", Span::to));
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    return new SheetState(
        "For the accountant",
        "Invoices, credits, payments, expenses and trips of these days, one list in CSV with each"
            + " tax apart.",
        List.of(
            draft.form("", fields(fleet)),
            new SheetState.Words(written),
            new SheetState.Buttons(
                List.of(
                    new SheetState.Button("write", "Write the list", true),
                    new SheetState.Button("done", "Done", false)))),
        Optional.empty());
  }

  @Override
  public Said say(At at, String text) {
    return fleet().map(f -> draft.say(fields(f), at, text)).orElse(Said.NOTHING);
  }

  @Override
  public void enter(At at, String text) {
    fleet().ifPresent(f -> draft.enter(fields(f), at, text));
    written = "";
    trouble = Optional.empty();
    publish();
  }

  @Override
  public void press(String button) {
    if (button.equals("done")) {
      desk.leave();
      return;
    }
    fleet().ifPresent(this::write);
  }

  private void write(Fleet fleet) {
    Span span = draft.value();
    trouble = draft.trouble(fields(fleet));
    if (trouble.isEmpty() && span.to().isBefore(span.from())) {
      trouble = Optional.of("The last day, " + span.to() + ", is before the first.");
    }
    if (trouble.isPresent()) {
      publish();
      return;
    }
    desk.ask(
        edits -> edits.writeAccounts(span.from(), span.to().plusDays(1)),
        file -> {
          written = "Written to " + file + ".";
          publish();
        });
  }

  @Override
  public Topic topic() {
    return Topic.SPENDING;
  }
}
