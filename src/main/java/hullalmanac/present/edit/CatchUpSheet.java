package hullalmanac.present.edit;

import hullalmanac.core.entry.DateEntry;
import hullalmanac.core.entry.Entry;
import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Pixels;
import hullalmanac.core.record.Visit;
import hullalmanac.core.report.DateWords;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Picture;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import hullalmanac.service.PhotoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The evening of a day: its photos are sorted by time into its visits, and what is missing of these
 * is asked for.
 */
public final class CatchUpSheet extends FleetSheet {
  private static final String PHOTOS = "photos";
  private static final String DAY = "day";
  private static final String PLACE = "place ";
  private static final String OPEN = "open ";
  private static final List<String> PLACES = List.of("First", "Second", "Third", "Fourth");

  /** So many files are looked at before others get their turn. */
  private static final int AT_ONCE = 8;

  private final DayPhotos photos = new DayPhotos();
  private final DayGaps gaps;
  private final Previews previews;
  private Optional<LocalDate> chosen = Optional.empty();
  private Optional<String> refusedDay = Optional.empty();
  private List<Id<Visit>> order = List.of();
  private String doing = "";
  private String outcome = "";
  private List<String> refused = List.of();

  public CatchUpSheet(Desk desk) {
    super(desk);
    gaps = new DayGaps(desk);
    previews = new Previews(desk, PhotoService::smallOf);
  }

  private Round round(Fleet fleet) {
    return Round.of(fleet.almanac(), chosen.orElse(fleet.asOf()), order);
  }

  @Override
  List<Rows<?>> parts() {
    return List.of();
  }

  @Override
  public void show(Fleet fleet) {
    gaps.remember(fleet, round(fleet));
    super.show(fleet);
  }

  @Override
  SheetState stateOf(Fleet fleet) {
    Round round = round(fleet);
    List<SheetState.Block> blocks = new ArrayList<>();
    blocks.add(
        new SheetState.Photos(
            PHOTOS,
            "Photos of the day",
            photos.cards(round, Optional.empty()),
            words(round),
            true));
    blocks.add(new SheetState.Form(DAY, "", dayAndOrder(fleet, round)));
    if (photos.size() > 0) {
      round.visits().forEach(v -> blocks.add(ofVisit(round, v)));
    }
    int ready = photos.accepted(round).size();
    if (ready > 0) {
      blocks.add(
          buttons(new SheetState.Button("put", "Put " + PhotoWords.count(ready) + " in", true)));
    }
    blocks.addAll(gaps.blocks(fleet, round));
    blocks.add(buttons(new SheetState.Button("done", "Done", ready == 0)));
    return new SheetState(
        "Evening catch-up", facts(fleet, round), blocks, PhotoWords.trouble(refused, 0));
  }

  private static SheetState.Buttons buttons(SheetState.Button button) {
    return new SheetState.Buttons(List.of(button));
  }

  private static String facts(Fleet fleet, Round round) {
    String day = DateWords.full(round.day());
    if (round.visits().isEmpty()) {
      return day + ": no visit that day.";
    }
    String missing = DayGaps.missing(fleet, round);
    return day
        + ": "
        + String.join(", ", round.labels())
        + ". "
        + (missing.isEmpty() ? "All is written down." : "Something is missing of " + missing + ".");
  }

  private String words(Round round) {
    if (!doing.isEmpty()) {
      return doing;
    }
    int all = photos.size();
    if (all == 0) {
      return outcome.isEmpty()
          ? "What the phone took is sorted by its time into the day’s visits. Nothing is kept before"
              + " you say so."
          : outcome;
    }
    int ready = photos.accepted(round).size();
    if (ready == 0) {
      return "None could be sorted. Choose the visit of each, or leave it out.";
    }
    return ready == all
        ? "All are sorted, by the pauses between them. Look them through below, then put them in"
            + " with Ctrl+Enter."
        : ready
            + " are sorted, by the pauses between them; see below. Choose the visit of what is left"
            + " here, or leave it out.";
  }

  private SheetState.Photos ofVisit(Round round, Visit visit) {
    return new SheetState.Photos(
        "visit " + visit.id(),
        round.label(visit.id()),
        photos.cards(round, Optional.of(visit.id())),
        photos.cards(round, Optional.of(visit.id())).isEmpty() ? "No photo falls to her." : "",
        false);
  }

  private List<SheetState.Field> dayAndOrder(Fleet fleet, Round round) {
    List<SheetState.Field> fields = new ArrayList<>();
    String text = refusedDay.orElse(round.day().toString());
    fields.add(
        new SheetState.Field(
            DAY, "Day", new Input.Line("today, yesterday, 12/5"), text, sayDay(fleet, text)));
    for (int i = 0; round.visits().size() > 1 && i < round.visits().size(); i++) {
      fields.add(
          new SheetState.Field(
              PLACE + i,
              i < PLACES.size()
                  ? PLACES.get(i) + " boat of the day"
                  : "Boat " + (i + 1) + " of the day",
              new Input.Choice(round.labels().stream().sorted().toList()),
              round.labels().get(i),
              Said.NOTHING));
    }
    return fields;
  }

  private static Entry<LocalDate> day(Fleet fleet, String text) {
    return DateEntry.read(text, fleet.asOf(), fleet.almanac().business().dayOrder());
  }

  private static Said sayDay(Fleet fleet, String text) {
    Entry<LocalDate> entry = day(fleet, text);
    return entry instanceof Entry.Read<LocalDate> read
        ? new Said(read.echo(), false)
        : entry instanceof Entry.Refused<LocalDate> no
            ? new Said(no.sentence(), true)
            : new Said("A day is needed here, such as today.", true);
  }

  @Override
  public Said say(At at, String text) {
    return fleet()
        .map(
            f ->
                at.block().equals(DAY) && at.field().equals(DAY)
                    ? sayDay(f, text)
                    : gaps.say(f, at, text))
        .orElse(Said.NOTHING);
  }

  @Override
  public void enter(At at, String text) {
    fleet()
        .ifPresent(
            f -> {
              if (!taken(f, at, text)) {
                publish();
              }
            });
  }

  /** Takes a text; says whether the record changes by it, which shows the sheet again. */
  private boolean taken(Fleet fleet, At at, String text) {
    Round round = round(fleet);
    if (at.block().startsWith(DayGaps.BLOCK)) {
      return gaps.enter(fleet, at, text);
    }
    if (!at.row().isEmpty()) {
      photos.enter(round, at.row(), at.field(), text);
    } else if (at.field().equals(DAY)) {
      turnTo(fleet, text);
    } else if (at.field().startsWith(PLACE) && round.labels().contains(text)) {
      order = round.swapped(Integer.parseInt(at.field().substring(PLACE.length())), text);
    }
    return false;
  }

  private void turnTo(Fleet fleet, String text) {
    if (day(fleet, text) instanceof Entry.Read<LocalDate> read) {
      refusedDay = Optional.empty();
      chosen = Optional.of(read.value()).filter(d -> !d.equals(fleet.asOf()));
      order = List.of();
      gaps.forget();
      gaps.remember(fleet, round(fleet));
    } else {
      refusedDay = Optional.of(text);
    }
  }

  @Override
  public void add(String block, List<String> files) {
    List<String> fresh = files.stream().filter(f -> !photos.has(f)).distinct().toList();
    refused = List.of();
    outcome = "";
    look(fresh);
  }

  @Override
  public void add(String block, Pixels picture) {
    desk.ask(edits -> edits.photos().lay(picture), file -> add(block, List.of(file)));
  }

  /** Looks at some files, then at the rest. */
  private void look(List<String> files) {
    doing = files.isEmpty() ? "" : "Looking at " + PhotoWords.count(files.size()) + " …";
    publish();
    if (!files.isEmpty()) {
      List<String> now = files.subList(0, Math.min(AT_ONCE, files.size()));
      desk.ask(
          edits -> edits.photos().look(now),
          looked -> {
            looked.forEach(this::looked);
            look(files.subList(now.size(), files.size()));
          });
    }
  }

  private void looked(PhotoService.Looked photo) {
    if (photo.refused().isPresent()) {
      List<String> more = new ArrayList<>(refused);
      more.add(photo.refused().get());
      refused = more;
    } else {
      photos.put(photo);
    }
  }

  @Override
  public void picture(String file, int side, Consumer<Picture> answer) {
    previews.ask(file, side, answer);
  }

  @Override
  public void remove(String block, String row) {
    photos.leaveOut(row);
    publish();
  }

  @Override
  public void press(String button) {
    if (button.equals("done")) {
      desk.leave();
    } else if (button.equals("put")) {
      fleet().ifPresent(this::putIn);
    } else if (button.startsWith(OPEN)) {
      fleet()
          .flatMap(f -> round(f).ids().stream().filter(v -> button.equals(OPEN + v)).findFirst())
          .ifPresent(v -> desk.open(new VisitSheet(desk, v)));
    } else {
      throw new IllegalArgumentException("no button is called " + button);
    }
  }

  /** Puts all that is sorted into the record in one act. */
  private void putIn(Fleet fleet) {
    List<PhotoService.Given> all = photos.accepted(round(fleet));
    doing = "Putting " + PhotoWords.count(all.size()) + " in …";
    publish();
    desk.act(edits -> edits.photos().add(all), added -> wentIn(all, added));
  }

  private void wentIn(List<PhotoService.Given> all, PhotoService.Added added) {
    doing = "";
    for (PhotoService.Given one : all) {
      if (added.refused().containsKey(one.file())) {
        photos.stays(one);
      } else {
        photos.leaveOut(one.file());
      }
    }
    refused = List.copyOf(added.refused().values());
    outcome =
        switch (added.added()) {
              case 0 -> "No photo was new.";
              case 1 -> "One photo is in.";
              default -> added.added() + " photos are in.";
            }
            + PhotoWords.trouble(List.of(), added.already()).map(t -> " " + t).orElse("");
    publish();
  }

  @Override
  public Topic topic() {
    return Topic.CATCH_UP;
  }
}
