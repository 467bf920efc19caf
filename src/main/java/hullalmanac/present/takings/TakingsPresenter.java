package hullalmanac.present.takings;

import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.present.Desk;
import hullalmanac.present.edit.AccountSheet;
import hullalmanac.present.edit.EstimateSheet;
import hullalmanac.present.edit.InvoiceSheet;
import hullalmanac.present.edit.PaymentSheet;
import hullalmanac.present.edit.PriceSheet;
import hullalmanac.present.edit.SpendingSheet;
import hullalmanac.present.edit.StandingSheet;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.takings.TakingsState.Subject;
import hullalmanac.service.Fleet;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** The money: who owes what, drafts to issue, estimates without an answer, and how it stands. */
public final class TakingsPresenter {
  private final Desk desk;
  private Consumer<TakingsState> view = s -> {};
  private TakingsState state =
      new TakingsState(
          "", List.of(), "Reading the record …", new TakingsState.Standing(), Optional.empty());
  private Optional<Fleet> fleet = Optional.empty();
  private Optional<TakingsList> list = Optional.empty();
  private boolean inSight;

  /** Whether the newest record is shown. */
  private boolean shown;

  public TakingsPresenter(Desk desk) {
    this.desk = desk;
  }

  /** Tells who shows the state; called at once and after each change. */
  public void onChange(Consumer<TakingsState> view) {
    this.view = view;
    view.accept(state);
  }

  /**
   * Shows a record; what is chosen stays chosen while it is there. What it comes to is reckoned
   * over all rows, so only where one looks at it.
   */
  public void show(Fleet fleet) {
    this.fleet = Optional.of(fleet);
    list = Optional.empty();
    shown = false;
    showInSight();
  }

  /** Tells whether one looks at this place now. */
  public void inSight(boolean now) {
    inSight = now;
    showInSight();
  }

  private void showInSight() {
    if (inSight && !shown && fleet.isPresent()) {
      shown = true;
      Fleet now = fleet.get();
      publish(state.find(), there(now, state.chosen()));
      state.sheet().ifPresent(sheet -> sheet.show(now));
    }
  }

  private static Subject there(Fleet fleet, Subject subject) {
    boolean gone =
        (subject instanceof TakingsState.OfInvoice of
                && fleet.almanac().books().invoices().stream()
                    .noneMatch(i -> i.id().equals(of.invoice())))
            || (subject instanceof TakingsState.OfEstimate e
                && fleet.almanac().books().estimates().stream()
                    .noneMatch(i -> i.id().equals(e.estimate())));
    return gone ? new TakingsState.Standing() : subject;
  }

  /** Lists what holds a text, issued invoices and answered estimates among it. */
  public void find(String text) {
    publish(text, state.chosen());
  }

  /** Shows the sheet of something in the list. */
  public void choose(Subject subject) {
    if (!subject.equals(state.chosen())) {
      publish(state.find(), subject);
      fleet.ifPresent(f -> state.sheet().ifPresent(sheet -> sheet.show(f)));
    }
  }

  /** Shows an invoice. */
  public void choose(Id<Invoice> invoice) {
    choose(new TakingsState.OfInvoice(invoice));
  }

  /** Shows an estimate. */
  public void chooseEstimate(Id<Estimate> estimate) {
    choose(new TakingsState.OfEstimate(estimate));
  }

  /** Opens what is shown as it would be printed. */
  public void onPaper() {
    state.sheet().ifPresent(Sheet::onPaper);
  }

  /** Writes down money that came. */
  public void receive() {
    desk.open(new PaymentSheet(desk, Optional.empty(), Optional.empty()));
  }

  private void publish(String find, Subject chosen) {
    Optional<Sheet> sheet =
        chosen.equals(state.chosen()) && state.sheet().isPresent()
            ? state.sheet()
            : Optional.of(sheet(chosen));
    List<TakingsState.Item> items = list().map(l -> l.items(find)).orElse(List.of());
    state = new TakingsState(find, items, found(items, find), chosen, sheet);
    view.accept(state);
  }

  /** The list of the newest record, made when it is first looked at. */
  private Optional<TakingsList> list() {
    if (list.isEmpty()) {
      list = fleet.map(TakingsList::new);
    }
    return list;
  }

  private String found(List<TakingsState.Item> items, String find) {
    if (!find.isBlank()) {
      return items.isEmpty() ? "Nothing of the kind." : items.size() + " found";
    }
    return list().map(TakingsList::summary).orElse("");
  }

  private Sheet sheet(Subject subject) {
    if (subject instanceof TakingsState.OfParty of) {
      return new AccountSheet(desk, of.party());
    }
    if (subject instanceof TakingsState.OfInvoice of) {
      return new InvoiceSheet(desk, of.invoice(), true);
    }
    if (subject instanceof TakingsState.OfEstimate of) {
      return new EstimateSheet(desk, of.estimate(), true);
    }
    if (subject instanceof TakingsState.Pricing) {
      return new PriceSheet(desk, Optional.empty(), true);
    }
    return subject instanceof TakingsState.Spending
        ? new SpendingSheet(desk)
        : new StandingSheet(desk);
  }
}
