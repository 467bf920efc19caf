package hullalmanac.lists;

import hullalmanac.core.list.Grid;
import hullalmanac.exchange.list.ListFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * A list that is made up. What is expected of it stands in full in a file of its name.
 *
 * @param name of the list, without an ending
 * @param outcome reads it
 */
record MadeList(String name, Supplier<ListFile.Outcome> outcome) {
  static final Path FOLDER = Path.of("src/test/resources/hullalmanac/lists");

  /** All lists that come in. */
  static Stream<MadeList> all() {
    List<MadeList> all = new ArrayList<>();
    for (String file : files()) {
      all.add(new MadeList(file.replace(".csv", ""), () -> ListFile.read(FOLDER.resolve(file))));
    }
    all.add(new MadeList("07-merged", () -> ListFile.read("07-merged.xlsx", Sheets.merged())));
    all.add(
        new MadeList("20-formulas", () -> ListFile.read("20-formulas.xlsx", Sheets.formulas())));
    all.add(new MadeList("28-formats", () -> ListFile.read("28-formats.xlsx", Sheets.formats())));
    all.add(
        new MadeList(
            "34-pasted",
            () ->
                ListFile.pasted(
                    "Boat\tOwner\tTel\n\"Whim\nbrel\"\tAda Finch\t555-0110\nKnot\tCy Holt\t555-0112\n")));
    all.sort(Comparator.comparing(MadeList::name));
    return all.stream();
  }

  private static List<String> files() {
    String[] names = FOLDER.toFile().list((folder, name) -> name.endsWith(".csv"));
    return Arrays.stream(names).sorted().toList();
  }

  static MadeList called(String name) {
    return all().filter(l -> l.name().equals(name)).findFirst().orElseThrow();
  }

  /** The sheet with the most in it. */
  Grid grid() {
    ListFile.Read read = (ListFile.Read) outcome.get();
    return read.grids().get(read.fullest());
  }

  Path expectedFile() {
    return FOLDER.resolve(name + ".txt");
  }

  String expected() {
    try {
      return Files.readString(expectedFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public String toString() {
    return name;
  }
}
