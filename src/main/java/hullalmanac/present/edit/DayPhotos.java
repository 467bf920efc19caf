package hullalmanac.present.edit;

import hullalmanac.core.entry.Entry;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Visit;
import hullalmanac.core.work.PhotoSorting;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.PhotoService;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Photos that were given for a day and are not in the record yet, and where each shall go. */
final class DayPhotos {
  private static final String NOWHERE = "no visit";

  private final Map<String, PhotoService.Looked> given = new LinkedHashMap<>();
  private final Map<String, Goes> moved = new HashMap<>();

  /**
   * Where a photo goes.
   *
   * @param why it goes nowhere; empty when a person said so
   */
  record Goes(Optional<Id<Visit>> visit, Moment moment, String why) {}

  boolean has(String file) {
    return given.containsKey(file);
  }

  int size() {
    return given.size();
  }

  void put(PhotoService.Looked photo) {
    given.put(photo.file(), photo);
  }

  void leaveOut(String file) {
    given.remove(file);
    moved.remove(file);
  }

  /** Leaves a photo where it was to go, though others have gone. */
  void stays(PhotoService.Given photo) {
    moved.put(photo.file(), new Goes(photo.to().visit(), photo.to().moment(), ""));
  }

  /** Where each photo goes: as a person said, else as it is proposed. */
  Map<String, Goes> sorted(Round round) {
    List<PhotoService.Looked> photos = inOrder();
    List<PhotoSorting.Proposal> proposals =
        PhotoSorting.propose(
            round.day(),
            round.visits(),
            photos.stream().map(PhotoService.Looked::takenAt).toList());
    Map<String, Goes> goes = new LinkedHashMap<>();
    for (int i = 0; i < photos.size(); i++) {
      String file = photos.get(i).file();
      Goes said = moved.get(file);
      boolean stands =
          said != null && said.visit().map(v -> round.visit(v).isPresent()).orElse(true);
      goes.put(file, stands ? said : proposed(proposals.get(i)));
    }
    return goes;
  }

  private List<PhotoService.Looked> inOrder() {
    return given.values().stream()
        .sorted(
            java.util.Comparator.comparing(
                (PhotoService.Looked p) -> p.takenAt().orElse(LocalDateTime.MAX)))
        .toList();
  }

  private static Goes proposed(PhotoSorting.Proposal proposal) {
    return proposal instanceof PhotoSorting.Sorted sorted
        ? new Goes(Optional.of(sorted.visit()), sorted.moment(), "")
        : new Goes(
            Optional.empty(), Moment.OTHER, ((PhotoSorting.Unsorted) proposal).reason().words());
  }

  /** What goes into the record when it is accepted. */
  List<PhotoService.Given> accepted(Round round) {
    List<PhotoService.Given> all = new ArrayList<>();
    sorted(round)
        .forEach(
            (file, goes) ->
                goes.visit()
                    .flatMap(round::visit)
                    .ifPresent(
                        v ->
                            all.add(
                                new PhotoService.Given(
                                    file,
                                    new PhotoService.Belongs(
                                        v.boat(),
                                        Optional.of(v.id()),
                                        Optional.empty(),
                                        goes.moment())))));
    return all;
  }

  /** The cards of one visit, or of those that go nowhere. */
  List<SheetState.PhotoCard> cards(Round round, Optional<Id<Visit>> visit) {
    List<SheetState.PhotoCard> cards = new ArrayList<>();
    sorted(round)
        .forEach(
            (file, goes) -> {
              if (goes.visit().equals(visit)) {
                cards.add(card(round, given.get(file), goes));
              }
            });
    return cards;
  }

  private static SheetState.PhotoCard card(Round round, PhotoService.Looked photo, Goes goes) {
    String facts = PhotoWords.when(photo.takenAt(), Optional.of(round.day()));
    List<SheetState.Field> fields = new ArrayList<>();
    fields.add(choice("visit", "Visit", places(round), place(round, goes)));
    if (goes.visit().isPresent()) {
      fields.add(choice("moment", "Shows", FieldMaker.words(Moment.class), goes.moment().words()));
    }
    return new SheetState.PhotoCard(
        photo.file(),
        photo.file(),
        photo.name(),
        goes.why().isEmpty() ? facts : facts + "\n" + sentence(goes.why()),
        fields,
        "Leave out");
  }

  private static String sentence(String why) {
    return Texts.capital(why) + ".";
  }

  private static SheetState.Field choice(
      String id, String label, List<String> words, String chosen) {
    return new SheetState.Field(id, label, new Input.Choice(words), chosen, Said.NOTHING);
  }

  private static List<String> places(Round round) {
    List<String> places = new ArrayList<>(round.labels());
    places.add(NOWHERE);
    return places;
  }

  private static String place(Round round, Goes goes) {
    return goes.visit().map(round::label).orElse(NOWHERE);
  }

  /** Takes what a person says of a photo; what cannot be understood changes nothing. */
  void enter(Round round, String file, String field, String text) {
    Goes now = sorted(round).get(file);
    if (now == null) {
      return;
    }
    if (field.equals("visit")) {
      FieldMaker.oneOf(places(round), text)
          .map(
              place ->
                  moved.put(
                      file,
                      new Goes(
                          place.equals(NOWHERE)
                              ? Optional.empty()
                              : Optional.of(round.ids().get(round.labels().indexOf(place))),
                          now.moment(),
                          "")));
    } else if (FieldMaker.oneOf(Moment.class, text) instanceof Entry.Read<Moment> moment) {
      moved.put(file, new Goes(now.visit(), moment.value(), ""));
    }
  }
}
