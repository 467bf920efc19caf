package hullalmanac.present.edit;

import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.Pixels;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.work.Change;
import hullalmanac.core.work.Removal;
import hullalmanac.present.Desk;
import hullalmanac.present.sheet.Picture;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import hullalmanac.service.PhotoService;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** The photos of a visit: to add to, to write on, to take out of. */
final class VisitPhotos {
  static final String BLOCK = "photos";

  /** By their time, those without one last. */
  private static final Comparator<Photo> IN_ORDER =
      Comparator.comparing((Photo p) -> p.takenAt().orElse(LocalDateTime.MAX))
          .thenComparing(Photo::id);

  private final Desk desk;
  private final Id<Visit> visit;
  private final Runnable publish;
  private final Rows<Photo> rows;
  private final Previews previews;
  private String doing = "";
  private Optional<String> trouble = Optional.empty();

  /**
   * @param publish shows the sheet again
   */
  VisitPhotos(Desk desk, Id<Visit> visit, Runnable publish) {
    this.desk = desk;
    this.visit = visit;
    this.publish = publish;
    previews = new Previews(desk, PhotoService::small);
    rows =
        new Rows<>(
            new Rows.Block<>(
                BLOCK,
                "Photos",
                this::photos,
                p -> p.id().toString(),
                p -> "photo",
                f -> PhotoFields.of(new FieldMaker(f.almanac().business(), f.asOf()), surfaces(f)),
                (almanac, photo) -> Change.checked(almanac, Edit.put(photo))),
            desk);
  }

  Rows<Photo> rows() {
    return rows;
  }

  /** What went wrong when photos were added last. */
  Optional<String> trouble() {
    return trouble;
  }

  private Optional<Visit> visit(Fleet fleet) {
    return fleet.almanac().visits().stream().filter(v -> v.id().equals(visit)).findFirst();
  }

  private List<Photo> photos(Fleet fleet) {
    return fleet.almanac().photos().stream()
        .filter(p -> p.visit().equals(Optional.of(visit)))
        .sorted(IN_ORDER)
        .toList();
  }

  private List<Surface> surfaces(Fleet fleet) {
    return fleet.almanac().surfaces().stream()
        .filter(s -> visit(fleet).filter(v -> v.boat().equals(s.boat())).isPresent())
        .sorted(BoatSheet.IN_ORDER)
        .toList();
  }

  SheetState.Photos block(Fleet fleet) {
    Optional<Visit> now = visit(fleet);
    List<SheetState.PhotoCard> cards =
        photos(fleet).stream()
            .map(
                p ->
                    new SheetState.PhotoCard(
                        p.id().toString(),
                        p.file(),
                        PhotoWords.brief(p.file()),
                        PhotoWords.when(p.takenAt(), now.map(Visit::day)),
                        rows.fields(fleet, p),
                        "Remove"))
            .toList();
    String words = cards.isEmpty() ? "No photos of this visit yet." : "";
    return new SheetState.Photos(BLOCK, "Photos", cards, doing.isEmpty() ? words : doing, true);
  }

  /** Adds files; which moment they show is chosen afterwards. */
  void add(Fleet fleet, List<String> files) {
    Optional<Visit> now = visit(fleet);
    if (now.isEmpty() || files.isEmpty()) {
      return;
    }
    PhotoService.Belongs to =
        new PhotoService.Belongs(
            now.get().boat(), Optional.of(visit), Optional.empty(), Moment.OTHER);
    doing = "Adding " + PhotoWords.count(files.size()) + " …";
    trouble = Optional.empty();
    publish.run();
    desk.act(
        edits ->
            edits.photos().add(files.stream().map(f -> new PhotoService.Given(f, to)).toList()),
        this::added);
  }

  private void added(PhotoService.Added added) {
    doing = "";
    trouble = PhotoWords.trouble(List.copyOf(added.refused().values()), added.already());
    publish.run();
  }

  /** Adds a picture that came without a file. */
  void add(Fleet fleet, Pixels picture) {
    desk.ask(edits -> edits.photos().lay(picture), file -> add(fleet, List.of(file)));
  }

  void picture(String file, int side, Consumer<Picture> answer) {
    previews.ask(file, side, answer);
  }

  /** Takes a photo out; its file stays in the folder. */
  void remove(Fleet fleet, String row) {
    photos(fleet).stream()
        .filter(p -> p.id().toString().equals(row))
        .findFirst()
        .ifPresent(p -> desk.change("photo removed", almanac -> Removal.of(almanac, p)));
  }
}
