package hullalmanac.store;

import hullalmanac.core.record.Act;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.RecordException;
import hullalmanac.core.record.RecordException.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Other almanacs beside a record's own file: what a program that keeps folders alike on two
 * computers lays there when both wrote. Nothing is ever merged or thrown away by itself.
 */
public final class OtherAlmanacs {
  private static final Pattern OURS =
      Pattern.compile("almanac\\.db(-journal)?|almanac-before-restore-\\d+\\.db(-journal)?");

  private OtherAlmanacs() {}

  /**
   * How another almanac differs from the record.
   *
   * @param file where it lies
   * @param onlyThere acts that the record does not have, newest first
   * @param onlyHere acts that the other does not have, newest first
   */
  public record Difference(Path file, List<Act> onlyThere, List<Act> onlyHere) {
    public Difference {
      onlyThere = List.copyOf(onlyThere);
      onlyHere = List.copyOf(onlyHere);
    }
  }

  /** The other almanacs in a record's folder, by name; empty nearly always. */
  public static List<Path> in(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(f -> looksLikeOne(f.getFileName().toString()))
          .filter(OtherAlmanacs::isOne)
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new RecordException(
          Kind.MISSING,
          "The folder " + folder + " cannot be reached. Look whether it is there.",
          e);
    }
  }

  private static boolean looksLikeOne(String name) {
    return name.startsWith("almanac") && name.contains(".db") && !OURS.matcher(name).matches();
  }

  private static boolean isOne(Path file) {
    try {
      return Files.isRegularFile(file)
          && Header.read(file).applicationId() == Header.APPLICATION_ID;
    } catch (RecordException e) {
      return false;
    }
  }

  /**
   * Compares another almanac with the record by their change logs.
   *
   * @throws RecordException when one of them cannot be read
   */
  public static Difference compare(Path folder, Path other) {
    List<Act> here = acts(folder.resolve(Database.FILE));
    List<Act> there = acts(other);
    return new Difference(other, without(there, here), without(here, there));
  }

  private static List<Act> without(List<Act> all, List<Act> known) {
    Set<Id<Act>> ids = new HashSet<>(known.stream().map(Act::id).toList());
    return all.stream().filter(a -> !ids.contains(a.id())).toList();
  }

  private static List<Act> acts(Path file) {
    Header.read(file).require(file, Integer.MAX_VALUE);
    try (Connection connection = Connections.readOnly(file)) {
      return new Acts(new Tx(connection)).all();
    } catch (SQLException e) {
      throw Failures.of(file, e);
    }
  }

  /**
   * Lays another almanac aside, into the folder of copies, where it is kept for good.
   *
   * @return where it lies then
   */
  public static Path layAside(Path folder, Path other) {
    Path copies = folder.resolve("copies");
    try {
      Files.createDirectories(copies);
      for (int n = 1; ; n++) {
        Path target = copies.resolve("aside-" + n + ".db");
        if (!Files.exists(target)) {
          return Files.move(other, target, StandardCopyOption.ATOMIC_MOVE);
        }
      }
    } catch (IOException e) {
      throw new RecordException(
          Kind.OTHER, other + " could not be laid aside. It was left as it is.", e);
    }
  }
}
