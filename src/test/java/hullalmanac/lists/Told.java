package hullalmanac.lists;

import hullalmanac.core.list.Alike;
import hullalmanac.core.list.ListPlan;
import hullalmanac.core.list.Mark;
import hullalmanac.core.list.Question;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.ListReading;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.SurfaceKind;
import hullalmanac.core.record.Visit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Tells in plain lines what was planned with a list and what came into the record by it. */
final class Told {
  private final Almanac before;
  private final Almanac after;
  private final List<String> lines = new ArrayList<>();

  private Told(Almanac before, Almanac after) {
    this.before = before;
    this.after = after;
  }

  /** What was planned. */
  static String plan(ListPlan plan) {
    List<String> lines = new ArrayList<>();
    plan.remarks().forEach(r -> lines.add("remark: " + r));
    lines.add("headings: row " + plan.headingRow());
    plan.columns()
        .forEach(
            c ->
                lines.add(
                    "column " + c.label() + " = " + c.field().words() + " (" + c.why() + ")"));
    Stream.concat(plan.questions().stream(), plan.coats().stream())
        .forEach(q -> lines.add(question(q)));
    plan.newHarbours()
        .forEach(
            h ->
                lines.add(
                    "new harbour: "
                        + h.name()
                        + " at "
                        + h.latitude().map(String::valueOf).orElse("?")
                        + ", "
                        + h.why()));
    plan.marks().forEach(m -> lines.add(mark(plan, m)));
    plan.alikes().forEach(a -> lines.add(alike(a)));
    plan.asides()
        .forEach(
            a -> lines.add("aside: " + a.place() + " «" + oneLine(a.text()) + "»: " + a.why()));
    plan.missing().ifPresent(m -> lines.add("missing: " + m));
    lines.add("act: " + plan.act());
    return String.join("\n", lines) + "\n";
  }

  private static String question(Question q) {
    return "question: " + q.asked() + ": " + q.why() + " " + q.words() + " -> " + q.chosen();
  }

  private static String mark(ListPlan plan, Mark m) {
    return "mark: "
        + m.place()
        + ", "
        + plan.columns().get(m.column()).label()
        + ", «"
        + oneLine(m.text())
        + "»: "
        + m.sentence()
        + (m.taken() ? "" : " [not taken]");
  }

  private static String alike(Alike a) {
    return "alike: "
        + a.title()
        + " and "
        + a.there()
        + ", "
        + a.why()
        + " -> "
        + a.choice().words()
        + "; "
        + a.facts().stream()
            .map(f -> f.what() + " " + f.inList() + (f.differs() ? " ≠ " : " | ") + f.there())
            .collect(Collectors.joining("; "));
  }

  /** What came in. */
  static String rows(Almanac before, Almanac after) {
    Told told = new Told(before, after);
    told.all();
    return String.join("\n", told.lines) + "\n";
  }

  static String oneLine(String text) {
    return text.replaceAll("\\R", " ¶ ");
  }

  private <R extends Row> List<R> changed(Function<Almanac, List<R>> rows) {
    return rows.apply(after).stream()
        .filter(r -> !rows.apply(before).contains(r))
        .sorted(Comparator.comparing(Row::key))
        .toList();
  }

  private void line(String what, Object... facts) {
    lines.add(
        what
            + Stream.of(facts)
                .map(String::valueOf)
                .filter(f -> !f.isBlank())
                .map(f -> "; " + f)
                .collect(Collectors.joining()));
  }

  private void all() {
    for (Harbour h : changed(Almanac::harbours)) {
      line("harbour " + h.name(), h.latitude());
    }
    for (Party p : changed(Almanac::parties)) {
      line(
          p.kind().code() + " " + p.name(),
          said("phone", p.phone()),
          said("mail", p.email()),
          said("address", p.address()),
          note(p.note()));
    }
    after.boats().stream()
        .filter(this::isTouched)
        .sorted(Comparator.comparing(Boat::key))
        .forEach(this::boat);
    for (ListReading r : changed(Almanac::listReadings)) {
      line(
          "remembered " + r.name(),
          r.columns().stream()
              .map(c -> c.heading() + "=" + c.field().code())
              .collect(Collectors.joining(", ")));
    }
  }

  private static String said(String what, String text) {
    return text.isEmpty() ? "" : what + " " + oneLine(text);
  }

  private static String note(String note) {
    return note.isEmpty() ? "" : "note «" + oneLine(note) + "»";
  }

  private void boat(Boat b) {
    line(
        "boat " + b.name(),
        b.type().words(),
        b.loa().map(Length::metresText).map(t -> "long " + t).orElse(""),
        b.beam().map(Length::metresText).map(t -> "wide " + t).orElse(""),
        said("hull", b.hullNumber()),
        b.built().map(y -> "built " + y).orElse(""),
        b.knownFrom().map(d -> "known from " + d).orElse(""),
        hull(b),
        note(b.note()));
    changed(Almanac::roles).stream().filter(r -> r.boat().equals(b.id())).forEach(this::role);
    changed(Almanac::berths).stream().filter(x -> x.boat().equals(b.id())).forEach(this::berth);
    changed(Almanac::visits).stream().filter(v -> v.boat().equals(b.id())).forEach(this::visit);
  }

  private boolean isTouched(Boat boat) {
    return changed(Almanac::boats).contains(boat)
        || changed(Almanac::roles).stream().anyMatch(r -> r.boat().equals(boat.id()))
        || changed(Almanac::berths).stream().anyMatch(b -> b.boat().equals(boat.id()))
        || changed(Almanac::visits).stream().anyMatch(v -> v.boat().equals(boat.id()));
  }

  /** The surfaces of a new boat: how many, and of what the hull is. */
  private String hull(Boat b) {
    List<Surface> hers =
        changed(Almanac::surfaces).stream().filter(s -> s.boat().equals(b.id())).toList();
    return hers.isEmpty()
        ? ""
        : hers.size()
            + " surfaces, topsides "
            + hers.stream()
                .filter(s -> s.kind() == SurfaceKind.TOPSIDES)
                .map(s -> s.tone().words() + " " + s.finish().words())
                .distinct()
                .collect(Collectors.joining(" and "));
  }

  private void role(Role r) {
    String party =
        after.parties().stream()
            .filter(p -> p.id().equals(r.party()))
            .findFirst()
            .orElseThrow()
            .name();
    line("  " + r.kind().code() + " " + party, "from " + r.from());
  }

  private void berth(Berth b) {
    String harbour =
        after.harbours().stream()
            .filter(h -> h.id().equals(b.harbour()))
            .findFirst()
            .orElseThrow()
            .name();
    line(
        "  lies at " + harbour,
        said("berth", b.access().place()),
        said("keys", b.secrets().keys()),
        said("gate", b.secrets().gateCode()),
        "from " + b.from());
  }

  private void visit(Visit v) {
    List<String> steps =
        changed(Almanac::steps).stream()
            .filter(s -> s.visit().equals(v.id()))
            .map((Step s) -> s.kind().code() + " on " + s.surfaces().size())
            .toList();
    List<Coat> coats =
        changed(Almanac::coats).stream()
            .filter(c -> c.visit().equals(java.util.Optional.of(v.id())))
            .toList();
    line(
        "  visit " + v.day(),
        v.status().code(),
        steps.isEmpty() ? "" : steps.toString(),
        coats.isEmpty() ? "" : coats.size() + " coats laid " + coats.get(0).laidOn().orElseThrow(),
        note(v.note()));
  }
}
