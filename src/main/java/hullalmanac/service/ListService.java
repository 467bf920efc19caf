package hullalmanac.service;

import hullalmanac.core.list.Grid;
import hullalmanac.core.list.ListChoices;
import hullalmanac.core.list.ListPlan;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.work.Change;
import hullalmanac.exchange.list.ListFile;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Reads people's own lists, and brings them in. Reading touches the file. */
public final class ListService {
  private ListService() {}

  /**
   * What came of reading a list.
   *
   * @param grids the lists in it, one a sheet; empty when it was refused
   * @param fullest place of the one with the most in it
   * @param refused why it is no list that can be read, and what to do
   */
  public record Found(List<Grid> grids, int fullest, Optional<String> refused) {
    public Found {
      grids = List.copyOf(grids);
    }
  }

  /** Reads a file, named by its path as text. */
  public static Found read(String file) {
    try {
      return found(ListFile.read(Path.of(file)));
    } catch (InvalidPathException e) {
      return new Found(
          List.of(), 0, Optional.of("No file can be called " + file + ". Choose another."));
    }
  }

  /** Reads a text that was pasted. */
  public static Found pasted(String text) {
    return found(ListFile.pasted(text));
  }

  private static Found found(ListFile.Outcome outcome) {
    return outcome instanceof ListFile.Read read
        ? new Found(read.grids(), read.fullest(), Optional.empty())
        : new Found(List.of(), 0, Optional.of(((ListFile.Refused) outcome).sentence()));
  }

  /** Brings a list into a record as it stands now, planned anew. */
  public static Change bringIn(
      Grid grid, Almanac almanac, LocalDate today, ListChoices choices, IdSource ids) {
    return ListPlan.of(grid, almanac, today, choices).change(ids);
  }
}
