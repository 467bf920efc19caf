package hullalmanac.core.work;

import hullalmanac.core.record.CarePlan;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.MoveReason;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Rows as they are, but for one or two things. */
final class Altered {
  private Altered() {}

  /** A visit on another day, with the move that brought it there. */
  static Visit moved(Visit v, LocalDate day, MoveReason reason) {
    List<Visit.Move> moves = new ArrayList<>(v.moves());
    moves.add(new Visit.Move(v.day(), day, reason));
    return new Visit(
        v.id(),
        v.key(),
        v.boat(),
        day,
        v.status(),
        v.why(),
        v.plan(),
        v.cancelled(),
        v.handover(),
        v.surfaces(),
        moves,
        v.note());
  }

  /** A visit that was done, on a first day. */
  static Visit done(Visit v, LocalDate day, List<Visit.Part> parts) {
    return new Visit(
        v.id(),
        v.key(),
        v.boat(),
        day,
        VisitStatus.DONE,
        v.why(),
        v.plan(),
        Optional.empty(),
        v.handover(),
        parts,
        v.moves(),
        v.note());
  }

  static Visit cancelled(Visit v, MoveReason reason) {
    return new Visit(
        v.id(),
        v.key(),
        v.boat(),
        v.day(),
        VisitStatus.CANCELLED,
        v.why(),
        v.plan(),
        Optional.of(reason),
        v.handover(),
        v.surfaces(),
        v.moves(),
        v.note());
  }

  static Visit parts(Visit v, Optional<Id<CarePlan>> plan, List<Visit.Part> parts) {
    return new Visit(
        v.id(),
        v.key(),
        v.boat(),
        v.day(),
        v.status(),
        v.why(),
        plan,
        v.cancelled(),
        v.handover(),
        parts,
        v.moves(),
        v.note());
  }

  static Step step(Step s, LocalDate day, List<Id<Surface>> surfaces) {
    return new Step(
        s.id(),
        s.key(),
        s.visit(),
        s.order(),
        s.kind(),
        day,
        surfaces,
        s.product(),
        s.bottle(),
        s.partsWater(),
        s.pad(),
        s.speed(),
        s.passes(),
        s.minutes(),
        s.helperMinutes(),
        s.timedSince(),
        s.climate(),
        s.note());
  }

  static Coat ending(Coat c, Optional<Coat.Ending> ending) {
    return coat(c, c.visit(), c.over(), ending);
  }

  static Coat over(Coat c, Optional<Id<Coat>> over) {
    return coat(c, c.visit(), over, c.ending());
  }

  static Coat withoutVisit(Coat c) {
    return coat(c, Optional.empty(), c.over(), c.ending());
  }

  private static Coat coat(
      Coat c, Optional<Id<Visit>> visit, Optional<Id<Coat>> over, Optional<Coat.Ending> ending) {
    return new Coat(
        c.id(),
        c.key(),
        c.surface(),
        c.product(),
        c.laidOn(),
        c.knownFrom(),
        visit,
        c.bottle(),
        c.batch(),
        c.layers(),
        over,
        ending,
        c.note());
  }

  static Photo withoutSurface(Photo p) {
    return new Photo(
        p.id(),
        p.key(),
        p.boat(),
        Optional.empty(),
        p.visit(),
        p.takenAt(),
        p.moment(),
        p.file(),
        p.caption());
  }

  static CarePlan skipping(CarePlan p, List<LocalDate> skips) {
    return new CarePlan(
        p.id(),
        p.key(),
        p.boat(),
        p.work(),
        p.everyWeeks(),
        p.months(),
        p.price(),
        p.from(),
        p.until(),
        skips);
  }

  static Party phone(Party p, String phone) {
    return new Party(
        p.id(),
        p.key(),
        p.kind(),
        p.name(),
        phone,
        p.email(),
        p.address(),
        p.language(),
        p.risk(),
        p.note());
  }
}
