package hullalmanac.service;

import hullalmanac.core.record.Act;
import hullalmanac.core.record.RecordException;
import hullalmanac.store.OtherAlmanacs;
import hullalmanac.store.SecondPlace;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Where a record lies and what lies there with it. Everything here touches files. */
public final class HouseService {
  private final RecordService record;

  public HouseService(RecordService record) {
    this.record = record;
  }

  /**
   * A part of a record's folder.
   *
   * @param bytes how large all of it is
   */
  public record Part(String name, String what, int files, long bytes) {}

  /**
   * Another almanac in the folder.
   *
   * @param onlyThere acts that this record does not have, newest first
   * @param onlyHere acts that the other does not have, newest first
   */
  public record Other(String file, List<Act> onlyThere, List<Act> onlyHere) {
    public Other {
      onlyThere = List.copyOf(onlyThere);
      onlyHere = List.copyOf(onlyHere);
    }
  }

  /** The record's folder. */
  public String folder() {
    return record.folder().toString();
  }

  /** What lies in the folder, and what it is. */
  public List<Part> parts() {
    Path folder = record.folder();
    List<Part> parts = new ArrayList<>();
    parts.add(part(folder.resolve("almanac.db"), "everything written down, one SQLite file"));
    parts.add(part(folder.resolve("photos"), "each photo as it came, named by its content"));
    parts.add(
        part(folder.resolve("copies"), "verified copies: seven days, four weeks, twelve months"));
    return parts;
  }

  private static Part part(Path path, String what) {
    int files = 0;
    long bytes = 0;
    if (Files.exists(path)) {
      try (Stream<Path> all = Files.walk(path)) {
        for (Path file : all.filter(Files::isRegularFile).toList()) {
          files++;
          bytes += Files.size(file);
        }
      } catch (IOException e) {
        throw new RecordException(
            RecordException.Kind.MISSING, path + " cannot be read. Look whether it is there.", e);
      }
    }
    return new Part(path.getFileName().toString(), what, files, bytes);
  }

  /** Verified copies, newest first. */
  public List<String> copies() {
    return RecordService.copies(record.folder()).stream().map(Path::toString).toList();
  }

  /** Other almanacs in the folder; empty nearly always. */
  public List<Other> others() {
    List<Other> others = new ArrayList<>();
    for (Path file : OtherAlmanacs.in(record.folder())) {
      OtherAlmanacs.Difference difference = OtherAlmanacs.compare(record.folder(), file);
      others.add(new Other(file.toString(), difference.onlyThere(), difference.onlyHere()));
    }
    return others;
  }

  /** Lays another almanac aside among the copies; returns where it lies then. */
  public String layAside(String other) {
    return OtherAlmanacs.layAside(record.folder(), Path.of(other)).toString();
  }

  /**
   * Brings a second place up to date.
   *
   * @throws RecordException when it is not there or cannot be written
   */
  public void bringUpToDate(String place) {
    SecondPlace.bringUpToDate(record.folder(), path(place));
  }

  private static Path path(String text) {
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw new RecordException(
          RecordException.Kind.MISSING, "\"" + text + "\" is not a folder.", e);
    }
  }
}
