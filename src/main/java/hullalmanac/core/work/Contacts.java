package hullalmanac.core.work;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Uid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Contact cards beside the parties of a record: which are new, which are there already, and which
 * may be the same as one that is there, to be looked at side by side.
 *
 * @param fresh parties that are not in the record
 * @param alike parties that may be one of the record or of {@code fresh}; each with the likeliest
 * @param there parties of the record to which a card adds nothing
 */
public record Contacts(List<Party> fresh, List<Alike> alike, List<Party> there) {
  private static final String ALSO = "Also ";
  private static final String URN = "urn:uuid:";

  public Contacts {
    fresh = List.copyOf(fresh);
    alike = List.copyOf(alike);
    there = List.copyOf(there);
  }

  /**
   * Sorts cards, one after the other: two alike cards make one new party and one that is like it.
   */
  public static Contacts of(Almanac almanac, List<Card> cards, IdSource ids) {
    NewKeys keys = new NewKeys(almanac);
    Map<String, Party> byUid = new HashMap<>();
    LikeParties known = new LikeParties();
    for (Party party : almanac.parties()) {
      known.add(party);
      byUid.put(Uid.of(Uid.Of.PARTY, party.id()), party);
    }
    List<Party> fresh = new ArrayList<>();
    List<Alike> alike = new ArrayList<>();
    List<Party> there = new ArrayList<>();
    for (Card card : cards) {
      Party party = party(card, ids, keys);
      Optional<Alike> likeliest =
          own(card, byUid)
              .map(own -> new Alike(own, party, Set.of(Alike.Sign.CARD)))
              .or(() -> known.to(party).stream().findFirst());
      if (likeliest.isEmpty()) {
        fresh.add(party);
        known.add(party);
      } else if (PartyMerge.adds(likeliest.get().known(), party)) {
        alike.add(likeliest.get());
      } else {
        there.add(likeliest.get().known());
      }
    }
    return new Contacts(fresh, alike, there);
  }

  /** A card that this program wrote carries the name of its party. */
  private static Optional<Party> own(Card card, Map<String, Party> byUid) {
    return card.uid().map(uid -> byUid.get(uid.strip().replace(URN, "")));
  }

  /** A party as a card has it; what a party has no room for stands in the note. */
  private static Party party(Card card, IdSource ids, NewKeys keys) {
    List<String> note = new ArrayList<>();
    card.note().strip().lines().forEach(note::add);
    Stream.concat(card.phones().stream().skip(1), card.emails().stream().skip(1))
        .map(more -> ALSO + more)
        .forEach(note::add);
    return new Party(
        ids.next(),
        keys.next(Kind.PARTY, card.name()),
        card.kind(),
        card.name(),
        card.phones().stream().findFirst().orElse(""),
        card.emails().stream().findFirst().orElse(""),
        card.address(),
        card.language(),
        Optional.empty(),
        String.join("\n", note));
  }

  /** Puts in what is new, and what is alike only when it is to be made one as usual. */
  public Edit edit(Almanac almanac, boolean merge) {
    return edit(almanac, pair -> merge ? Alike.Choice.ONE : Alike.Choice.LEAVE_OUT);
  }

  /** Puts in what is new, and what is alike as it was chosen. */
  public Edit edit(Almanac almanac, Function<Alike, Alike.Choice> chosen) {
    Edit edit = Edit.put(fresh);
    Almanac after = almanac.with(edit);
    for (Alike pair : alike) {
      Edit one =
          switch (chosen.apply(pair)) {
            case ONE ->
                PartyMerge.edit(
                    after,
                    InRecord.row(after.parties(), pair.known().id()),
                    pair.other(),
                    Map.of());
            case BOTH -> Edit.put(pair.other());
            case LEAVE_OUT -> Edit.put(List.of());
          };
      edit = edit.and(one);
      after = after.with(one);
    }
    return edit;
  }
}
