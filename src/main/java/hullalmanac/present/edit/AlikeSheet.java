package hullalmanac.present.edit;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Role;
import hullalmanac.core.work.Alike;
import hullalmanac.core.work.LikeParties;
import hullalmanac.core.work.PartyMerge;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** People and firms of the record who may be one and the same, side by side, to be made one. */
public final class AlikeSheet extends ShownSheet {
  private static final String PAIR = "pair ";
  private static final String STAYS = "stays";
  private static final String FIRST = "the first";
  private static final String SECOND = "the second";
  private static final int MOST_SHOWN = 20;

  private Optional<List<Alike>> pairs = Optional.empty();

  /** Pairs of which the second is to stay. */
  private final Set<String> turned = new HashSet<>();

  private long newest;

  public AlikeSheet(Desk desk) {
    super(desk);
  }

  @Override
  public void show(Fleet now) {
    boolean others =
        !fleet().map(f -> f.almanac().parties()).equals(Optional.of(now.almanac().parties()));
    super.show(now);
    if (others) {
      look(now.almanac());
    }
  }

  private void look(Almanac almanac) {
    long mine = ++newest;
    desk.reckon(
        () ->
            LikeParties.pairs(almanac.parties()).stream()
                .sorted(Comparator.comparing((Alike pair) -> !pair.certain()))
                .toList(),
        found -> {
          if (mine == newest) {
            pairs = Optional.of(found);
            publish();
          }
        });
  }

  private static String key(Alike pair) {
    return pair.known().id() + " " + pair.other().id();
  }

  /** Of two of whom one was sent invoices that one stays. */
  private boolean isTurned(Fleet fleet, Alike pair) {
    boolean first = PartyMerge.wasInvoiced(fleet.almanac(), pair.known().id());
    boolean second = PartyMerge.wasInvoiced(fleet.almanac(), pair.other().id());
    return first == second ? turned.contains(key(pair)) : second;
  }

  private static boolean isFixed(Fleet fleet, Alike pair) {
    return PartyMerge.wasInvoiced(fleet.almanac(), pair.known().id())
        || PartyMerge.wasInvoiced(fleet.almanac(), pair.other().id());
  }

  private static boolean staysTwo(Fleet fleet, Alike pair) {
    return PartyMerge.wasInvoiced(fleet.almanac(), pair.known().id())
        && PartyMerge.wasInvoiced(fleet.almanac(), pair.other().id());
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    List<Alike> there =
        pairs.orElse(List.of()).stream()
            .filter(p -> fleet.almanac().parties().contains(p.known()))
            .filter(p -> fleet.almanac().parties().contains(p.other()))
            .toList();
    List<SheetState.Block> blocks = new ArrayList<>();
    there.stream().limit(MOST_SHOWN).forEach(pair -> add(fleet, pair, blocks));
    int more = there.size() - MOST_SHOWN;
    blocks.add(
        new SheetState.Words(
            more <= 0
                ? ""
                : more + (more == 1 ? " pair more is" : " pairs more are") + " not shown yet."));
    blocks.add(
        new SheetState.Buttons(List.of(new SheetState.Button("done", "Done", there.isEmpty()))));
    return new SheetState("Who may be the same", facts(there), blocks, Optional.empty());
  }

  private String facts(List<Alike> there) {
    if (pairs.isEmpty()) {
      return "Looking …";
    }
    return there.isEmpty()
        ? "No two have a name, a phone or a mail address in common."
        : (there.size() == 1 ? "1 pair has" : there.size() + " pairs have")
            + " a name, a phone or a mail address in common. Made one, what is empty is filled in,"
            + " what differs goes into the note, and boats, estimates, payments and reminders of"
            + " both are those of the one. One undo parts them again.";
  }

  private void add(Fleet fleet, Alike pair, List<SheetState.Block> blocks) {
    boolean turn = isTurned(fleet, pair);
    Party stays = turn ? pair.other() : pair.known();
    Party goes = turn ? pair.known() : pair.other();
    String heading =
        pair.known().name().equals(pair.other().name())
            ? pair.known().name() + ", twice"
            : pair.known().name() + " and " + pair.other().name();
    if (isFixed(fleet, pair)) {
      blocks.add(new SheetState.Form(PAIR + key(pair), heading, List.of(fixed(pair))));
    } else {
      blocks.add(new SheetState.Form(PAIR + key(pair), heading, List.of(choice(pair, turn))));
    }
    List<List<String>> boats =
        List.of(List.of("boats", boats(fleet, stays.id()), boats(fleet, goes.id())));
    blocks.add(
        new TwoParties(stays, goes, turn ? SECOND : FIRST, turn ? FIRST : SECOND)
            .table(!staysTwo(fleet, pair), boats));
    if (staysTwo(fleet, pair)) {
      blocks.add(
          new SheetState.Words(
              "Invoices were issued to both and stay with whom they were issued to, so these two"
                  + " stay two."));
    } else {
      blocks.add(
          new SheetState.Buttons(
              List.of(new SheetState.Button(PAIR + key(pair), "Make one of the two", false))));
    }
  }

  private static SheetState.Field fixed(Alike pair) {
    return new SheetState.Field(
        STAYS,
        "Who stays",
        new Input.Fixed(),
        "whoever was sent an invoice",
        new Said(pair.why(), false));
  }

  private static SheetState.Field choice(Alike pair, boolean turn) {
    return new SheetState.Field(
        STAYS,
        "Who stays",
        new Input.Choice(List.of(FIRST, SECOND)),
        turn ? SECOND : FIRST,
        new Said(pair.why(), false));
  }

  private static String boats(Fleet fleet, Id<Party> party) {
    Lookups lookups = new Lookups(fleet.almanac(), fleet.asOf());
    return fleet.almanac().roles().stream()
        .filter(r -> r.party().equals(party))
        .map((Role r) -> r.kind().words() + " " + lookups.boat(r.boat()).name())
        .distinct()
        .collect(Collectors.joining(", "));
  }

  @Override
  public Said say(At at, String text) {
    return Said.NOTHING;
  }

  @Override
  public void enter(At at, String text) {
    String key = at.block().substring(PAIR.length());
    if (text.equals(SECOND)) {
      turned.add(key);
    } else {
      turned.remove(key);
    }
    publish();
  }

  @Override
  public void press(String button) {
    if (button.startsWith(PAIR)) {
      fleet()
          .ifPresent(
              f ->
                  pairs.orElse(List.of()).stream()
                      .filter(p -> button.equals(PAIR + key(p)))
                      .findFirst()
                      .ifPresent(p -> makeOne(f, p)));
    } else {
      desk.leave();
    }
  }

  private void makeOne(Fleet fleet, Alike pair) {
    boolean turn = isTurned(fleet, pair);
    Party stays = turn ? pair.other() : pair.known();
    Party goes = turn ? pair.known() : pair.other();
    desk.change(
        stays.name() + ": two made one", almanac -> PartyMerge.of(almanac, stays.id(), goes.id()));
  }

  @Override
  public Topic topic() {
    return Topic.ALIKE;
  }
}
