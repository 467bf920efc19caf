package hullalmanac.core.find;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.fixture.OpenSample;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.NumericChars;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import net.jqwik.api.constraints.UniqueElements;
import org.junit.jupiter.api.Test;

/** What holds of finding whatever is written and typed. */
class FindPropertiesTest {
  private static final int ALL = Integer.MAX_VALUE;

  private static Set<Id<Boat>> boats(List<Hit> hits) {
    Set<Id<Boat>> boats = new HashSet<>();
    for (Hit hit : hits) {
      if (hit.kind() == HitKind.BOAT) {
        boats.add(((Target.ToBoat) hit.target()).boat());
      }
    }
    return boats;
  }

  /** Names of letters: every beginning finds its boat before all whose names do not begin so. */
  @Property(tries = 200)
  void findsEveryBoatByEveryBeginningOfHerNameBeforeOthers(
      @ForAll @Size(min = 1, max = 30) @UniqueElements
          List<@AlphaChars @Chars({' ', 'é', 'ß', '-'}) @StringLength(min = 2, max = 8) String>
              names) {
    Roster roster = new Roster();
    List<Boat> boats = new ArrayList<>();
    for (String name : names) {
      if (!Folding.words(name).isEmpty()) {
        boats.add(roster.boat(name));
      }
    }
    FindIndex index = roster.index();
    for (Boat boat : boats) {
      String name = Folding.name(boat.name());
      for (int end = 1; end <= name.length(); end++) {
        String typed = name.substring(0, end).strip();
        long sameBeginning =
            boats.stream().filter(b -> Folding.name(b.name()).startsWith(typed)).count();
        assertThat(boats(index.find(typed, (int) sameBeginning)))
            .as(typed + " of " + boat.name() + " in " + names)
            .contains(boat.id());
      }
    }
  }

  /** The sorted tables agree with looking at every word of every name. */
  @Property(tries = 200)
  void findsWhatLookingAtEveryWordFinds(
      @ForAll @Size(max = 30)
          List<@Chars({'a', 'b', ' ', 'é', 'A'}) @StringLength(min = 1, max = 6) String> names,
      @ForAll @Chars({'a', 'b', 'e', ' '}) @StringLength(max = 5) String typed) {
    Roster roster = new Roster();
    Set<Id<Boat>> wanted = new HashSet<>();
    List<String> words = Folding.words(typed);
    for (String name : names) {
      if (!name.isBlank()) {
        Boat boat = roster.boat(name);
        boolean all =
            words.stream()
                .allMatch(w -> Folding.words(name).stream().anyMatch(t -> t.startsWith(w)));
        if (all && !words.isEmpty()) {
          wanted.add(boat.id());
        }
      }
    }
    assertThat(boats(roster.index().find(typed, ALL))).isEqualTo(wanted);
  }

  @Property(tries = 200)
  void marksTheWordsWithABeginningAndNoOthers(
      @ForAll @Size(max = 40)
          List<@Chars({'a', 'b', 'z', ' '}) @StringLength(max = 4) String> words,
      @ForAll @Chars({'a', 'b', 'z', ' '}) @StringLength(max = 3) String beginning) {
    WordTable.Draft draft = new WordTable.Draft();
    BitSet begin = new BitSet();
    BitSet same = new BitSet();
    for (int i = 0; i < words.size(); i++) {
      draft.add(words.get(i), i);
      begin.set(i, words.get(i).startsWith(beginning));
      same.set(i, words.get(i).equals(beginning));
    }
    BitSet begins = new BitSet();
    BitSet is = new BitSet();
    draft.table().begins(beginning, begins);
    draft.table().is(beginning, is);
    assertThat(begins).isEqualTo(begin);
    assertThat(is).isEqualTo(same);
  }

  /** Any piece of three characters or more of a hull number finds it, cut by blanks or not. */
  @Property(tries = 200)
  void findsAHullNumberByEveryPiece(
      @ForAll @AlphaChars @NumericChars @StringLength(min = 3, max = 14) String number,
      @ForAll @IntRange(max = 11) int from,
      @ForAll @IntRange(min = 3, max = 14) int length) {
    Roster roster = new Roster();
    Boat boat = roster.boat("-", number, hullalmanac.core.record.BoatStatus.ACTIVE);
    int start = Math.min(from, number.length() - 3);
    String piece = number.substring(start, Math.min(number.length(), start + length));
    assertThat(roster.index().find(piece, ALL))
        .extracting(Hit::target)
        .containsExactly(new Target.ToBoat(boat.id()));
  }

  @Property(tries = 500)
  void foldsWhatIsFoldedToItselfAndTakesAnyText(@ForAll String text) {
    String name = Folding.name(text);
    assertThat(Folding.name(name)).isEqualTo(name);
    assertThat(name).isEqualTo(name.strip()).doesNotContain("  ");
    assertThat(new Roster().index().find(text, ALL)).isEmpty();
    assertThat(Excerpt.of(text.repeat(20), Folding.words(text)).length()).isLessThanOrEqualTo(94);
  }

  /** In the sample, where a beginning is one boat's alone she is the first boat found by it. */
  @Test
  void findsEveryBoatOfTheSampleByEveryBeginning() {
    List<Boat> boats = OpenSample.fleet().almanac().boats();
    FindIndex index = FindIndex.of(OpenSample.fleet().almanac(), OpenSample.fleet().asOf());
    for (Boat boat : boats) {
      for (int end = 1; end <= boat.name().length(); end++) {
        String typed = boat.name().substring(0, end).toUpperCase(Locale.ROOT);
        List<Hit> hits = index.find(typed, ALL);
        assertThat(boats(hits)).as(typed).contains(boat.id());
        long alike =
            boats.stream().filter(b -> b.name().toUpperCase(Locale.ROOT).startsWith(typed)).count();
        if (alike == 1) {
          Hit first = hits.stream().filter(h -> h.kind() == HitKind.BOAT).findFirst().orElseThrow();
          assertThat(first.title()).as(typed).isEqualTo(boat.name());
        }
      }
    }
  }

  @Test
  void findsTheSameWhateverTheOrderOfTheRows() {
    Almanac a = Roster.of(300).almanac();
    List<Boat> boats = new ArrayList<>(a.boats());
    Collections.shuffle(boats, new Random(3));
    Almanac other =
        new Almanac(
            a.business(),
            a.harbours(),
            a.parties(),
            boats,
            a.roles(),
            a.surfaces(),
            a.berths(),
            a.carePlans(),
            a.products(),
            a.bottles(),
            a.visits(),
            a.steps(),
            a.coats(),
            a.duties(),
            a.findings(),
            a.photos());
    for (String typed : List.of("b", "black a", "zzz000", "fender 12", "555 01", "quill")) {
      List<Hit> hits = FindIndex.of(a, Roster.TODAY).find(typed, ALL);
      assertThat(hits).as(typed).isNotEmpty();
      assertThat(FindIndex.of(other, Roster.TODAY).find(typed, ALL)).as(typed).isEqualTo(hits);
    }
  }
}
