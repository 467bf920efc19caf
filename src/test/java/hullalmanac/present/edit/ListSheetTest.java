package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Harbour;
import hullalmanac.fixture.Bench;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.SheetState;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A list on its way in: looked at, mended, brought in, and taken back. */
@Tag("slow")
class ListSheetTest {
  private static final String LIST =
      """
      Boat\tOwner\tPhone\tLength\tHarbour\tExtra
      Wheatear\tNell Farrow\t555-8101\t9.9m\tQuillhaven\tbimini
      Stonechat\tBo Larch\t\t32'\tQuillhaven\ttall mast
      Siskin\tSomebody Else\t555-8102\t44 ft\t\t
      Total\t\t\t3\t\t
      """;

  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void open() {
    bench = Bench.open(folder.resolve("record"));
    bench.presenter().openList();
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private void paste(String text) {
    bench.sheet().add(ListBlocks.FILE, text);
  }

  private void bringIn() {
    bench.sheet().press(ListBlocks.BRING);
  }

  private boolean has(String boat) {
    return bench.almanac().boats().stream().map(Boat::name).anyMatch(boat::equals);
  }

  private SheetState.Field field(String id) {
    return fields().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  private Stream<SheetState.Field> fields() {
    return bench.state().blocks().stream()
        .filter(SheetState.Form.class::isInstance)
        .flatMap(b -> ((SheetState.Form) b).fields().stream());
  }

  private String all() {
    return bench.state().toString();
  }

  @Test
  void showsWhatWouldComeInBeforeAnythingDoes() {
    int boats = bench.almanac().boats().size();
    paste(LIST);
    assertThat(bench.state().facts()).startsWith("This would come in: 3 new boats");
    assertThat(field("c0").text()).isEqualTo("boat");
    assertThat(field("c3").text()).isEqualTo("length in feet");
    assertThat(bench.cell(ListBlocks.PREVIEW, 0, "c3")).contains("32 ft");
    assertThat(bench.grid(ListBlocks.PREVIEW).rows()).hasSize(3);
    assertThat(all()).contains("What does not come in").contains("Total");
    assertThat(bench.almanac().boats()).hasSize(boats);
  }

  @Test
  void bringsAllOfItInByOneActAndOneUndoTakesItBackToTheSameQuestions() {
    paste(LIST);
    SheetState before = bench.state();
    hullalmanac.core.record.Almanac was = bench.almanac();
    bringIn();
    assertThat(has("Wheatear") && has("Stonechat")).isTrue();
    assertThat(all()).contains("The list is in");
    bench.presenter().undo();
    assertThat(bench.almanac()).isEqualTo(was);
    assertThat(bench.state()).isEqualTo(before);
    bench.presenter().redo();
    assertThat(has("Wheatear")).isTrue();
  }

  @Test
  void putsWhoIsKnownAlreadySideBySideAndFillsInOrWritesAnother() {
    paste(LIST);
    SheetState.Field siskin =
        fields().filter(f -> f.label().contains("Siskin")).findFirst().orElseThrow();
    assertThat(all()).contains("44 ft").contains("not the same");
    assertThat(bench.state().facts()).contains("1 cell needs a look.");
    assertThat(bench.grid(ListBlocks.PREVIEW).rows().get(2).marked()).containsExactly(1);
    bench.write(siskin.id(), siskin.id(), "another one");
    assertThat(bench.state().facts())
        .startsWith("This would come in: 3 new boats")
        .contains("Nothing of it is doubtful");
    assertThat(bench.grid(ListBlocks.PREVIEW).rows().get(2).marked()).isEmpty();
    bench.write(siskin.id(), siskin.id(), "the same, fill in what is missing");
    assertThat(bench.state().facts()).contains("2 new boats, 1 boat known already");
    bench.write(siskin.id(), siskin.id(), "leave out");
    assertThat(bench.state().facts()).startsWith("This would come in: 2 new boats");
    assertThat(all()).contains("as you chose");
  }

  @Test
  void remembersWhatAPersonSaidOfAColumnForTheNextList() {
    paste(LIST);
    assertThat(field("c5").text()).isEqualTo("note on the boat");
    bench.write(ListBlocks.COLUMNS, "c5", "note on the owner");
    bringIn();
    bench.sheet().press(ListBlocks.ANOTHER);
    paste("Boat\tOwner\tPhone\tLength\tHarbour\tExtra\nRuff\tDi Lowe\t\t8m\tQuillhaven\tcat");
    assertThat(field("c5").text()).isEqualTo("note on the owner");
  }

  @Test
  void takesARowThatWasMendedAndLeavesOneOut() {
    paste(LIST);
    bench.write(ListBlocks.PREVIEW, 0, "c0", "Wheatear II");
    bench.sheet().remove(ListBlocks.PREVIEW, bench.grid(ListBlocks.PREVIEW).rows().get(1).id());
    assertThat(bench.cell(ListBlocks.PREVIEW, 1, "comes in")).isEqualTo("no");
    bringIn();
    assertThat(has("Wheatear II")).isTrue();
    assertThat(has("Stonechat")).isFalse();
  }

  @Test
  void takesTextsPastedIntoTheRows() {
    paste(LIST);
    String row = bench.grid(ListBlocks.PREVIEW).rows().get(0).id();
    bench
        .sheet()
        .paste(
            new At(ListBlocks.PREVIEW, row, "c0"),
            List.of(List.of("Ruff", "Di Lowe"), List.of("Knot")));
    assertThat(bench.cell(ListBlocks.PREVIEW, 0, "c1")).isEqualTo("Di Lowe");
    bringIn();
    assertThat(has("Ruff") && has("Knot")).isTrue();
    assertThat(has("Wheatear")).isFalse();
  }

  @Test
  void keepsALatitudeThatIsNoneAsItWasTypedAndBringsNothingIn() {
    paste("Boat\tOwner\tHarbour\nRuff\tDi Lowe\tGull Point");
    SheetState.Field latitude = field("latitude gull point");
    assertThat(latitude.said().refused()).isFalse();
    bench.write(ListBlocks.ASKED, latitude.id(), "about 48");
    assertThat(field(latitude.id()).text()).isEqualTo("about 48");
    assertThat(field(latitude.id()).said().refused()).isTrue();
    bringIn();
    assertThat(bench.state().trouble().orElseThrow()).contains("Gull Point");
    assertThat(has("Ruff")).isFalse();
    bench.write(ListBlocks.ASKED, latitude.id(), "-47,5");
    bringIn();
    assertThat(bench.almanac().harbours())
        .filteredOn(h -> h.name().equals("Gull Point"))
        .extracting(Harbour::latitude)
        .containsExactly(-47.5);
  }

  @Test
  void readsAFileOfAnotherTimeAndSaysWhyOneCannotBeRead() throws Exception {
    Path list = folder.resolve("Eigner.csv");
    Files.writeString(
        list,
        "Schiffsname;Eigner;Länge (m)\nMöwe;Jürgen Groß;9,75\n",
        Charset.forName("windows-1252"));
    bench.sheet().add(ListBlocks.FILE, List.of(list.toString()));
    bringIn();
    assertThat(bench.boat("Möwe").loa().orElseThrow().millimetres()).isEqualTo(9750);
    bench.sheet().press(ListBlocks.ANOTHER);
    Path old = folder.resolve("old.xls");
    Files.write(old, new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0, 0, 0, 0});
    bench.sheet().add(ListBlocks.FILE, List.of(old.toString()));
    assertThat(bench.state().trouble().orElseThrow()).contains(".xlsx");
  }
}
