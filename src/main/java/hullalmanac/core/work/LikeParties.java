package hullalmanac.core.work;

import hullalmanac.core.record.Party;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds parties that may be one and the same: by mail, by phone, by name. Common practice, no
 * source: a phone number with its country and one without are the same where the shorter has seven
 * digits or more; a name is the same with its words in any order, accents and case left out.
 */
public final class LikeParties {
  private static final int SHORTEST_PHONE = 7;

  private final List<Party> all = new ArrayList<>();

  /** Places of parties by what they would have in common with another. */
  private final Map<String, List<Integer>> places = new HashMap<>();

  /** Among nobody yet. */
  LikeParties() {}

  /** Pairs within a list, each once. */
  public static List<Alike> pairs(List<Party> parties) {
    List<Alike> pairs = new ArrayList<>();
    LikeParties known = new LikeParties();
    parties.forEach(known::add);
    for (int i = 0; i < parties.size(); i++) {
      for (int other : known.like(parties.get(i)).tailSet(i, false)) {
        pairs.add(alike(parties.get(i), parties.get(other)));
      }
    }
    return List.copyOf(pairs);
  }

  /** One more that others may be like. */
  void add(Party party) {
    for (String trait : traits(party)) {
      places.computeIfAbsent(trait, t -> new ArrayList<>()).add(all.size());
    }
    all.add(party);
  }

  /** Those that may be the same as another, the likeliest first. */
  List<Alike> to(Party other) {
    return like(other).stream()
        .map(place -> alike(all.get(place), other))
        .sorted(
            Comparator.comparing((Alike a) -> a.signs().iterator().next())
                .thenComparing(a -> -a.signs().size())
                .thenComparing(a -> a.known().id()))
        .toList();
  }

  private static Alike alike(Party known, Party other) {
    return new Alike(known, other, signs(known, other));
  }

  /** Places of those with a sign in common; only who shares a trait is compared. */
  private NavigableSet<Integer> like(Party other) {
    NavigableSet<Integer> like = new TreeSet<>();
    for (String trait : traits(other)) {
      places.getOrDefault(trait, List.of()).stream()
          .filter(place -> !signs(all.get(place), other).isEmpty())
          .forEach(like::add);
    }
    return like;
  }

  /** Two with a sign in common have one of these in common, too. */
  private static List<String> traits(Party party) {
    List<String> traits = new ArrayList<>();
    String mail = party.email().strip().toLowerCase(Locale.ROOT);
    if (!mail.isEmpty()) {
      traits.add("mail " + mail);
    }
    String phone = digits(party.phone());
    if (phone.length() >= SHORTEST_PHONE) {
      traits.add("phone " + phone.substring(phone.length() - SHORTEST_PHONE));
    }
    String name = words(party.name());
    if (!name.isEmpty()) {
      traits.add("name " + name);
    }
    return traits;
  }

  private static Set<Alike.Sign> signs(Party a, Party b) {
    Set<Alike.Sign> signs = EnumSet.noneOf(Alike.Sign.class);
    if (sameMail(a.email(), b.email())) {
      signs.add(Alike.Sign.MAIL);
    }
    if (samePhone(a.phone(), b.phone())) {
      signs.add(Alike.Sign.PHONE);
    }
    if (sameName(a.name(), b.name())) {
      signs.add(Alike.Sign.NAME);
    }
    return signs;
  }

  static boolean sameMail(String a, String b) {
    return !a.isBlank()
        && a.strip().toLowerCase(Locale.ROOT).equals(b.strip().toLowerCase(Locale.ROOT));
  }

  static boolean samePhone(String a, String b) {
    String one = digits(a);
    String two = digits(b);
    String shorter = one.length() < two.length() ? one : two;
    String longer = one.length() < two.length() ? two : one;
    return shorter.length() >= SHORTEST_PHONE && longer.endsWith(shorter);
  }

  static boolean sameName(String a, String b) {
    String words = words(a);
    return !words.isEmpty() && words.equals(words(b));
  }

  /** The digits of a number, without those that only say that a number follows. */
  private static String digits(String phone) {
    return phone.replaceAll("[^\\p{Nd}]", "").replaceFirst("^0+", "");
  }

  private static String words(String name) {
    String plain =
        Normalizer.normalize(name, Normalizer.Form.NFKD)
            .replaceAll("\\p{M}+", "")
            .toLowerCase(Locale.ROOT);
    return Stream.of(plain.split("[^\\p{L}\\p{Nd}]+"))
        .filter(w -> !w.isEmpty())
        .sorted()
        .collect(Collectors.joining(" "));
  }
}
