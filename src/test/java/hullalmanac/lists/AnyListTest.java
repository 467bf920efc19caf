package hullalmanac.lists;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.list.Grid;
import hullalmanac.core.list.ListChoices;
import hullalmanac.core.list.ListPlan;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.ListField;
import hullalmanac.core.work.Change;
import hullalmanac.exchange.list.ListFile;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever stands in a list, nothing goes wrong with it and nothing is lost. */
class AnyListTest {
  private static final Almanac BEFORE = ListBench.beginning();

  private static Arbitrary<String> headings() {
    return Arbitraries.of(
        "Boat",
        "Owner",
        "Name",
        "Phone",
        "Length (m)",
        "LOA",
        "Beam ft",
        "HIN",
        "Harbour",
        "Berth",
        "Last service",
        "Notes",
        "Colour",
        "Type",
        "Gate code",
        "Product",
        "First name",
        "Surname",
        "Company",
        "Email",
        "Year",
        "Total",
        "Summe");
  }

  private static Arbitrary<String> cellTexts() {
    return Arbitraries.of(
        "Whimbrel",
        "Knot / Ruff",
        "Salt & Pepper",
        "Ada Finch",
        "Marsh, Ben",
        "Dr Holt",
        "555-0110",
        "0555 / 21044",
        "ada@finch.example",
        "32'",
        "32' 6\"",
        "9,75",
        "9.754 m",
        "1998",
        "12/05/2025",
        "2.4.25",
        "May 2025",
        "45791",
        "ZZZ12345A818",
        "Quillhaven",
        "Quillhaven B7",
        "navy",
        "GRP",
        "sloop",
        "polymer sealant B",
        "A12/A13",
        "n/a",
        "-",
        "ditto",
        "dto.",
        "Arctic Tern",
        "Una Quill",
        "call 555 0199",
        "3 boats",
        "98",
        "1",
        "2");
  }

  @Provide
  Arbitrary<List<List<String>>> grids() {
    Arbitrary<String> cells =
        Arbitraries.oneOf(
            Arbitraries.of("", "", ""),
            headings(),
            cellTexts(),
            Arbitraries.strings().withChars("ab1 -/:;,.'\"|=+@\näß€·").ofMaxLength(14));
    return cells.list().ofMinSize(1).ofMaxSize(7).list().ofMinSize(1).ofMaxSize(9);
  }

  @Property(tries = 400)
  void nothingOfARandomGridIsLost(
      @ForAll("grids") List<List<String>> texts, @ForAll ListField field, @ForAll int column) {
    Grid grid = Grid.of("any.csv", texts);
    if (grid.width() == 0) {
      return;
    }
    ListChoices choices = ListChoices.NONE.field(Math.floorMod(column, grid.width()), field);
    ListPlan plan = ListPlan.of(grid, BEFORE, ListBench.TODAY, choices);
    Change change = plan.change(new IdSource(new Random(3)::nextLong));
    if (plan.missing().isEmpty()) {
      assertThat(change).isInstanceOf(Change.Ready.class);
      Almanac after = BEFORE.with(((Change.Ready) change).edit());
      assertThat(NothingLost.missing(plan, grid, after)).isEmpty();
    } else {
      assertThat(change).isInstanceOf(Change.Refused.class);
    }
  }

  @Property(tries = 400)
  void anyBytesAreReadOrRefused(@ForAll byte[] bytes) {
    assertThat(ListFile.read("any.csv", bytes)).isNotNull();
  }

  @Property(tries = 200)
  void anyTextIsReadOrRefused(@ForAll("texts") String text) {
    assertThat(ListFile.pasted(text)).isNotNull();
  }

  @Provide
  Arbitrary<String> texts() {
    return Arbitraries.strings().withChars("ab1,;\t|\"\n\r '=").ofMaxLength(60);
  }
}
