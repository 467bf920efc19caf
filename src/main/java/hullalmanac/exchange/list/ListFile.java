package hullalmanac.exchange.list;

import hullalmanac.core.list.Cell;
import hullalmanac.core.list.Grid;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Reads a file, or a text that was pasted, to the lists in it. */
public final class ListFile {
  /** More than these is no owner list. */
  static final int MOST_ROWS = 5000;

  static final int MOST_COLUMNS = 200;
  private static final long MOST_BYTES = 20L * 1024 * 1024;

  private ListFile() {}

  /** What came of reading. */
  public sealed interface Outcome {}

  /**
   * Lists were read.
   *
   * @param grids at least one: a list for each sheet that holds something
   */
  public record Read(List<Grid> grids) implements Outcome {
    public Read {
      grids = List.copyOf(grids);
      if (grids.isEmpty()) {
        throw new IllegalArgumentException("what was read holds at least one list");
      }
    }

    /** The place of the list with the most in it. */
    public int fullest() {
      int best = 0;
      for (int i = 1; i < grids.size(); i++) {
        best = filled(grids.get(i)) > filled(grids.get(best)) ? i : best;
      }
      return best;
    }

    private static long filled(Grid grid) {
      return grid.rows().stream().flatMap(List::stream).filter(c -> !c.isBlank()).count();
    }
  }

  /**
   * It cannot be read as a list.
   *
   * @param sentence what it is and what to do, for people
   */
  public record Refused(String sentence) implements Outcome {}

  /** Reads a file. */
  public static Outcome read(Path file) {
    String name = String.valueOf(file.getFileName());
    try {
      if (Files.isDirectory(file)) {
        return new Refused(name + " is a folder. Choose the file of the list in it.");
      }
      if (Files.size(file) > MOST_BYTES) {
        return new Refused(
            name
                + " is over 20 MB, which no owner list is. Save the sheet with the list alone, as CSV.");
      }
      return read(name, Files.readAllBytes(file));
    } catch (IOException e) {
      return new Refused(
          name + " cannot be read. Look whether it is still there and whether you may read it.");
    }
  }

  /**
   * Reads the bytes of a file.
   *
   * @param name of the file, for people
   */
  public static Outcome read(String name, byte[] bytes) {
    if (bytes.length == 0) {
      return new Refused(name + " is empty.");
    }
    Optional<String> stranger = Strangers.sentence(name, bytes);
    if (stranger.isPresent()) {
      return new Refused(stranger.get());
    }
    return limited(
        name, Strangers.isZip(bytes) ? Workbooks.read(name, bytes) : TextList.read(name, bytes));
  }

  /** Reads a text that was pasted. */
  public static Outcome pasted(String text) {
    return limited("The pasted text", TextList.read("pasted list", text, List.of()));
  }

  private static boolean says(Cell cell) {
    return cell.text().codePoints().anyMatch(Character::isLetterOrDigit);
  }

  private static Outcome limited(String name, Outcome outcome) {
    if (outcome instanceof Read read) {
      for (Grid grid : read.grids()) {
        if (grid.rows().size() > MOST_ROWS) {
          return new Refused(
              name + " has more than " + MOST_ROWS + " rows. Bring it in in smaller parts.");
        }
        if (grid.width() > MOST_COLUMNS) {
          return new Refused(
              name
                  + " has more than "
                  + MOST_COLUMNS
                  + " columns. Keep those that say something of boats and owners.");
        }
      }
      if (read.grids().stream()
          .flatMap(g -> g.rows().stream())
          .flatMap(List::stream)
          .noneMatch(ListFile::says)) {
        return new Refused(name + " has nothing in it but blanks and signs.");
      }
    }
    return outcome;
  }
}
