package hullalmanac.core.find;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import java.text.CollationKey;
import java.text.Collator;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Everything in a record that has a name, a number or a note, by its words. It never changes: after
 * a change of the record a new one is made.
 *
 * <p>The entries are numbered in the order in which equals are shown, so that a set of them is in
 * order by itself.
 */
public final class FindIndex {
  private static final int TITLE_COMPARED = 60;

  private final List<Entry> entries;
  private final Map<Id<Boat>, Integer> boats = new HashMap<>();

  /** Whole names. */
  private final WordTable names;

  /** Whole numbers and codes, without their blanks. */
  private final WordTable codes;

  /** Words of names. */
  private final WordTable nameWords;

  /** Words of other texts of the same thing. */
  private final WordTable textWords;

  /** Words of the boat or day that it belongs to, which do not find it alone. */
  private final WordTable aroundWords;

  /** Hull numbers and digits of phones, from each of their characters on. */
  private final WordTable tails;

  private FindIndex(List<Entry> entries) {
    this.entries = entries;
    WordTable.Draft name = new WordTable.Draft();
    WordTable.Draft code = new WordTable.Draft();
    WordTable.Draft nameWord = new WordTable.Draft();
    WordTable.Draft text = new WordTable.Draft();
    WordTable.Draft around = new WordTable.Draft();
    WordTable.Draft tail = new WordTable.Draft();
    for (int i = 0; i < entries.size(); i++) {
      Entry entry = entries.get(i);
      int at = i;
      WordTable.Draft title = entry.named() ? nameWord : text;
      Folding.tokens(entry.hit().title()).forEach(w -> title.add(w, at));
      if (entry.named()) {
        name.add(Folding.name(entry.hit().title()), at);
      }
      if (entry.coded()) {
        code.add(Folding.solid(entry.hit().title()), at);
        nameWord.add(Folding.solid(entry.hit().title()), at);
      }
      entry.more().forEach(t -> Folding.tokens(t).forEach(w -> text.add(w, at)));
      Folding.tokens(entry.hit().detail()).forEach(w -> around.add(w, at));
      entry.numbers().forEach(n -> addTails(n, at, tail));
      if (entry.hit().kind() == HitKind.BOAT) {
        boats.put(((Target.ToBoat) entry.hit().target()).boat(), at);
      }
    }
    names = name.table();
    codes = code.table();
    nameWords = nameWord.table();
    textWords = text.table();
    aroundWords = around.table();
    tails = tail.table();
  }

  private static void addTails(String number, int entry, WordTable.Draft tails) {
    for (int from = 0; from + Question.SHORTEST_INSIDE <= number.length(); from++) {
      tails.add(number.substring(from), entry);
    }
  }

  /**
   * Reads a record. Takes a moment on a large one: for the computing lane.
   *
   * @param today the day for which owners and berths are told
   */
  public static FindIndex of(Almanac almanac, LocalDate today) {
    Rows rows = new Rows(almanac, today);
    Collator collator = Collator.getInstance(Locale.ROOT);
    List<Placed> placed = new ArrayList<>();
    for (List<Entry> some :
        List.of(NameEntries.of(rows), NoteEntries.of(rows), BooksEntries.of(rows))) {
      some.forEach(e -> placed.add(new Placed(e, collator.getCollationKey(start(e)))));
    }
    placed.sort(Placed.ORDER);
    return new FindIndex(placed.stream().map(Placed::entry).toList());
  }

  private static String start(Entry entry) {
    String title = entry.hit().title();
    return title.substring(0, Math.min(title.length(), TITLE_COMPARED));
  }

  private record Placed(Entry entry, CollationKey title) {
    static final Comparator<Placed> ORDER =
        Comparator.comparing((Placed p) -> p.entry().gone())
            .thenComparing(Placed::title)
            .thenComparing(p -> p.entry().hit().kind())
            .thenComparing(p -> -p.entry().day())
            .thenComparing(p -> p.entry().hit().detail());
  }

  /** Whether there is nothing in the record that can be found. */
  public boolean isEmpty() {
    return entries.isEmpty();
  }

  /** A boat as it is shown when found; nothing when it is not of this record. */
  public Optional<Hit> boat(Id<Boat> boat) {
    return Optional.ofNullable(boats.get(boat)).map(i -> entries.get(i).hit());
  }

  /** The first word typed that begins no word of the record, as it was typed. */
  public Optional<String> unknown(String text) {
    Question question = Question.of(text);
    for (int w = 0; w < question.words().size(); w++) {
      Marks marks = new Marks();
      marks.mark(question, w);
      if (marks.any.isEmpty()) {
        return Optional.of(Excerpt.word(text, question.words().get(w)));
      }
    }
    return Optional.empty();
  }

  /**
   * Finds what has every word typed, in any order, at the beginning of one of its words. First what
   * is called just so, then names that begin so, then names with these words, then all else; of
   * each the boats still looked after first, by name.
   *
   * @param most how many at most
   */
  public List<Hit> find(String text, int most) {
    Question question = Question.of(text);
    if (question.words().isEmpty()) {
      return List.of();
    }
    Marks all = new Marks();
    all.mark(question, 0);
    for (int w = 1; w < question.words().size(); w++) {
      Marks next = new Marks();
      next.mark(question, w);
      all.name.and(next.name);
      all.own.or(next.own);
      all.any.and(next.any);
    }
    all.any.and(all.own);
    BitSet exact = new BitSet();
    BitSet begins = new BitSet();
    String name = String.join(" ", question.words());
    names.is(name, exact);
    names.begins(name, begins);
    codes.is(question.solid(), exact);
    codes.begins(question.solid(), begins);
    List<Hit> hits = new ArrayList<>();
    for (BitSet rank : List.of(exact, begins, all.name, (BitSet) all.any.clone())) {
      rank.and(all.any);
      all.any.andNot(rank);
      for (int i = rank.nextSetBit(0); i >= 0 && hits.size() < most; i = rank.nextSetBit(i + 1)) {
        hits.add(shown(entries.get(i), question.words()));
      }
    }
    return hits;
  }

  /** The entries that have a word: in their name, anywhere of their own, anywhere. */
  private final class Marks {
    private final BitSet name = new BitSet();
    private final BitSet own = new BitSet();
    private final BitSet any = new BitSet();

    void mark(Question question, int word) {
      String beginning = question.words().get(word);
      nameWords.begins(beginning, name);
      own.or(name);
      textWords.begins(beginning, own);
      question.insides(word).forEach(piece -> tails.begins(piece, own));
      any.or(own);
      aroundWords.begins(beginning, any);
    }
  }

  /** A hit with its texts cut to what was found, and with the text that shows why it was. */
  private static Hit shown(Entry entry, List<String> words) {
    Hit hit = entry.hit();
    String title = entry.named() ? hit.title() : Excerpt.of(hit.title(), words);
    List<String> hidden =
        words.stream()
            .filter(w -> !Excerpt.has(hit.title(), List.of(w)))
            .filter(w -> !Excerpt.has(hit.detail(), List.of(w)))
            .toList();
    String detail =
        entry.more().stream()
            .filter(t -> Excerpt.has(t, hidden))
            .findFirst()
            .map(t -> Rows.joined(Excerpt.of(t, hidden), hit.detail()))
            .orElse(hit.detail());
    return new Hit(hit.kind(), title, detail, hit.target());
  }
}
