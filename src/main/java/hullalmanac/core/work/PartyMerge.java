package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Books;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.With;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Makes one party of two. The one that was known keeps its identity; one undo parts them again. */
public final class PartyMerge {
  private static final String ALSO = "Also ";

  private PartyMerge() {}

  /**
   * Makes one party of two: what is kept of each, the roles of both, and the other gone from the
   * record where it was in it.
   *
   * @param takes what to keep of a field; as usual where nothing is chosen
   * @throws IllegalArgumentException when an invoice was issued to the other, which stays as it is
   */
  public static Edit edit(
      Almanac almanac, Party known, Party other, Map<SideBySide.Field, SideBySide.Take> takes) {
    if (known.id().equals(other.id())) {
      throw new IllegalArgumentException("the party " + known.key() + " is one already");
    }
    List<Row> put = new ArrayList<>();
    List<Row> gone = new ArrayList<>();
    Party merged = merged(known, other, takes);
    if (!merged.equals(known)) {
      put.add(merged);
    }
    Set<List<Object>> held =
        almanac.roles().stream()
            .filter(r -> r.party().equals(known.id()))
            .map(PartyMerge::sameRole)
            .collect(Collectors.toSet());
    for (Role role : almanac.roles()) {
      if (role.party().equals(other.id())) {
        if (held.add(sameRole(role))) {
          put.add(With.component(role, "party", known.id()));
        } else {
          gone.add(role);
        }
      }
    }
    put.addAll(money(almanac, known, other));
    almanac.reminders().stream()
        .filter(r -> r.party().equals(Optional.of(other.id())))
        .forEach(r -> put.add(With.component(r, "party", Optional.of(known.id()))));
    if (almanac.parties().stream().anyMatch(p -> p.id().equals(other.id()))) {
      gone.add(other);
    }
    return new Edit(Optional.empty(), put, gone);
  }

  /**
   * Makes one party of two of the record, unless one is gone or the other was sent an invoice.
   *
   * @param known who stays
   * @param other who becomes one with them
   */
  public static Change of(Almanac almanac, Id<Party> known, Id<Party> other) {
    Optional<Party> stays = party(almanac, known);
    Optional<Party> goes = party(almanac, other);
    if (stays.isEmpty() || goes.isEmpty()) {
      return Change.refused(
          new Problem(
              Kind.PARTY, "", "", "one of the two is not in the record any more", "Look again"));
    }
    if (wasInvoiced(almanac, other)) {
      return Change.refused(
          new Problem(
              Kind.PARTY,
              goes.get().key(),
              "",
              "an invoice was issued to " + goes.get().name() + " and stays with them",
              "Let the other one go"));
    }
    return Change.checked(almanac, edit(almanac, stays.get(), goes.get(), Map.of()));
  }

  private static Optional<Party> party(Almanac almanac, Id<Party> id) {
    return almanac.parties().stream().filter(p -> p.id().equals(id)).findFirst();
  }

  /** Whether an invoice was issued to a party, which then stays. */
  public static boolean wasInvoiced(Almanac almanac, Id<Party> party) {
    return almanac.books().invoices().stream().anyMatch(i -> i.issued() && i.party().equals(party));
  }

  /** Estimates, drafts and payments of the other, who are the known one's from then on. */
  private static List<Row> money(Almanac almanac, Party known, Party other) {
    List<Row> put = new ArrayList<>();
    Books books = almanac.books();
    for (Invoice invoice : books.invoices()) {
      if (invoice.party().equals(other.id())) {
        if (invoice.issued()) {
          throw new IllegalArgumentException(
              "the " + invoice.words() + " was issued to " + other.key() + " and stays with them");
        }
        put.add(With.component(invoice, "party", known.id()));
      }
    }
    books.estimates().stream()
        .filter(e -> e.party().equals(Optional.of(other.id())))
        .forEach(e -> put.add(With.component(e, "party", Optional.of(known.id()))));
    books.payments().stream()
        .filter(p -> p.party().equals(other.id()))
        .forEach(p -> put.add(With.component(p, "party", known.id())));
    return put;
  }

  private static List<Object> sameRole(Role role) {
    return List.of(role.boat(), role.kind(), role.from(), role.until());
  }

  /**
   * The one party as it will be.
   *
   * @throws IllegalArgumentException when both of something are to be kept of which there is one
   *     only
   */
  public static Party merged(
      Party known, Party other, Map<SideBySide.Field, SideBySide.Take> takes) {
    Party merged = known;
    String note = known.note();
    List<String> also = new ArrayList<>();
    for (SideBySide side : SideBySide.of(known, other)) {
      SideBySide.Field field = side.field();
      SideBySide.Take take = takes.getOrDefault(field, side.usual());
      if (take == SideBySide.Take.BOTH && !field.both()) {
        throw new IllegalArgumentException("there is one " + field.words() + " only");
      }
      if (field == SideBySide.Field.NOTE) {
        note = take == SideBySide.Take.OTHER ? other.note() : known.note();
        also.addAll(take == SideBySide.Take.BOTH ? other.note().lines().toList() : List.of());
      } else if (take == SideBySide.Take.OTHER) {
        merged = with(merged, field, other);
      } else if (take == SideBySide.Take.BOTH && side.differ()) {
        also.add(ALSO + side.other().strip().replaceAll("\\s*\\R\\s*", ", "));
      }
    }
    return With.component(merged, "note", with(note, also));
  }

  /** A note with lines that are not in it yet. */
  private static String with(String note, List<String> also) {
    Set<String> said = note.lines().map(String::strip).collect(Collectors.toSet());
    String more =
        also.stream()
            .map(String::strip)
            .filter(line -> !line.isEmpty() && said.add(line))
            .collect(Collectors.joining("\n"));
    return more.isEmpty() || note.isBlank() ? note + more : note.stripTrailing() + "\n" + more;
  }

  private static Party with(Party party, SideBySide.Field field, Party other) {
    Object value =
        switch (field) {
          case KIND -> other.kind();
          case NAME -> other.name();
          case PHONE -> other.phone();
          case EMAIL -> other.email();
          case ADDRESS -> other.address();
          case LANGUAGE -> other.language();
          case RISK -> other.risk();
          case NOTE -> other.note();
        };
    return With.component(party, field.words(), value);
  }

  /** Whether another party says anything that the known one does not say already. */
  static boolean adds(Party known, Party other) {
    return !merged(known, other, Map.of()).equals(known);
  }
}
