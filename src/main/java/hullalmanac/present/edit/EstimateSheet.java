package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.paper.EstimatePaper;
import hullalmanac.core.price.Bill;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.With;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.takings.Answering;
import hullalmanac.core.takings.EstimateDraft;
import hullalmanac.core.takings.InvoiceDraft;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.Removal;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** An estimate: what can be expected, options side by side, and the answer. */
public final class EstimateSheet extends FleetSheet {
  private static final String ADD_LINE = "add line ";

  private final Id<Estimate> estimate;
  private final boolean inPlace;
  private final Rows<Estimate> facts;
  private final Rows<ExpectationAt> expectations;
  private final Rows<OptionAt> options;
  private final Rows<LineAt> lines;
  private final EstimateReply reply = new EstimateReply();

  /** What has no more than a place in the estimate. */
  private interface Part extends Rows.Placed {
    @Override
    default Kind within() {
      return Kind.ESTIMATE;
    }
  }

  /** An expectation and its place, from 0. */
  public record ExpectationAt(int index, Estimate.Expectation expectation) implements Part {
    @Override
    public Object mark() {
      return expectation;
    }
  }

  /** An option and its place, from 0; its lines are written apart. */
  public record OptionAt(int index, Estimate.Option option) implements Part {
    @Override
    public Object mark() {
      return With.component(option, "lines", List.of());
    }
  }

  /** A line of an option, and the places of both, from 0. */
  public record LineAt(int option, int index, String name, PriceLine line) implements Part {
    @Override
    public Object mark() {
      return List.of(name, line);
    }
  }

  public EstimateSheet(Desk desk, Id<Estimate> estimate) {
    this(desk, estimate, false);
  }

  /**
   * @param inPlace whether it stands in its place in the window, so that there is nothing to leave
   */
  public EstimateSheet(Desk desk, Id<Estimate> estimate, boolean inPlace) {
    super(desk);
    this.estimate = estimate;
    this.inPlace = inPlace;
    facts = new Rows<>(factsBlock(), desk);
    expectations = new Rows<>(expectationsBlock(), desk);
    options = new Rows<>(optionsBlock(), desk);
    lines = new Rows<>(linesBlock(), desk);
  }

  private Rows.Block<Estimate> factsBlock() {
    return new Rows.Block<>(
        "estimate",
        "",
        f -> one(f).stream().toList(),
        e -> e.id().toString(),
        e -> "estimate",
        f -> fields(f).estimate(f.almanac().parties()),
        (almanac, e) -> EstimateDraft.changed(almanac, estimate, before -> e));
  }

  private Rows.Block<ExpectationAt> expectationsBlock() {
    return new Rows.Block<>(
        "expectations",
        "What can be expected",
        f -> numbered(one(f).map(Estimate::expectations), ExpectationAt::new),
        x -> String.valueOf(x.index()),
        x -> "expectation",
        f ->
            MoneyFields.within(
                fields(f).expectation(),
                ExpectationAt::expectation,
                (x, now) -> new ExpectationAt(x.index(), now)),
        (almanac, x) -> expecting(almanac, all -> replaced(all, x.index(), x.expectation())));
  }

  private Rows.Block<OptionAt> optionsBlock() {
    return new Rows.Block<>(
        "options",
        "Options",
        f -> numbered(one(f).map(Estimate::options), OptionAt::new),
        o -> String.valueOf(o.index()),
        o -> o.option().name(),
        f ->
            MoneyFields.within(
                fields(f).option(), OptionAt::option, (o, now) -> new OptionAt(o.index(), now)),
        (almanac, o) ->
            EstimateDraft.options(almanac, estimate, all -> replaced(all, o.index(), o.option())));
  }

  private Rows.Block<LineAt> linesBlock() {
    return new Rows.Block<>(
        "lines",
        "Lines",
        this::linesOf,
        l -> l.option() + " " + l.index(),
        LineAt::name,
        f ->
            MoneyFields.within(
                fields(f).line(),
                LineAt::line,
                (l, now) -> new LineAt(l.option(), l.index(), l.name(), now)),
        (almanac, l) -> lines(almanac, l.option(), all -> replaced(all, l.index(), l.line())));
  }

  private static MoneyFields fields(Fleet fleet) {
    return new MoneyFields(new FieldMaker(fleet.almanac().business(), fleet.asOf()));
  }

  private interface Numbered<T, A> {
    A at(int index, T item);
  }

  private static <T, A> List<A> numbered(Optional<List<T>> items, Numbered<T, A> made) {
    List<T> all = items.orElse(List.of());
    return IntStream.range(0, all.size()).mapToObj(i -> made.at(i, all.get(i))).toList();
  }

  private static <T> List<T> replaced(List<T> all, int index, T item) {
    List<T> changed = new ArrayList<>(all);
    changed.set(index, item);
    return changed;
  }

  private static <T> List<T> without(List<T> all, int index) {
    List<T> changed = new ArrayList<>(all);
    changed.remove(index);
    return changed;
  }

  private static <T> List<T> and(List<T> all, T item) {
    return Stream.concat(all.stream(), Stream.of(item)).toList();
  }

  private Change expecting(Almanac almanac, UnaryOperator<List<Estimate.Expectation>> change) {
    return EstimateDraft.changed(
        almanac, estimate, e -> With.component(e, "expectations", change.apply(e.expectations())));
  }

  private Change lines(Almanac almanac, int option, UnaryOperator<List<PriceLine>> change) {
    return EstimateDraft.options(
        almanac,
        estimate,
        all -> {
          Estimate.Option now = all.get(option);
          return replaced(all, option, With.component(now, "lines", change.apply(now.lines())));
        });
  }

  private Optional<Estimate> one(Fleet fleet) {
    return fleet.almanac().books().estimates().stream()
        .filter(e -> e.id().equals(estimate))
        .findFirst();
  }

  private List<LineAt> linesOf(Fleet fleet) {
    List<LineAt> all = new ArrayList<>();
    for (OptionAt o : numbered(one(fleet).map(Estimate::options), OptionAt::new)) {
      List<PriceLine> own = o.option().lines();
      for (int i = 0; i < own.size(); i++) {
        all.add(new LineAt(o.index(), i, o.option().name(), own.get(i)));
      }
    }
    return all;
  }

  @Override
  List<Rows<?>> parts() {
    return List.of(facts, expectations, options, lines);
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    Optional<Estimate> now = one(fleet);
    if (now.isEmpty()) {
      return new SheetState(
          "Not in the record", "This estimate was taken out.", List.of(), Optional.empty());
    }
    Estimate e = now.get();
    List<SheetState.Block> blocks = new ArrayList<>();
    if (e.answer().isPresent()) {
      answered(fleet, e, blocks);
    } else {
      open(fleet, e, blocks);
    }
    Boat boat = new Lookups(fleet.almanac(), fleet.asOf()).boat(e.boat());
    return new SheetState("Estimate for " + boat.name(), facts(fleet, e), blocks, reply.trouble());
  }

  private static String facts(Fleet fleet, Estimate e) {
    String who =
        fleet.almanac().parties().stream()
            .filter(p -> e.party().equals(Optional.of(p.id())))
            .map(Party::name)
            .map(n -> ", for " + n)
            .findFirst()
            .orElse("");
    String until =
        e.state() == Estimate.State.OFFERED && fleet.asOf().isAfter(e.validUntil())
            ? ", was valid until "
            : ", valid until ";
    return Texts.capital(e.state().words()) + who + until + DateWords.dated(e.validUntil());
  }

  private void open(Fleet fleet, Estimate e, List<SheetState.Block> blocks) {
    blocks.add(sideBySide(fleet, e));
    blocks.add(expectations.grid(fleet, "Say what comes out, what improves and what stays."));
    blocks.add(buttons(new SheetState.Button("add expectation", "Add an expectation", false)));
    blocks.add(options.grid(fleet, "No option is written yet."));
    blocks.add(buttons(new SheetState.Button("add option", "Add an option", false)));
    blocks.add(lines.grid(fleet, "Option", "No line is written yet."));
    blocks.add(
        new SheetState.Buttons(
            IntStream.range(0, e.options().size())
                .mapToObj(
                    i ->
                        new SheetState.Button(
                            ADD_LINE + i, "Add a line to " + e.options().get(i).name(), false))
                .toList()));
    blocks.add(facts.form(fleet));
    blocks.add(reply.form(fleet, e));
    blocks.add(reply.sign(fleet));
    List<SheetState.Button> answers = new ArrayList<>();
    boolean draft = e.state() == Estimate.State.DRAFT;
    if (draft) {
      answers.add(new SheetState.Button("offer", "It was offered", true));
    }
    answers.add(new SheetState.Button("accept", "Accepted: plan the visit", !draft));
    answers.add(new SheetState.Button("decline", "Declined", false));
    blocks.add(new SheetState.Buttons(answers));
    blocks.add(new SheetState.Buttons(last("Take it out")));
  }

  private static SheetState.Buttons buttons(SheetState.Button button) {
    return new SheetState.Buttons(List.of(button));
  }

  private List<SheetState.Button> last(String remove) {
    List<SheetState.Button> buttons = new ArrayList<>();
    if (!inPlace) {
      buttons.add(new SheetState.Button("done", "Done", false));
    }
    buttons.add(new SheetState.Button("paper", "On paper", false));
    buttons.add(new SheetState.Button("changes", "What changed", false));
    buttons.add(new SheetState.Button("remove", remove, false));
    return buttons;
  }

  private void answered(Fleet fleet, Estimate e, List<SheetState.Block> blocks) {
    Estimate.Answer answer = e.answer().orElseThrow();
    String which = answer.option().isBlank() ? "" : " (" + answer.option() + ")";
    blocks.add(
        new SheetState.Words(
            Texts.capital(e.state().words())
                + which
                + " on "
                + DateWords.dated(answer.day())
                + (answer.signedBy().isBlank() ? "" : " by " + answer.signedBy())
                + (answer.note().isBlank() ? "." : ": " + answer.note() + ".")));
    answer
        .signature()
        .ifPresent(
            s ->
                blocks.add(
                    new SheetState.Sign(
                        new At("answer", "", "signature"), "", "Signed", s.text(), false)));
    blocks.add(sideBySide(fleet, e));
    blocks.add(
        new SheetState.Table(
            "What was to be expected",
            List.of("What becomes of it", "Of what"),
            e.expectations().stream().map(x -> List.of(x.result().words(), x.words())).toList(),
            "Nothing was said of it."));
    if (e.visit().isPresent()) {
      blocks.add(buttons(new SheetState.Button("visit", "Open its visit", true)));
    }
    blocks.add(new SheetState.Buttons(last("Take it out")));
  }

  /** What the options come to, side by side. */
  private static SheetState.Table sideBySide(Fleet fleet, Estimate e) {
    var currency = fleet.almanac().business().currency();
    List<List<String>> rows =
        e.options().stream()
            .map(
                o -> {
                  Bill bill = Bill.of(o, e.terms(), currency);
                  return List.of(
                      o.name(),
                      String.join(", ", o.steps().stream().map(s -> s.words()).toList()),
                      bill.net().words(),
                      bill.total().words(),
                      Answering.deposit(e, o, currency).words());
                })
            .toList();
    return new SheetState.Table(
        "Side by side",
        List.of("Option", "Steps", "Without taxes", "Total", "Deposit"),
        rows,
        "No option is written yet.");
  }

  @Override
  public Said say(At at, String text) {
    return at.block().equals(EstimateReply.FORM)
        ? fleet().flatMap(f -> one(f).map(e -> reply.say(f, e, at, text))).orElse(Said.NOTHING)
        : super.say(at, text);
  }

  @Override
  public void enter(At at, String text) {
    if (at.block().equals(EstimateReply.FORM)) {
      fleet().ifPresent(f -> one(f).ifPresent(e -> reply.enter(f, e, at, text)));
      publish();
    } else {
      super.enter(at, text);
    }
  }

  @Override
  public void remove(String block, String row) {
    fleet().ifPresent(f -> remove(f, block, row));
    publish();
  }

  private void remove(Fleet fleet, String block, String row) {
    switch (block) {
      case "expectations" ->
          expectations.remove(
              fleet,
              row,
              "an expectation taken out",
              (almanac, x) -> expecting(almanac, all -> without(all, x.index())));
      case "options" ->
          options.remove(
              fleet,
              row,
              "an option taken out",
              (almanac, o) ->
                  EstimateDraft.options(almanac, estimate, all -> without(all, o.index())));
      case "lines" ->
          lines.remove(
              fleet,
              row,
              "a line taken out",
              (almanac, l) -> lines(almanac, l.option(), all -> without(all, l.index())));
      default -> throw new IllegalArgumentException("no rows are in " + block);
    }
  }

  /** Adds a line to an option, unless another stands in its place by then. */
  private void addLine(Estimate e, int option) {
    String name = e.options().get(option).name();
    desk.change(
        "a line added",
        almanac -> {
          List<Estimate.Option> now =
              almanac.books().estimates().stream()
                  .filter(x -> x.id().equals(estimate))
                  .flatMap(x -> x.options().stream())
                  .toList();
          return option < now.size() && now.get(option).name().equals(name)
              ? lines(almanac, option, all -> and(all, InvoiceDraft.blank(almanac)))
              : Rows.another(new OptionAt(option, e.options().get(option)));
        });
  }

  @Override
  public void press(String button) {
    fleet().flatMap(this::one).ifPresent(e -> press(button, e));
  }

  private void press(String button, Estimate e) {
    if (button.startsWith(ADD_LINE)) {
      addLine(e, Integer.parseInt(button.substring(ADD_LINE.length())));
      return;
    }
    switch (button) {
      case "add expectation" ->
          desk.change(
              "an expectation added",
              almanac ->
                  expecting(
                      almanac,
                      all -> and(all, new Estimate.Expectation(Estimate.Result.STAYS, "…"))));
      case "add option" ->
          desk.change(
              "an option added",
              almanac ->
                  EstimateDraft.options(
                      almanac, estimate, all -> and(all, EstimateDraft.blank(e))));
      case "offer" ->
          whenAllTaken(() -> desk.change("estimate offered", a -> Answering.offer(a, estimate)));
      case "accept", "decline" -> whenAllTaken(() -> answer(button, e));
      case "paper" -> onPaper();
      case "visit" -> e.visit().ifPresent(v -> desk.open(new VisitSheet(desk, v)));
      case "changes" ->
          desk.open(new ChangesSheet(desk, Kind.ESTIMATE, estimate, "Estimate of " + e.day()));
      case "remove" ->
          desk.change(
              "estimate of " + e.day() + " taken out",
              almanac -> Removal.of(almanac, e),
              inPlace ? () -> {} : desk::leave);
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
            f -> one(f).map(e -> EstimatePaper.of(f.almanac(), e, f.asOf())),
            Topic.ESTIMATE));
  }

  private void answer(String button, Estimate e) {
    Fleet now = fleet().orElseThrow();
    boolean accepts = button.equals("accept");
    if (!reply.ready(now, e, accepts)) {
      publish();
      return;
    }
    EstimateReply.Given given = reply.given(now);
    if (accepts) {
      desk.change(
          "estimate accepted, its visit planned",
          almanac -> Answering.accept(almanac, desk.ids(), estimate, given.accepted()));
    } else {
      desk.change(
          "estimate declined",
          almanac -> Answering.decline(almanac, estimate, given.day(), given.note()));
    }
  }

  @Override
  public Topic topic() {
    return Topic.ESTIMATE;
  }
}
