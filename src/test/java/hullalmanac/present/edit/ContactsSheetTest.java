package hullalmanac.present.edit;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.With;
import hullalmanac.core.work.Alike;
import hullalmanac.core.work.CardVersion;
import hullalmanac.fixture.Bench;
import hullalmanac.fixture.Cards;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.ContactsService;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Contact cards on their way in and out: looked at side by side, chosen, taken in, taken back. */
@Tag("slow")
class ContactsSheetTest {
  @TempDir Path home;
  private Bench bench;
  private Party ada;

  @BeforeEach
  void open() {
    bench = Bench.open(home.resolve("record"));
    Party some = bench.almanac().parties().get(0);
    ada =
        With.component(
            With.component(
                With.component(
                    With.component(some, "name", "Una Sedge"), "phone", "+1 555 555 0130"),
                "email",
                ""),
            "note",
            "");
    bench.presenter().edit("Ada", a -> Edit.put(ada));
    bench.presenter().people().openCards();
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private static String card(String... lines) {
    return "BEGIN:VCARD\nVERSION:3.0\n" + String.join("\n", lines) + "\nEND:VCARD\n";
  }

  /** Ada for sure, somebody of her name, somebody new, and the new one again with another phone. */
  private static final String CARDS =
      card("FN:Sedge\\, Una", "TEL:555 555 0130", "EMAIL:ada@example.org", "NOTE:rings first")
          + card("FN:Una Sedge", "TEL:+1 555 812 9177")
          + card("FN:Pia Heron", "TEL:+1 555 812 9131")
          + card("FN:Pia Heron", "TEL:+1 555 812 9132");

  private void paste(String cards) {
    bench.sheet().add(ContactsBlocks.FILE, cards);
  }

  private void press(String button) {
    bench.sheet().press(button);
  }

  private Stream<SheetState.Form> forms() {
    return bench.state().blocks().stream()
        .filter(SheetState.Form.class::isInstance)
        .map(SheetState.Form.class::cast);
  }

  private List<SheetState.Form> pairs() {
    return forms().filter(f -> f.id().startsWith(ContactsBlocks.ALIKE)).toList();
  }

  private List<String> chosen() {
    return pairs().stream().map(f -> f.fields().get(0).text()).toList();
  }

  private void choose(int pair, Alike.Choice choice) {
    bench.write(pairs().get(pair).id(), ContactsBlocks.CHOICE, choice.words());
  }

  private List<Party> called(String name) {
    return bench.almanac().parties().stream().filter(p -> p.name().equals(name)).toList();
  }

  private Party adaNow() {
    return bench.almanac().parties().stream()
        .filter(p -> p.id().equals(ada.id()))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void showsWhoIsNewAndWhoMayBeKnownBeforeAnythingComesIn() {
    Almanac before = bench.almanac();
    paste(CARDS);
    assertThat(bench.state().facts())
        .isEqualTo(
            "This would come in: 1 person or firm new, 1 made one with who is known, 2 left out.");
    assertThat(pairs()).hasSize(3);
    assertThat(pairs().get(0).fields().get(0).said().words())
        .isEqualTo("Surely one and the same: same phone, same name.");
    assertThat(pairs().get(1).fields().get(0).said().words())
        .isEqualTo("Perhaps one and the same: same name.");
    assertThat(chosen()).containsExactly("make one of the two", "leave out", "leave out");
    String all = bench.state().toString();
    assertThat(all)
        .contains("[name, Una Sedge, Sedge, Una, ]")
        .contains("[email, , ada@example.org, is filled in]")
        .contains("[phone, +1 555 555 0130, +1 555 812 9177, not the same]")
        .contains("Another card");
    assertThat(bench.almanac()).isEqualTo(before);
  }

  @Test
  void takesThemInByOneActAndOneUndoTakesAllOfItBackToTheSamePage() {
    paste(CARDS);
    choose(2, Alike.Choice.ONE);
    SheetState page = bench.state();
    Almanac before = bench.almanac();
    press(ContactsBlocks.TAKE_IN);
    assertThat(Cards.words(bench.state()))
        .contains("The cards are in: 1 person or firm more, 2 made one with who was known.");
    assertThat(adaNow().email()).isEqualTo("ada@example.org");
    assertThat(adaNow().note()).isEqualTo("rings first");
    assertThat(adaNow().phone()).isEqualTo("+1 555 555 0130");
    assertThat(called("Pia Heron"))
        .singleElement()
        .satisfies(
            ben -> {
              assertThat(ben.phone()).isEqualTo("+1 555 812 9131");
              assertThat(ben.note()).isEqualTo("Also +1 555 812 9132");
            });
    bench.presenter().undo();
    assertThat(bench.almanac()).isEqualTo(before);
    assertThat(bench.state()).isEqualTo(page);
    bench.presenter().redo();
    assertThat(called("Pia Heron")).hasSize(1);
  }

  @Test
  void eachPairIsMadeOneKeptOrLeftOutAsChosen() {
    paste(CARDS);
    choose(0, Alike.Choice.LEAVE_OUT);
    choose(1, Alike.Choice.BOTH);
    choose(2, Alike.Choice.BOTH);
    assertThat(bench.state().facts())
        .isEqualTo("This would come in: 3 people and firms new, 1 left out.");
    press(ContactsBlocks.TAKE_IN);
    assertThat(adaNow()).isEqualTo(ada);
    assertThat(called("Una Sedge"))
        .extracting(Party::phone)
        .containsExactlyInAnyOrder("+1 555 555 0130", "+1 555 812 9177");
    assertThat(called("Pia Heron"))
        .extracting(Party::phone)
        .containsExactlyInAnyOrder("+1 555 812 9131", "+1 555 812 9132");
  }

  /** What is written while the page is open is compared anew; what was chosen stays chosen. */
  @Test
  void keepsWhatWasChosenWhenTheRecordChanges() {
    paste(CARDS);
    choose(1, Alike.Choice.BOTH);
    bench
        .presenter()
        .edit("Ada moves", a -> Edit.put(With.component(ada, "address", "2 Quay, Quillhaven")));
    assertThat(chosen()).containsExactly("make one of the two", "keep both", "leave out");
    assertThat(bench.state().toString()).contains("[address, 2 Quay, Quillhaven, , ]");
    press(ContactsBlocks.TAKE_IN);
    assertThat(adaNow().address()).isEqualTo("2 Quay, Quillhaven");
    assertThat(adaNow().email()).isEqualTo("ada@example.org");
  }

  @Test
  void theSameCardsAgainBringNothingMore() {
    paste(CARDS);
    choose(1, Alike.Choice.ONE);
    choose(2, Alike.Choice.ONE);
    press(ContactsBlocks.TAKE_IN);
    press(ContactsBlocks.ANOTHER);
    Almanac after = bench.almanac();
    paste(CARDS);
    assertThat(bench.state().facts())
        .isEqualTo("This would come in: nobody new. 4 cards say nothing new of who is known.");
    assertThat(Cards.words(bench.state())).doesNotContain("Take them in");
    press(ContactsBlocks.LEAVE);
    assertThat(bench.almanac()).isEqualTo(after);
    assertThat(bench.shell().sheet()).isEmpty();
  }

  @Test
  void writesEveryoneInEachVersionAndReadsThemBack() {
    Path file = home.resolve("people.vcf");
    press(ContactsBlocks.WRITE);
    assertThat(bench.state().trouble()).contains("Choose a file to write first.");
    int people = bench.almanac().parties().size();
    for (CardVersion version : CardVersion.values()) {
      bench.write("cards out", "file", file.toString());
      bench.write("cards out", "version", version.code());
      press(ContactsBlocks.WRITE);
      assertThat(bench.state().trouble()).isEmpty();
      assertThat(Cards.words(bench.state()))
          .contains("Written to " + file + ": " + people + " cards.");
      assertThat(file).content().contains("VERSION:" + version.code());
      assertThat(ContactsService.read(file.toString()).cards()).hasSize(people);
    }
    bench.sheet().add(ContactsBlocks.FILE, List.of(file.toString()));
    assertThat(bench.state().facts())
        .isEqualTo(
            "This would come in: nobody new. "
                + people
                + " cards say nothing new of who is known.");
  }

  @Test
  void saysWhatCannotBeReadOrWritten() throws Exception {
    Path none = home.resolve("none.vcf");
    bench.sheet().add(ContactsBlocks.FILE, List.of(none.toString()));
    assertThat(bench.state().trouble().orElseThrow()).contains("cannot be read");
    paste("a shopping list");
    assertThat(bench.state().trouble().orElseThrow()).contains("It holds no contact card");
    paste(card("NOTE:nobody") + card("FN:Pia Heron"));
    assertThat(bench.state().trouble()).isEqualTo(Optional.empty());
    assertThat(Cards.words(bench.state())).contains("Card 1 has no name, phone or mail");
    press(ContactsBlocks.ANOTHER);
    Path others = home.resolve("others.vcf");
    Files.writeString(others, CARDS);
    bench.write("cards out", "file", others.toString());
    press(ContactsBlocks.WRITE);
    assertThat(Cards.words(bench.state())).contains("Choose another name");
    assertThat(others).content().isEqualTo(CARDS);
    bench.write("cards out", "file", "a\u0000b");
    press(ContactsBlocks.WRITE);
    assertThat(Cards.words(bench.state())).contains("No file can be called");
  }
}
