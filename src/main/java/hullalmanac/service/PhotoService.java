package hullalmanac.service;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Moment;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.Pixels;
import hullalmanac.core.record.RecordException;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import hullalmanac.core.work.Change;
import hullalmanac.exchange.photo.PhotoFiles;
import hullalmanac.exchange.photo.PhotoReader;
import hullalmanac.exchange.photo.PixelImages;
import hullalmanac.exchange.photo.Thumbnails;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Brings photos into the record: looks at files, keeps them under names made from their content,
 * and then puts all their rows in by one act. Files are named by their paths as text. Everything
 * here touches files.
 */
public final class PhotoService {
  private static final String NOT_SHOWN = "kept; cannot be shown here";

  private final RecordService record;

  PhotoService(RecordService record) {
    this.record = record;
  }

  /** Where a photo belongs. */
  public record Belongs(
      Id<Boat> boat, Optional<Id<Visit>> visit, Optional<Id<Surface>> surface, Moment moment) {}

  /** A file and where it belongs. */
  public record Given(String file, Belongs to) {}

  /**
   * What came of looking at a file.
   *
   * @param name what people call it
   * @param takenAt local time; absent when the file does not say
   * @param refused why it cannot be kept; absent for a photo
   */
  public record Looked(
      String file, String name, Optional<LocalDateTime> takenAt, Optional<String> refused) {}

  /**
   * What came of adding photos.
   *
   * @param added how many are new in the record
   * @param already how many were there for that boat and visit
   * @param refused by file, why it was not taken
   */
  public record Added(int added, int already, Map<String, String> refused) {
    public Added {
      refused = Collections.unmodifiableMap(new LinkedHashMap<>(refused));
    }
  }

  /**
   * A small picture.
   *
   * @param words why there is none
   */
  public record Small(Optional<Pixels> pixels, String words) {}

  /** Looks at files, each for itself. */
  public List<Looked> look(List<String> files) {
    return files.stream().map(this::look).toList();
  }

  private Looked look(String file) {
    PhotoReader.Outcome outcome = read(file);
    String name = path(file).map(p -> String.valueOf(p.getFileName())).orElse(file);
    return outcome instanceof PhotoReader.Usable usable
        ? new Looked(file, name, usable.takenAt(), Optional.empty())
        : new Looked(
            file, name, Optional.empty(), Optional.of(((PhotoReader.Refused) outcome).sentence()));
  }

  private static PhotoReader.Outcome read(String file) {
    return path(file)
        .map(PhotoReader::read)
        .orElseGet(
            () -> new PhotoReader.Refused("No file can be called " + file + ". Choose another."));
  }

  private static Optional<Path> path(String file) {
    try {
      return Optional.of(Path.of(file));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  /**
   * Lays a picture that came without a file into one beside the system's other scratch files.
   *
   * @return the file, which goes when the program ends
   */
  public String lay(Pixels picture) {
    try {
      Path file = Files.createTempFile("pasted-", ".png");
      file.toFile().deleteOnExit();
      Files.write(file, PixelImages.png(picture));
      return file.toString();
    } catch (IOException e) {
      throw new RecordException(
          RecordException.Kind.OTHER,
          "The picture could not be pasted, for there is no room for it among the scratch files of"
              + " this computer. Save it as a file, then add that.",
          e);
    }
  }

  /**
   * Adds photos: files first, then all rows in one act. What cannot be kept is told and the others
   * go in; but where there is no room for all, none does.
   */
  public Added add(List<Given> given) {
    Map<String, String> refused = new LinkedHashMap<>();
    Map<Given, PhotoReader.Usable> usable = new LinkedHashMap<>();
    for (Given one : given) {
      PhotoReader.Outcome outcome = read(one.file());
      if (outcome instanceof PhotoReader.Usable photo) {
        usable.put(one, photo);
      } else {
        refused.put(one.file(), ((PhotoReader.Refused) outcome).sentence());
      }
    }
    try {
      return keep(usable, refused);
    } catch (RecordException e) {
      usable.keySet().forEach(g -> refused.put(g.file(), e.getMessage()));
      return new Added(0, 0, refused);
    }
  }

  private Added keep(Map<Given, PhotoReader.Usable> usable, Map<String, String> refused) {
    PhotoFiles.requireRoom(
        usable.keySet().stream().map(g -> Path.of(g.file())).distinct().toList(), record.photos());
    Almanac almanac = record.almanac();
    List<Photo> rows = new ArrayList<>();
    int already = 0;
    for (Map.Entry<Given, PhotoReader.Usable> one : usable.entrySet()) {
      Optional<Photo> row = stored(one.getKey(), one.getValue(), refused);
      if (row.isPresent() && (has(almanac.photos(), row.get()) || has(rows, row.get()))) {
        already++;
      } else {
        row.ifPresent(rows::add);
      }
    }
    if (!rows.isEmpty()) {
      Change change = Change.checked(almanac, Edit.put(rows));
      if (change instanceof Change.Refused no) {
        usable.keySet().forEach(g -> refused.put(g.file(), no.problems().get(0).sentence()));
        return new Added(0, already, refused);
      }
      record.change(what(almanac, rows), ((Change.Ready) change).edit());
    }
    return new Added(rows.size(), already, refused);
  }

  /** The row of a photo whose file is kept now; nothing where that one file cannot be. */
  private Optional<Photo> stored(
      Given given, PhotoReader.Usable photo, Map<String, String> refused) {
    try {
      String kept = PhotoFiles.store(Path.of(given.file()), photo.format(), record.photos());
      Id<Photo> id = record.ids().next();
      return Optional.of(
          new Photo(
              id,
              Long.toString(id.value(), Character.MAX_RADIX),
              given.to().boat(),
              given.to().surface(),
              given.to().visit(),
              photo.takenAt(),
              given.to().moment(),
              kept,
              ""));
    } catch (RecordException e) {
      if (e.kind() == RecordException.Kind.FULL) {
        throw e;
      }
      refused.put(given.file(), e.getMessage());
      return Optional.empty();
    }
  }

  private static boolean has(List<Photo> photos, Photo wanted) {
    return photos.stream()
        .anyMatch(
            p ->
                p.file().equals(wanted.file())
                    && p.boat().equals(wanted.boat())
                    && p.visit().equals(wanted.visit()));
  }

  private static String what(Almanac almanac, List<Photo> rows) {
    String boats =
        almanac.boats().stream()
            .filter(b -> rows.stream().anyMatch(p -> p.boat().equals(b.id())))
            .map(Boat::name)
            .collect(Collectors.joining(", "));
    return boats + ": " + (rows.size() == 1 ? "a photo" : rows.size() + " photos") + " added";
  }

  /**
   * A picture that was kept for the letterhead.
   *
   * @param name of its file among the photos; absent where it was refused
   * @param refused why, a sentence
   */
  public record Mark(Optional<String> name, Optional<String> refused) {}

  /** Keeps a picture for the letterhead, without a row; one that cannot be drawn is refused. */
  public Mark mark(String file) {
    PhotoReader.Outcome outcome = read(file);
    if (!(outcome instanceof PhotoReader.Usable picture)) {
      return new Mark(Optional.empty(), Optional.of(((PhotoReader.Refused) outcome).sentence()));
    }
    if (!picture.previewable()) {
      return new Mark(
          Optional.empty(),
          Optional.of("This picture cannot be drawn here. Save it as PNG first."));
    }
    return new Mark(
        Optional.of(PhotoFiles.store(Path.of(file), picture.format(), record.photos())),
        Optional.empty());
  }

  /** A small picture of a photo of the record, by the name of its file. */
  public Small small(String kept, int side) {
    return small(record.photos().resolve(kept), side);
  }

  /** A small picture of a file that is not in the record yet. */
  public Small smallOf(String file, int side) {
    return path(file)
        .map(p -> small(p, side))
        .orElseGet(() -> new Small(Optional.empty(), NOT_SHOWN));
  }

  private static Small small(Path file, int side) {
    try {
      return new Small(Thumbnails.pixels(file, side), NOT_SHOWN);
    } catch (RecordException e) {
      return new Small(Optional.empty(), "its picture is not there");
    }
  }
}
