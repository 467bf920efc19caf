package hullalmanac.exchange.csv;

import static hullalmanac.exchange.csv.Column.need;
import static hullalmanac.exchange.csv.Column.needText;
import static hullalmanac.exchange.csv.Column.text;
import static hullalmanac.exchange.csv.Column.value;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PriceLine;
import hullalmanac.core.record.Share;
import hullalmanac.core.record.Signature;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.TaxTerms;
import hullalmanac.core.record.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/** Estimates, what is to be expected, their options and lines. */
final class EstimateFiles {
  private final Currency currency;
  private final TaxTerms usual;
  final CsvKind<Head> estimates = heads();
  final CsvKind<ExpectationRow> expectations = expectations();
  final CsvKind<OptionRow> options = options();
  final CsvKind<LineRow> lines = lines();

  EstimateFiles(Currency currency, TaxTerms usual) {
    this.currency = currency;
    this.usual = usual;
  }

  /** An estimate without what hangs on it. */
  record Head(
      Id<Estimate> id,
      String key,
      Id<Boat> boat,
      Optional<Id<Party>> party,
      LocalDate day,
      LocalDate validUntil,
      Share deposit,
      TaxTerms terms,
      Estimate.State state,
      Optional<Estimate.Answer> answer,
      Optional<Id<Visit>> visit,
      String note) {
    static Head of(Estimate e) {
      return new Head(
          e.id(),
          e.key(),
          e.boat(),
          e.party(),
          e.day(),
          e.validUntil(),
          e.deposit(),
          e.terms(),
          e.state(),
          e.answer(),
          e.visit(),
          e.note());
    }

    Estimate with(List<Estimate.Expectation> expectations, List<Estimate.Option> options) {
      return new Estimate(
          id,
          key,
          boat,
          party,
          day,
          validUntil,
          expectations,
          options,
          deposit,
          terms,
          state,
          answer,
          visit,
          note);
    }
  }

  record ExpectationRow(Id<Estimate> estimate, Estimate.Expectation expectation) {}

  /** An option, its lines left out when read. */
  record OptionRow(Id<Estimate> estimate, Estimate.Option option) {
    OptionRow with(List<PriceLine> lines) {
      return new OptionRow(
          estimate,
          new Estimate.Option(
              option.name(),
              option.steps(),
              option.surfaces(),
              lines,
              option.discount(),
              option.note()));
    }
  }

  record LineRow(Id<Estimate> estimate, String option, PriceLine line) {}

  private static List<Estimate> inOrder(Almanac almanac) {
    return almanac.books().estimates().stream()
        .sorted(Comparator.comparing(Estimate::key))
        .toList();
  }

  private CsvKind<Head> heads() {
    return new CsvKind<>(
        "estimates.csv",
        Kind.ESTIMATE,
        List.of(
            needText("id"),
            needText("boat"),
            text("party"),
            need("day"),
            need("valid_until"),
            value("deposit_percent"),
            value("deposit"),
            value("tax_inclusive"),
            value("tax_at"),
            value("rounding"),
            value("state"),
            value("answered_on"),
            text("accepted_option"),
            text("answer_note"),
            text("signed_by"),
            value("signature"),
            text("visit"),
            text("note"))) {
      @Override
      List<Head> rows(Almanac almanac, Keys keys) {
        return inOrder(almanac).stream().map(Head::of).toList();
      }

      @Override
      void write(Head e, Out out) {
        out.put("id", e.key())
            .ref("boat", Kind.BOAT, e.boat())
            .ref("party", Kind.PARTY, e.party())
            .put("day", e.day())
            .put("valid_until", e.validUntil())
            .put("state", e.state())
            .put("answered_on", e.answer().map(Estimate.Answer::day))
            .put("accepted_option", e.answer().map(Estimate.Answer::option))
            .put("answer_note", e.answer().map(Estimate.Answer::note))
            .put("signed_by", e.answer().map(Estimate.Answer::signedBy))
            .put("signature", e.answer().flatMap(Estimate.Answer::signature).map(Signature::text))
            .ref("visit", Kind.VISIT, e.visit())
            .put("note", e.note());
        MoneyFiles.put(out, "deposit", e.deposit());
        MoneyFiles.put(out, e.terms());
      }

      @Override
      Optional<Head> read(In in) {
        return head(in);
      }
    };
  }

  private Optional<Head> head(In in) {
    Id<Estimate> id = in.ref(Kind.ESTIMATE, "id");
    Id<Boat> boat = in.ref(Kind.BOAT, "boat");
    Optional<Id<Party>> party = in.maybeRef(Kind.PARTY, "party");
    LocalDate day = in.day("day");
    LocalDate until = in.day("valid_until");
    Optional<Share> deposit = MoneyFiles.share(in, "deposit", currency);
    TaxTerms terms = MoneyFiles.terms(in, usual);
    Estimate.State state = in.coded(Estimate.State.class, "state", Estimate.State.DRAFT);
    Optional<LocalDate> answered = in.maybeDay("answered_on");
    Optional<Signature> signature =
        in.maybe("signature", Signature::parse, "Write points as 10,20 12,21, strokes with /");
    Optional<Id<Visit>> visit = in.maybeRef(Kind.VISIT, "visit");
    Optional<Estimate.Answer> answer =
        answered.map(
            on ->
                new Estimate.Answer(
                    on,
                    in.text("accepted_option"),
                    in.text("answer_note"),
                    in.text("signed_by"),
                    signature));
    return deposit.flatMap(
        d ->
            in.made(
                () ->
                    new Head(
                        id,
                        in.key("id"),
                        boat,
                        party,
                        day,
                        until,
                        d,
                        terms,
                        state,
                        answer,
                        visit,
                        in.text("note"))));
  }

  private CsvKind<ExpectationRow> expectations() {
    return new CsvKind<>(
        "estimate-expectations.csv",
        Kind.ESTIMATE,
        List.of(needText("estimate"), need("result"), needText("words"))) {
      @Override
      List<ExpectationRow> rows(Almanac almanac, Keys keys) {
        return inOrder(almanac).stream()
            .flatMap(e -> e.expectations().stream().map(x -> new ExpectationRow(e.id(), x)))
            .toList();
      }

      @Override
      void write(ExpectationRow row, Out out) {
        out.ref("estimate", Kind.ESTIMATE, row.estimate())
            .put("result", row.expectation().result())
            .put("words", row.expectation().words());
      }

      @Override
      Optional<ExpectationRow> read(In in) {
        Id<Estimate> estimate = in.ref(Kind.ESTIMATE, "estimate");
        Estimate.Result result = in.coded(Estimate.Result.class, "result", Estimate.Result.STAYS);
        return in.made(
            () -> new ExpectationRow(estimate, new Estimate.Expectation(result, in.text("words"))));
      }
    };
  }

  private CsvKind<OptionRow> options() {
    return new CsvKind<>(
        "estimate-options.csv",
        Kind.ESTIMATE,
        List.of(
            needText("estimate"),
            needText("name"),
            value("steps"),
            text("surfaces"),
            value("discount_percent"),
            value("discount"),
            text("note"))) {
      @Override
      List<OptionRow> rows(Almanac almanac, Keys keys) {
        return inOrder(almanac).stream()
            .flatMap(e -> e.options().stream().map(o -> new OptionRow(e.id(), o)))
            .toList();
      }

      @Override
      void write(OptionRow row, Out out) {
        out.ref("estimate", Kind.ESTIMATE, row.estimate())
            .put("name", row.option().name())
            .put("steps", row.option().steps())
            .refs("surfaces", Kind.SURFACE, row.option().surfaces())
            .put("note", row.option().note());
        MoneyFiles.put(out, "discount", row.option().discount());
      }

      @Override
      Optional<OptionRow> read(In in) {
        Id<Estimate> estimate = in.ref(Kind.ESTIMATE, "estimate");
        List<StepKind> steps = BooksFiles.steps(in);
        List<Id<Surface>> surfaces = in.refs(Kind.SURFACE, "surfaces");
        Optional<Share> discount = MoneyFiles.share(in, "discount", currency);
        return discount.flatMap(
            d ->
                in.made(
                    () ->
                        new OptionRow(
                            estimate,
                            new Estimate.Option(
                                in.text("name"), steps, surfaces, List.of(), d, in.text("note")))));
      }
    };
  }

  private CsvKind<LineRow> lines() {
    List<Column> columns = new ArrayList<>(List.of(needText("estimate"), needText("option")));
    columns.addAll(LineCells.COLUMNS);
    return new CsvKind<>("estimate-lines.csv", Kind.ESTIMATE, columns) {
      @Override
      List<LineRow> rows(Almanac almanac, Keys keys) {
        return inOrder(almanac).stream()
            .flatMap(
                e ->
                    e.options().stream()
                        .flatMap(
                            o -> o.lines().stream().map(l -> new LineRow(e.id(), o.name(), l))))
            .toList();
      }

      @Override
      void write(LineRow row, Out out) {
        out.ref("estimate", Kind.ESTIMATE, row.estimate()).put("option", row.option());
        LineCells.write(row.line(), out);
      }

      @Override
      Optional<LineRow> read(In in) {
        Id<Estimate> estimate = in.ref(Kind.ESTIMATE, "estimate");
        return LineCells.read(in, currency).map(l -> new LineRow(estimate, in.text("option"), l));
      }
    };
  }
}
