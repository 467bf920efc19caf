package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.paper.InvoicePaper;
import hullalmanac.core.price.Bill;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Money;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.record.Tax;
import hullalmanac.core.record.Texts;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.takings.Accounts;
import hullalmanac.core.takings.Crediting;
import hullalmanac.core.takings.InvoiceDraft;
import hullalmanac.core.takings.Issuing;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.Removal;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * An invoice or a credit. A draft is written here; issuing it asks first, and from then on it is
 * only read.
 */
public final class InvoiceSheet extends FleetSheet {
  private final Id<Invoice> invoice;
  private final boolean inPlace;
  private final Rows<Invoice> facts;
  private final Rows<LineAt> lines;

  private final Making making;

  /** The draft as it was shown when it was to be issued; only just that is issued. */
  private Optional<Invoice> asked = Optional.empty();

  /**
   * A line of the invoice; public so that it can be copied with one component changed.
   *
   * @param index its place, from 0
   */
  public record LineAt(int index, PriceLine line) implements Rows.Placed {
    @Override
    public Kind within() {
      return Kind.INVOICE;
    }

    @Override
    public Object mark() {
      return line;
    }
  }

  public InvoiceSheet(Desk desk, Id<Invoice> invoice) {
    this(desk, invoice, false);
  }

  /**
   * @param inPlace whether it stands in its place in the window, so that there is nothing to leave
   */
  public InvoiceSheet(Desk desk, Id<Invoice> invoice, boolean inPlace) {
    super(desk);
    this.invoice = invoice;
    this.inPlace = inPlace;
    making = new Making(desk);
    facts =
        new Rows<>(
            Rows.Block.plain(
                "invoice",
                "",
                f -> one(f).stream().toList(),
                Invoice::words,
                f -> fields(f).invoice()),
            desk);
    lines =
        new Rows<>(
            new Rows.Block<>(
                "lines",
                "Lines",
                this::linesOf,
                l -> String.valueOf(l.index()),
                l -> "line " + (l.index() + 1),
                f ->
                    MoneyFields.within(
                        fields(f).line(), LineAt::line, (l, now) -> new LineAt(l.index(), now)),
                this::write),
            desk);
  }

  private static MoneyFields fields(Fleet fleet) {
    return new MoneyFields(new FieldMaker(fleet.almanac().business(), fleet.asOf()));
  }

  private Optional<Invoice> one(Fleet fleet) {
    return fleet.almanac().books().invoices().stream()
        .filter(i -> i.id().equals(invoice))
        .findFirst();
  }

  private List<LineAt> linesOf(Fleet fleet) {
    List<PriceLine> all = one(fleet).map(Invoice::lines).orElse(List.of());
    return IntStream.range(0, all.size()).mapToObj(i -> new LineAt(i, all.get(i))).toList();
  }

  private Change write(Almanac almanac, LineAt line) {
    return InvoiceDraft.lines(
        almanac,
        invoice,
        all -> {
          all.set(line.index(), line.line());
          return all;
        });
  }

  @Override
  List<Rows<?>> parts() {
    return List.of(facts, lines);
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    Optional<Invoice> now = one(fleet);
    if (now.isEmpty()) {
      return new SheetState(
          "Not in the record", "This draft was taken out.", List.of(), Optional.empty());
    }
    return now.get().issued() ? issued(fleet, now.get()) : draft(fleet, now.get());
  }

  private static String who(Fleet fleet, Invoice i) {
    String party =
        fleet.almanac().parties().stream()
            .filter(p -> p.id().equals(i.party()))
            .map(Party::name)
            .findFirst()
            .orElse("");
    String boat =
        fleet.almanac().boats().stream()
            .filter(b -> i.boat().equals(Optional.of(b.id())))
            .map(Boat::name)
            .findFirst()
            .map(b -> ", for " + b)
            .orElse("");
    return "To " + party + boat;
  }

  private SheetState draft(Fleet fleet, Invoice i) {
    List<SheetState.Block> blocks = new ArrayList<>();
    blocks.add(lines.grid(fleet, "No line is written yet."));
    blocks.add(
        new SheetState.Buttons(List.of(new SheetState.Button("add line", "Add a line", false))));
    blocks.add(facts.form(fleet));
    blocks.add(total(fleet.accounts().bill(i)));
    if (asked.equals(Optional.of(i))) {
      String number = Issuing.nextNumber(fleet.almanac(), i, fleet.asOf());
      blocks.add(
          new SheetState.Words(
              "It becomes "
                  + number
                  + " of "
                  + DateWords.dated(fleet.asOf())
                  + ". Then it can be neither changed nor undone, nor can what was done before;"
                  + " a mistake in it is corrected by a credit."));
      blocks.add(
          new SheetState.Buttons(
              List.of(
                  new SheetState.Button("issue now", "Issue " + number, true),
                  new SheetState.Button("not yet", "Not yet", false))));
    } else {
      List<SheetState.Button> buttons = new ArrayList<>();
      buttons.add(new SheetState.Button("issue", "Issue", true));
      leave(buttons);
      buttons.add(new SheetState.Button("remove", "Take the draft out", false));
      buttons.add(new SheetState.Button("paper", "On paper", false));
      blocks.add(new SheetState.Buttons(buttons));
    }
    String what = i.credits().isPresent() ? "Draft of a credit" : "Draft of an invoice";
    return new SheetState(what, who(fleet, i), blocks, Optional.empty());
  }

  private void leave(List<SheetState.Button> buttons) {
    if (!inPlace) {
      buttons.add(new SheetState.Button("done", "Back", false));
    }
  }

  private SheetState issued(Fleet fleet, Invoice i) {
    Accounts accounts = fleet.accounts();
    Invoice.Issue issue = i.issue().orElseThrow();
    List<SheetState.Block> blocks = new ArrayList<>();
    blocks.add(
        new SheetState.Table(
            "Lines",
            List.of("What for", "Quantity", "Price", "Taxes, %", "Amount"),
            i.lines().stream()
                .map(
                    l ->
                        List.of(
                            l.words(),
                            l.unit().words(l.quantity()),
                            l.price().words(),
                            Tax.text(l.taxes()).replace("|", ", "),
                            l.amount(i.terms().rounding()).words()))
                .toList(),
            ""));
    blocks.add(total(accounts.bill(i)));
    List<SheetState.Button> buttons = new ArrayList<>();
    leave(buttons);
    if (i.credits().isEmpty()) {
      blocks.add(standing(accounts, i));
      if (accounts.open(i).isPositive()) {
        buttons.add(new SheetState.Button("pay", "Record a payment", true));
      }
      if (!accounts.takenBack(i)) {
        buttons.add(new SheetState.Button("credit", "Write a credit", false));
      }
    }
    buttons.add(new SheetState.Button("paper", "On paper", false));
    buttons.add(new SheetState.Button("changes", "What changed", false));
    blocks.add(new SheetState.Buttons(buttons));
    if (!i.note().isBlank()) {
      blocks.add(0, new SheetState.Words(i.note()));
    }
    String due = i.credits().isPresent() ? "" : ", to be paid by " + DateWords.dated(issue.due());
    return new SheetState(
        Texts.capital(i.words()),
        who(fleet, i) + " · issued on " + DateWords.dated(issue.day()) + due,
        blocks,
        Optional.empty());
  }

  private static SheetState.Table total(Bill bill) {
    List<List<String>> rows = new ArrayList<>();
    if (bill.discount().isPositive()) {
      rows.add(List.of("Discount", bill.discount().negated().words()));
    }
    rows.add(List.of("Without taxes", bill.net().words()));
    bill.taxes()
        .forEach(
            t ->
                rows.add(
                    List.of(t.tax().text() + " % of " + t.base().words(), t.amount().words())));
    rows.add(List.of("Total", bill.total().words()));
    return new SheetState.Table("What it comes to", List.of("Part", "Amount"), rows, "");
  }

  private static SheetState.Table standing(Accounts accounts, Invoice i) {
    List<List<String>> rows = new ArrayList<>();
    Money credited = accounts.credited(i);
    if (credited.isPositive()) {
      rows.add(List.of("Taken back by credits", credited.words()));
    }
    rows.add(List.of("Paid", accounts.paid(i).words()));
    rows.add(List.of("Open", accounts.open(i).words()));
    return new SheetState.Table("Where it stands", List.of("What", "Amount"), rows, "");
  }

  @Override
  public void enter(At at, String text) {
    asked = Optional.empty();
    super.enter(at, text);
  }

  @Override
  public void paste(At corner, List<List<String>> texts) {
    asked = Optional.empty();
    super.paste(corner, texts);
  }

  @Override
  public void remove(String block, String row) {
    asked = Optional.empty();
    fleet().ifPresent(f -> lines.remove(f, row, "a line taken out", this::without));
    publish();
  }

  private Change without(Almanac almanac, LineAt line) {
    return InvoiceDraft.lines(
        almanac,
        invoice,
        all -> {
          all.remove(line.index());
          return all;
        });
  }

  @Override
  public void press(String button) {
    fleet().flatMap(this::one).ifPresent(i -> press(button, i));
  }

  private void press(String button, Invoice i) {
    switch (button) {
      case "add line" ->
          desk.change(
              "a line added",
              almanac ->
                  InvoiceDraft.lines(
                      almanac,
                      invoice,
                      all -> {
                        all.add(InvoiceDraft.blank(almanac));
                        return all;
                      }));
      case "issue" -> whenAllTaken(() -> ask(Optional.of(i)));
      case "not yet" -> ask(Optional.empty());
      case "issue now" -> whenAllTaken(() -> issue(i));
      case "pay" -> desk.open(new PaymentSheet(desk, Optional.of(i.party()), Optional.of(invoice)));
      case "credit" -> credit(i);
      case "paper" -> onPaper();
      case "remove" ->
          desk.change(
              "draft taken out",
              almanac -> Removal.of(almanac, i),
              inPlace ? () -> {} : desk::leave);
      case "changes" -> desk.open(new ChangesSheet(desk, Kind.INVOICE, invoice, i.words()));
      default -> desk.leave();
    }
  }

  @Override
  public void onPaper() {
    whenAllTaken(this::openPaper);
  }

  private void openPaper() {
    desk.open(
        PaperSheet.of(
            desk,
            f -> one(f).map(i -> InvoicePaper.of(f.almanac(), f.accounts(), i)),
            Topic.INVOICE));
  }

  private void ask(Optional<Invoice> now) {
    asked = now;
    publish();
  }

  /** Issues the draft as it was shown when one was asked; after any change one is asked again. */
  private void issue(Invoice shown) {
    if (asked.equals(Optional.of(shown))) {
      Fleet now = fleet().orElseThrow();
      String number = Issuing.nextNumber(now.almanac(), shown, now.asOf());
      desk.change(number + " issued", almanac -> Issuing.issueAsShown(almanac, shown, now.asOf()));
    }
    ask(Optional.empty());
  }

  private void credit(Invoice i) {
    making.make(
        "credit for " + i.words() + " begun",
        almanac -> Crediting.draft(almanac, desk.ids(), invoice),
        Invoice.class,
        c -> desk.open(new InvoiceSheet(desk, c.id())));
  }

  @Override
  public Topic topic() {
    return Topic.INVOICE;
  }
}
